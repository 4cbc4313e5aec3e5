using NodaTime;
using ShopDays.Cli.Files.Yaml;
using ShopDays.Measures;
using ShopDays.Parts;

namespace ShopDays.Cli.Files;

/// <summary>Readers of a maker's guesses of what is not theirs to say.</summary>
internal static class GuessValues
{
    /// <summary>A wait for others: its likely length, or low, likely and high.</summary>
    public static ValueReader<WaitGuess> Wait { get; } = (node, reading) =>
    {
        if (node is not YamlMap)
        {
            return Values.Wait(node, reading).Select(WaitGuess.About);
        }

        var section = Section.Open(node, "the wait", reading)!;
        var low = section.Required("low", Values.Wait, "one time in ten it is over sooner");
        var likely = section.Required("likely", Values.Wait, "as likely sooner as later");
        var high = section.Required("high", Values.Wait, "one time in ten it takes longer");
        section.Close();
        if (!low.IsRead || !likely.IsRead || !high.IsRead)
        {
            return Field<WaitGuess>.Wrong(node.Place);
        }

        return Field<WaitGuess>.Read(node.Place, new(low.Value, likely.Value, high.Value)).Unless(
            reading.Findings,
            guess => guess.Low <= guess.Likely && guess.Likely <= guess.High && guess.Likely > Duration.Zero
                ? null
                : ValueMistakes.WaitsOutOfOrder(low.Place, WaitText.Write(guess.Low), WaitText.Write(guess.Likely), WaitText.Write(guess.High)));
    };
}
