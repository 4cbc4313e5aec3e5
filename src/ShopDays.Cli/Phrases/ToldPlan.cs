using NodaTime;
using ShopDays.Cli.Files;
using ShopDays.Days;
using ShopDays.Layouts;
using ShopDays.Plans;
using ShopDays.Work;

namespace ShopDays.Cli.Phrases;

/// <summary>A plan with all that is told about it, on the terminal and to other programs.</summary>
/// <param name="Read">The shop and the job.</param>
/// <param name="Layout">Where the parts come out of the boards.</param>
/// <param name="Answer">The plan and its forecast.</param>
/// <param name="Cautions">The cautions of its work.</param>
/// <param name="Remarks">What to know of the work before it begins.</param>
/// <param name="Marks">The marks of its tasks.</param>
/// <param name="Behind">What its times come from.</param>
/// <param name="Today">The date by the shop's clock.</param>
internal sealed record ToldPlan(
    ShopAndJob Read,
    Layout Layout,
    PlanAnswer.Planned Answer,
    IReadOnlyList<Caution> Cautions,
    IReadOnlyList<Remark> Remarks,
    TaskMarks Marks,
    TimesBehind Behind,
    LocalDate Today)
{
    /// <summary>The promise of this plan, where it was put on record.</summary>
    public KeptPromise? Kept { get; init; }

    /// <summary>What is told where the plan is of the rest of the job; null where it is of the whole.</summary>
    public ToldRest? Rest { get; init; }

    /// <summary>Schedules that were to be looked at.</summary>
    public required int Budget { get; init; }

    /// <summary>Whether work of the job is logged.</summary>
    public bool IsBegun { get; init; }

    /// <summary>The date by the end of which the job should be finished; null for none.</summary>
    public LocalDate? Due => Read.Job.Due;

    /// <summary>Hours that give no session while the plan runs.</summary>
    public IReadOnlyList<UnusedSpan> Unused { get; } = UnusedWords.Of(Read, Answer.Plan);

    /// <summary>The same in words.</summary>
    public IReadOnlyList<string> UnusedHours => [.. Unused.Select(span => UnusedWords.Of(span, Read.Shop))];

    /// <summary>Dates that cannot be kept, or are past: to be told with the dates.</summary>
    public IReadOnlyList<string> DateNotes => PlanWords.OfDates(Answer.Plan, Due, Today);

    /// <summary>What else is to be known of the plan: work that is done, and wishes that the stock does not fulfil.</summary>
    public IReadOnlyList<string> OtherNotes => [.. Rest is null ? PlanWords.OfWorkDone(IsBegun, Read.LogName) : PlanWords.OfTheRest(Rest, Marks, Read.LogName), .. AwaitedWords.OfLate(Answer.Plan.Waits), .. PlanWords.OfLayout(Layout, Read.Located.Format)];

    /// <summary>What of the promise is for pieces that may be spoiled, and which spare blank would help; none where nothing may be.</summary>
    public IReadOnlyList<string> SpoilingNotes => Answer.Spoiling is { } spoiling ? [.. ((string[])[SpoilingWords.Of(spoiling), SpoilingWords.Spares(spoiling)]).Where(one => one.Length > 0)] : [];

    /// <summary>All of these.</summary>
    public IReadOnlyList<string> Notes => [.. DateNotes, .. OtherNotes];
}
