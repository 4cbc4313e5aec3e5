using ShopDays.Measures;
using ShopDays.Parts;
using ShopDays.Plans;

namespace ShopDays.Cli.Phrases;

/// <summary>A job in words for its client: nothing of hours, of what they earn, or of what may be lost.</summary>
internal static class QuoteWords
{
    /// <summary>How a change is made.</summary>
    public const string Changes = "A change is agreed in writing, with its price and its new date, before it is made.";

    /// <summary>What is known of the piece; what the job does not say is left out.</summary>
    public static IEnumerable<(string Name, string Words)> Facts(ToldPrice told)
    {
        var (job, format) = (told.Job, told.Read.Located.Format);
        if (job.Commission.Dimensions is { } size)
        {
            (Length? Length, string Word)[] sides = [(size.Width, "wide"), (size.Depth, "deep"), (size.Height, "high")];
            yield return ("Size", string.Join(", ", sides.Where(side => side.Length is not null).Select(side => $"{format.Write(side.Length!.Value)} {side.Word}")));
        }

        if (job.Parts.Count > 0)
        {
            yield return ("Timber", string.Join(", ", job.Parts.GroupBy(part => part.Species.Name).OrderByDescending(species => species.Sum(part => part.Volume.CubicMillimetres * part.Count)).Select(species => species.Key)));
        }

        if (job.Finishes.Count > 0)
        {
            yield return ("Finish", string.Join("; ", job.Finishes.Select(finish => $"{finish.Finish}, {CountWords.Of(finish.Coats, "coat")}, on {And(finish.On)}")));
        }

        if (job.Commission.Hardware.Count > 0)
        {
            yield return ("Fittings", string.Join(", ", job.Commission.Hardware.Select(item => item.Count == 1 ? item.Name : $"{CountWords.Number(item.Count)} × {item.Name}")));
        }
    }

    /// <summary>When it can be had, and how sure that is.</summary>
    public static IReadOnlyList<string> Dates(ToldPrice told)
    {
        if (told.Plan is not PlanAnswer.Planned { Forecast: { P50: { } likely, P80: { } promised } forecast })
        {
            return ["The dates are agreed when the order is placed."];
        }

        return
        [
            $"Work begins on {DateWords.Long(told.Begins)}, once the order is confirmed and the first payment has come.",
            $"Promised for {DateWords.Long(promised.Date)}: four times in five such a piece is ready by its promised date.{(likely.Date == promised.Date ? "" : $" As likely as not it is ready by {DateWords.Month(likely.Date)}.")}",
            .. (string[])(forecast.P90 is { } late ? [$"Should things go badly, you hear of it at once; nine times in ten it is ready by {(late.Date == promised.Date ? "that day too" : DateWords.Long(late.Date))}."] : []),
            .. (string[])(told.Job.Due is { } due ? [Asked(due, forecast)] : []),
            .. (string[])(Awaited(told.Job) is { Length: > 0 } others ? [$"These dates count on what others owe coming in good time: {others}."] : []),
        ];
    }

    private static string Asked(NodaTime.LocalDate due, FinishForecast forecast)
    {
        var date = DateWords.Long(due);
        return forecast.ChanceOfDue switch
        {
            >= 0.8 => $"You asked for it by {date}: that can be promised.",
            { } chance => $"You asked for it by {date}: that can be kept in {ChanceWords.OutOf(chance)} cases, and is not promised.",
            null => $"You asked for it by {date}.",
        };
    }

    private static string Awaited(Job job) => string.Join("; ", job.Decisions.Where(decision => decision.Arrived is null && !decision.IsDrying).Select(decision => decision.Name));

    private static string And(IReadOnlyList<string> names) =>
        names.Count == 1 ? "the " + names[0] : string.Join(", ", names.Take(names.Count - 1).Select(name => "the " + name)) + " and the " + names[^1];
}
