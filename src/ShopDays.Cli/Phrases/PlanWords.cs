using NodaTime;
using ShopDays.Layouts;
using ShopDays.Measures;
using ShopDays.Plans;

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
        isBegun ? [$"Work of this job is logged; the plan is of the whole job, as if nothing were done. What is left, and until when: shopdays progress {job}"] : [];

    /// <summary>Whether a due date is over before any plan could end.</summary>
    public static bool CannotKeep(Plan plan, LocalDate? due) => due is { } date && plan.LowerBound.At.ToInstant() > plan.LowerBound.At.Zone.AtStartOfDay(date.PlusDays(1)).ToInstant();
}
