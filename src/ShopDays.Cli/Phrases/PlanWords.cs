using NodaTime;
using ShopDays.Layouts;
using ShopDays.Measures;
using ShopDays.Plans;
using ShopDays.Work;

namespace ShopDays.Cli.Phrases;

/// <summary>What a maker should hear beside the dates of a plan: wishes that the stock does not fulfil, dates that cannot be kept.</summary>
internal static class PlanWords
{
    /// <summary>Spares that no board yields, matched parts out of sequence, show parts without the best face.</summary>
    public static IReadOnlyList<string> OfLayout(Layout layout, LengthFormat format) =>
    [
        .. layout.Unplaced.Where(one => one.Number > one.Part.Count).Select(one =>
            FormattableString.Invariant($"No board yields {one.Part.Name} {one.Number}: {UnplacedWords.Why(one, format)}. It is only the spare; the plan goes on without it.")),
        .. layout.NotHonoured.Select(WishWords.Of),
    ];

    /// <summary>A due date that is over before any plan could end, and a start that is past.</summary>
    public static IReadOnlyList<string> OfDates(Plan plan, LocalDate? due, LocalDate today)
    {
        var said = new List<string>();
        if (CannotKeep(plan, due))
        {
            said.Add($"The due date cannot be kept: no plan could end before {DateWords.Of(plan.LowerBound.At)}.");
        }

        if (plan.Begin.Date < today)
        {
            said.Add($"The start, {DateWords.Of(plan.Begin.Date)}, is past: the plan counts sessions from then on as if they were still to come.");
        }

        return said;
    }

    /// <summary>That work which is done stands in the plan as if it were still to do.</summary>
    public static IReadOnlyList<string> OfWorkDone(bool isBegun, string job) =>
        isBegun ? [$"Work of this job is logged; the plan is of the whole job, as if nothing were done. What is left is planned without --whole: shopdays plan {job}"] : [];

    /// <summary>What a plan of the rest leaves out, where the rest of it is to be found, and what should be logged.</summary>
    public static IReadOnlyList<string> OfTheRest(ToldRest rest, TaskMarks marks, string job) =>
    [
        rest.Standing.IsBegun
            ? $"The sheets of days before stay valid. All hours against the promise: shopdays progress {job}. The whole job from its start: shopdays plan {job} --whole"
            : $"What is done already and not logged: shopdays log add {job}. The plan from its start: shopdays plan {job} --whole",
        .. rest.Moved is null ? [$"No promise of this job is on record, to say what moved since. Keep one with: shopdays plan {job} --promise"] : (string[])[],
        .. ((string?[])[PassedOverWords.Of(rest.Left.PassedOver, marks, job)]).OfType<string>(),
    ];

    /// <summary>How much sooner any plan could finish, and what keeps it from that.</summary>
    public static string OfBound(Plan plan)
    {
        var (bound, finish) = (plan.LowerBound, plan.Finish);
        if (plan.Gap <= Duration.Zero)
        {
            return $"No plan can finish sooner than this one, on {DateWords.When(finish)}, because of {bound.Reason}.";
        }

        var later = Period.DaysBetween(bound.At.Date, finish.Date) is > 0 and var days ? CountWords.Of(days, "day") : WorkTimeText.Write(WorkTime.FromMinutes(plan.Gap.TotalMinutes));
        return $"Nothing can finish before {DateWords.When(bound.At, finish.Year)}, because of {bound.Reason}. This plan finishes on {DateWords.When(finish)}, {later} later.";
    }

    /// <summary>How a plan stands on each thing that plans are compared by, the weightiest first, and how it was looked for.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="due">The due date.</param>
    /// <param name="budget">Schedules that were to be looked at.</param>
    public static string OfSearch(Plan plan, LocalDate? due, int budget)
    {
        var promise = due is not { } date ? "" : plan.Finish.ToInstant() <= plan.Finish.Zone.AtStartOfDay(date.PlusDays(1)).ToInstant()
            ? $"the due date, {DateWords.Short(date)}, kept; "
            : $"{CountWords.Of(Period.DaysBetween(date, plan.Finish.Date), "day")} after the due date, {DateWords.Short(date)}; ";
        var stopped = plan.Schedules < budget && plan.Gap <= Duration.Zero ? ", and no more, since none can finish sooner" : "";
        return $"Plans are compared by promises kept, then by their finish, then by shop days, {(plan.Visits.Count > 0 ? "then by days on which somebody is called in, " : "")}then by turns from one kind of work to another, then by heavy work in a row. This one: {promise}finish {DateWords.When(plan.Finish)}; {CountWords.Of(plan.ShopDays, "shop day")}; {(plan.Visits.Count > 0 ? $"somebody called in on {CountWords.Of(plan.Visits.Select(visit => visit.Date).Distinct().Count(), "day")}; " : "")}{CountWords.Of(plan.Changeovers, "turn")}; {(plan.HeavyInARow > WorkTime.Zero ? WorkTimeText.Write(plan.HeavyInARow) : "nothing")} of heavy work beyond a bout without lighter work between. {CountWords.Of(plan.Schedules, "schedule")} {(plan.Schedules == 1 ? "was" : "were")} looked at{stopped}.";
    }

    /// <summary>What stands above the sessions in which a plan slips easily.</summary>
    public const string AtRisk = "Where the plan slips most easily, all being on time before";

    /// <summary>The same in few words, on paper.</summary>
    public const string AtRiskInShort = "Where it slips most easily, and by what";

    /// <summary>A session in which the plan slips easily: <c>Sat 3 Apr, 09:00: glue up: frame, or one of 3 others; in 4 of 10 courses not done by the end of it</c>.</summary>
    /// <param name="risk">The session.</param>
    /// <param name="nameWorker">Whether it is said whose session it is.</param>
    /// <param name="order">The order that slips; null where there is one only.</param>
    public static string OfRisk(SessionAtRisk risk, bool nameWorker, string? order = null)
    {
        var others = risk.Ends.Count switch
        {
            1 => "",
            2 => $", or {risk.Ends[1].Name}",
            _ => $", or one of {CountWords.Number(risk.Ends.Count - 1)} others",
        };
        return $"{WhenAndWho(risk, nameWorker, order)}: {risk.Ends[0].Name}{others}; in {ChanceWords.OutOf(risk.Slips)} courses not done by the end of it";
    }

    /// <summary>The same in few words, below a heading: <c>Sat 3 Apr, 09:00, in 4 of 10 trials: glue up: frame</c>.</summary>
    /// <param name="risk">The session.</param>
    /// <param name="nameWorker">Whether it is said whose session it is.</param>
    /// <param name="order">The order that slips; null where there is one only.</param>
    public static string OfRiskInShort(SessionAtRisk risk, bool nameWorker, string? order = null) => $"{WhenAndWho(risk, nameWorker, order)}, in {ChanceWords.OutOf(risk.Slips)} trials: {risk.Ends[0].Name}";

    private static string WhenAndWho(SessionAtRisk risk, bool nameWorker, string? order) =>
        string.Join(", ", ((string?[])[DateWords.When(risk.Session.Start), nameWorker ? risk.Session.Worker : null, order]).OfType<string>());

    /// <summary>Whether a due date is over before any plan could end.</summary>
    public static bool CannotKeep(Plan plan, LocalDate? due) => due is { } date && plan.LowerBound.At.ToInstant() > plan.LowerBound.At.Zone.AtStartOfDay(date.PlusDays(1)).ToInstant();
}
