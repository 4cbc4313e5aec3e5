using NodaTime;
using ShopDays.Cli.Files;
using ShopDays.Measures;
using ShopDays.Parts;
using ShopDays.Plans;
using ShopDays.Work;

namespace ShopDays.Cli.Phrases;

/// <summary>What a job waits for from others, in words.</summary>
internal static class AwaitedWords
{
    /// <summary>How long such a wait is: <c>3 d to 12 d in eight cases of ten</c>; of a fixed one nothing but its length.</summary>
    public static string Range(WaitGuess wait) => wait.Low == wait.High
        ? WaitText.Write(wait.Likely)
        : $"{WaitText.Write(wait.Low)} to {WaitText.Write(wait.High)} in eight cases of ten";

    /// <summary>The range of a planned wait with its dates: <c>asked Mon 1 Mar; 3 d to 12 d in eight cases of ten, so Thu 4 Mar to Sat 13 Mar; 2 days late</c>.</summary>
    public static string InPlan(PlannedWait wait)
    {
        var (awaited, decision) = (wait.Awaited!, wait.Awaited!.One.Decision);
        var range = Range(decision.Wait) + (decision.Wait.Low == decision.Wait.High ? "" : $", so {DateWords.Short(awaited.Early.Date)} to {DateWords.Short(awaited.Late.Date)}");
        return $"{(decision.IsDrying ? "from" : decision.IsOrdered ? "ordered" : "asked")} {DateWords.Short(wait.Start.Date)}; {range}{(awaited.DaysLate == 0 ? "" : $"; {CountWords.Of(awaited.DaysLate, "day")} late")}";
    }

    /// <summary>The reason of a wait, with the range of one for others.</summary>
    public static string Reason(PlannedWait wait) => wait.Awaited is null ? wait.Reason : $"{wait.Reason} ({InPlan(wait)})";

    /// <summary>What is late, each a sentence.</summary>
    /// <param name="waits">The waits of a plan.</param>
    /// <param name="order">The order that waits; null where there is one only.</param>
    public static IReadOnlyList<string> OfLate(IEnumerable<PlannedWait> waits, string? order = null) =>
    [
        .. waits.Where(wait => wait.Awaited is { DaysLate: > 0 }).Select(wait => wait.Awaited!.One.Decision.IsDrying
            ? $"{wait.Awaited.One.Name}{(order is null ? "" : $", for {order}")}: nine in ten would be dry by {DateWords.Of(wait.Awaited.Late.Date)}. Read the meter and write that into the job file."
            : $"{Capital(Late(wait.Awaited!.One.Decision, wait.Awaited.DaysLate))}{(order is null ? "" : $", for {order}")}: nine in ten would have come by {DateWords.Of(wait.Awaited.Late.Date)}. When it comes, write 'arrived' with its date into the job file."),
    ];

    /// <summary>What is awaited, and by how much it is late: <c>the client's word: client agrees, 3 days late</c>.</summary>
    public static string WithLateness(Awaited one, Instant now, DateTimeZone zone)
    {
        var asked = one.Decision.Asked is { } date ? zone.AtStartOfDay(date) : one.Since?.InZone(zone);
        var late = asked is { } since ? Awaited.DaysLate(one.Decision, since, now) : 0;
        return one.Decision.What + (late == 0 ? "" : $", {CountWords.Of(late, "day")} late");
    }

    /// <summary>What is awaited of an order, in a few words: <c>the client's word: client agrees, since Mon 1 Mar, likely until Sat 6 Mar</c>.</summary>
    public static string InShort(PlannedWait wait, LocalDate today)
    {
        var since = wait.Start.Date <= today ? $"since {DateWords.Short(wait.Start.Date)}" : $"from {DateWords.Short(wait.Start.Date)}";
        return $"{wait.Reason}, {since}, likely until {DateWords.Short(wait.End.Date)}{(wait.Awaited!.DaysLate == 0 ? "" : $", {CountWords.Of(wait.Awaited.DaysLate, "day")} late")}";
    }

    /// <summary>What a job's file says is still awaited, each in a line.</summary>
    /// <param name="read">The shop and the job.</param>
    /// <param name="now">The moment.</param>
    public static IReadOnlyList<string> InFile(ShopAndJob read, Instant now) => [.. read.Job.Decisions.Where(one => one.Arrived is null).Select(one => InFile(one, read, now))];

    private static string InFile(Decision one, ShopAndJob read, Instant now)
    {
        var verb = one.IsOrdered ? "ordered" : "asked";
        var since = one.Asked is { } date ? $"{verb} {DateWords.Of(date)}"
            : one.After.Count > 0 ? $"to be {verb} after {string.Join(", ", one.After)}"
            : $"from the start, {DateWords.Of(read.Job.Start)}";
        var late = one.Asked is { } asked ? Awaited.DaysLate(one, read.Shop.Place.Zone.AtStartOfDay(asked), now) : 0;
        return $"{one.What} ({since}; {Range(one.Wait)}){(late == 0 ? "" : $"; {Late(one, late)}")}";
    }

    private static string Late(Decision one, int days) => $"{one.Owed} is {CountWords.Of(days, "day")} late{(one.Owed == one.Name ? "" : $" ({one.Name})")}";

    private static string Capital(string words) => char.ToUpperInvariant(words[0]) + words[1..];
}
