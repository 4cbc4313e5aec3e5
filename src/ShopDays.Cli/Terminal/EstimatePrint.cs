using ShopDays.Cli.Phrases;
using ShopDays.Measures;
using ShopDays.Times;
using Spectre.Console;

namespace ShopDays.Cli.Terminal;

/// <summary>An estimate for the eyes.</summary>
internal static class EstimatePrint
{
    /// <summary>Prints it.</summary>
    /// <param name="screen">Where to.</param>
    /// <param name="job">Name of the job.</param>
    /// <param name="estimate">The estimate.</param>
    /// <param name="without">All hands-on time by the built-in rates alone, where the log has changed it.</param>
    /// <param name="behind">What the times come from.</param>
    /// <param name="faces">What rougher hidden faces save.</param>
    /// <param name="format">How lengths are written.</param>
    public static void Print(Screen screen, string job, JobEstimate estimate, TimeRange? without, TimesBehind behind, FaceSavings faces, LengthFormat format)
    {
        screen.Out.WriteLine($"{job}: hands-on time");
        screen.Out.WriteLine();
        var ranges = Grid.WithHeads("", ">1 in 10 quicker", ">as likely as not", ">promise (80 %)", ">bad luck (90 %)");
        AddRange(ranges, "all work", estimate.HandsOn);
        AddRange(ranges, "heavy work", estimate.Heavy);
        if (without is { } unlearned)
        {
            AddRange(ranges, "without your log", unlearned);
        }

        screen.Console.Write(ranges);
        screen.Wrapped(FormattableString.Invariant(
            $"{estimate.Tasks} tasks; the waits add up to {WaitText.Write(estimate.Waits)} if none overlapped{NightWords.Of(estimate)}. Opening up and sweeping up are not in it."));
        if (estimate.Spoiling is { } spoiling)
        {
            screen.Wrapped(SpoilingWords.Of(spoiling));
        }

        screen.Out.WriteLine();

        var operations = Grid.WithHeads("operation", "method", ">quantity", "unit", ">tasks", ">likely", ">80 %");
        foreach (var one in estimate.Operations)
        {
            var (quantity, unit) = SawnWords.Of(one.Quantity, one.Unit, format);
            operations.AddTexts(
                one.Operation,
                one.Method,
                SawnWords.Quantity(quantity),
                unit,
                FormattableString.Invariant($"{one.Tasks}"),
                HourWords.Of(one.Time.P50),
                HourWords.Of(one.Time.P80));
        }

        screen.Console.Write(operations);
        screen.Wrapped(FormattableString.Invariant(
            $"Times in hours and minutes, {behind.Source}, over {estimate.Draws} drawn courses of the job, seed {estimate.Seed}. The rows' 80 % times do not add up: bad luck seldom strikes everywhere at once."));
        if (estimate.EdgesHoned > 0)
        {
            screen.Wrapped(FormattableString.Invariant($"Honing is in them: {CountWords.Of(estimate.EdgesHoned, "edge")} in all, about {WorkTimeText.Write(estimate.Honing)}, each before the work that would find it dull."));
        }

        foreach (var said in FaceWords.Of(faces))
        {
            screen.Wrapped(said);
        }

        TimesPrint.PrintNotes(screen, behind);
    }

    private static void AddRange(Table table, string what, TimeRange range) =>
        table.AddTexts(what, HourWords.Of(range.P10), HourWords.Of(range.P50), HourWords.Of(range.P80), HourWords.Of(range.P90));
}
