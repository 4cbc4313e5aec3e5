using NodaTime;
using ShopDays.Cli.Files;
using ShopDays.Measures;
using ShopDays.Plans;
using ShopDays.Work;

namespace ShopDays.Cli.Phrases;

/// <summary>An order in hand, with all that is told about it.</summary>
internal sealed record ToldOrder
{
    /// <summary>What it is called among the others.</summary>
    public required string Title { get; init; }

    /// <summary>The shop and the job.</summary>
    public required ShopAndJob Read { get; init; }

    /// <summary>The marks of all its tasks.</summary>
    public required TaskMarks Marks { get; init; }

    /// <summary>The date with which it begins.</summary>
    public required LocalDate Start { get; init; }

    /// <summary>The date by the end of which it should be finished; null for none.</summary>
    public required LocalDate? Date { get; init; }

    /// <summary>Whether that date is a promise on record; otherwise it is the one in the job's file.</summary>
    public required bool IsPromised { get; init; }

    /// <summary>Whether work of it is logged.</summary>
    public required bool IsBegun { get; init; }

    /// <summary>Hands-on time that is left, each task by its likely time.</summary>
    public required WorkTime Left { get; init; }

    /// <summary>When it is finished in the plan.</summary>
    public required ZonedDateTime Planned { get; init; }

    /// <summary>Days on which somebody works on it.</summary>
    public required int ShopDays { get; init; }

    /// <summary>What it waits for from others, as it is planned.</summary>
    public required IReadOnlyList<PlannedWait> Awaited { get; init; }

    /// <summary>The orders that the plan finishes before it.</summary>
    public required IReadOnlyList<string> Sooner { get; init; }

    /// <summary>The date by the shop's clock.</summary>
    public required LocalDate Today { get; init; }

    /// <summary>When it may be finished.</summary>
    public required FinishForecast Forecast { get; init; }

    /// <summary>Whole days by which the plan finishes it after its date; 0 when it does not, or has none.</summary>
    public int DaysLate => Date is { } date ? Math.Max(0, Period.DaysBetween(date, Planned.Date)) : 0;

    /// <summary>Its date in words: <c>due Sat 24 Jul 2027</c>.</summary>
    public string DateInWords => Date is { } date ? $"{(IsPromised ? "promised" : "due")} {DateWords.Of(date)}" : "no date";

    /// <summary>How it stands in the plan, in two sentences or three.</summary>
    public string Outlook =>
        $"{DateInWords}; {(IsBegun ? "begun" : $"begins {DateWords.Of(Start)}")}. "
        + $"{HourWords.Of(Left)} at the bench {(IsBegun ? "are left, " : "")}on {CountWords.Of(ShopDays, "shop day")}; it ends {DateWords.Of(Planned)} if all goes as expected{(DaysLate > 0 ? $", {CountWords.Of(DaysLate, "day")} late" : "")}."
        + (Forecast.Deciding.Count == 0 ? "" : $" It hangs most on: {string.Join("; ", Deciding.Select(NameOf))}.{WhyOthers}")
        + (Awaited.Count == 0 ? "" : $" It waits for {string.Join("; for ", Awaited.Select(wait => AwaitedWords.InShort(wait, Today)))}.");

    private IEnumerable<DecidingTask> Deciding => Forecast.Deciding.Take(3);

    /// <summary>Why work of other orders decides when this one is done; nothing where none does.</summary>
    private string WhyOthers
    {
        get
        {
            string[] others = [.. Deciding.Select(one => one.Order).Where(order => !string.Equals(order, Title, StringComparison.Ordinal)).Distinct(StringComparer.Ordinal)];
            string[] sooner = [.. others.Where(Sooner.Contains)];
            return others.Length == 0 ? ""
                : $" Work on {string.Join(" and ", others)} counts here because all orders share the shop's hours{(sooner.Length == 0 ? "" : $", and {string.Join(" and ", sooner)} {(sooner.Length == 1 ? "comes" : "come")} first")}.";
        }
    }

    /// <summary>A deciding task; one of another order is told with that.</summary>
    private string NameOf(DecidingTask one) => string.Equals(one.Order, Title, StringComparison.Ordinal) ? one.Task.Name : $"{one.Task.Name} ({one.Order})";
}
