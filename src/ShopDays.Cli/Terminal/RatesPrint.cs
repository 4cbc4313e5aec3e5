using ShopDays.Cli.Phrases;
using ShopDays.Times;

namespace ShopDays.Cli.Terminal;

/// <summary>A shop's rates and how far to trust them, for the eyes.</summary>
internal static class RatesPrint
{
    /// <summary>Prints them.</summary>
    public static void Print(Screen screen, ToldRates told)
    {
        foreach (var sentence in told.Sentences)
        {
            screen.Wrapped(sentence);
        }

        PrintTable(screen, told);
        PrintSpoiling(screen, told.Spoiling);
        if (told.NotLearnedFrom is { Count: > 0 } left)
        {
            screen.Out.WriteLine();
            screen.Out.WriteLine("Not learned from:");
            foreach (var one in left)
            {
                screen.Wrapped("- " + one, indent: 2);
            }
        }

        if (told.IsCutShort)
        {
            screen.Out.WriteLine();
            screen.Wrapped("Operations that were never timed are not listed: shopdays rates --all");
        }
    }

    /// <summary>Prints the times that are asked about, each with what can be typed.</summary>
    /// <param name="screen">Where.</param>
    /// <param name="odd">The times.</param>
    /// <param name="most">How many of them; the others are counted, with how to see them.</param>
    public static void PrintOdd(Screen screen, IReadOnlyList<OddTime> odd, int most = int.MaxValue)
    {
        if (odd.Count == 0)
        {
            screen.Out.WriteLine("No time in the log looks odd.");
            return;
        }

        screen.Wrapped($"{(odd.Count == 1 ? "This time is" : "These times are")} far outside what all others make one expect; nothing is learned from {(odd.Count == 1 ? "it" : "them")} until you say what {(odd.Count == 1 ? "it is" : "they are")}.");
        foreach (var one in odd.Take(most))
        {
            screen.Out.WriteLine();
            screen.Wrapped($"{char.ToUpperInvariant(one.Told[0])}{one.Told[1..]}.");
            foreach (var (command, meaning) in one.Answers)
            {
                screen.Hanging($"  {command,-36}", meaning);
            }
        }

        if (odd.Count > most)
        {
            screen.Out.WriteLine();
            screen.Wrapped($"And {CountWords.Of(odd.Count - most, "other")}: shopdays log odd");
        }
    }

    // What a rate holds for stands below its name, set in, in as few lines as the column has room for.
    private static string Below(string at)
    {
        const int Widest = 29;
        var lines = new List<string>();
        foreach (var one in at.Split(", ", StringSplitOptions.RemoveEmptyEntries))
        {
            if (lines.Count > 0 && lines[^1].Length + one.Length + 2 <= Widest)
            {
                lines[^1] += ", " + one;
            }
            else
            {
                lines.Add(one);
            }
        }

        return string.Concat(lines.Select((line, number) => "\n  " + line + (number < lines.Count - 1 ? "," : "")));
    }

    private static void PrintSpoiling(Screen screen, IReadOnlyList<SpoilingChance> chances)
    {
        if (chances.Count == 0)
        {
            return;
        }

        screen.Out.WriteLine();
        var table = Grid.WithHeads("chance of spoiling a piece", ">tables", ">now", ">80 % range", ">pieces", ">spoiled");
        foreach (var one in chances)
        {
            table.AddTexts(
                MethodWords.Of(one.Operation, one.Method),
                Percent(one.Prior),
                Percent(one.Mean),
                $"{Percent(one.At(0.1))} to {Percent(one.At(0.9))}",
                Counted(one.Pieces),
                Counted(one.Spoiled));
        }

        screen.Console.Write(table);
        screen.Wrapped(ToldRates.SpoilingSmallPrint);

        static string Percent(double chance) => FormattableString.Invariant($"{100 * chance:0.0#} %");

        // Old times count for less than one where a shop forgets.
        static string Counted(double pieces) => FormattableString.Invariant($"{pieces:0.#}");
    }

    private static void PrintTable(Screen screen, ToldRates told)
    {
        if (told.Rates.Count == 0)
        {
            return;
        }

        screen.Out.WriteLine();
        var table = Grid.WithHeads("operation", ">tables", ">now", ">80 % range", "", ">times");
        foreach (var rate in told.Rates)
        {
            var reading = told.ReadingOf(rate);
            var at = told.AtOf(rate);
            table.AddTexts(
                ToldRates.NameOf(rate) + Below(at),
                reading.Write(rate.Prior),
                reading.Write(rate.Learned),
                reading.WriteRange(rate.Learned),
                reading.Unit,
                CountWords.Number(rate.Entries) + (rate.HeldOut == 0 ? "" : $" + {CountWords.Number(rate.HeldOut)}"));
        }

        screen.Console.Write(table);
        screen.Wrapped(ToldRates.SmallPrint);
    }
}
