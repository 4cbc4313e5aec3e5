using NodaTime;
using ShopDays.Choices;
using ShopDays.Cli.Files;
using ShopDays.Cli.Files.Variants;
using ShopDays.Cli.Phrases;
using ShopDays.Work;

namespace ShopDays.Cli.Commands;

/// <summary>
/// Tries single changes: all of them with few schedules and courses, against the job as it is with as few, and the best of
/// them as thoroughly as any variant.
/// </summary>
internal sealed class Suggestions
{
    private const int FewSchedules = 40;
    private const int FewCourses = 300;
    private const int MostLookedAtAgain = 6;

    private readonly Workings workings;
    private readonly Tried asIs;
    private readonly double risk;
    private readonly Instant now;
    private readonly IReadOnlyList<SingleChange> changes;

    /// <summary>Finds what there is to try.</summary>
    /// <param name="workings">The job as it is.</param>
    /// <param name="asIs">What it comes to.</param>
    /// <param name="risk">The risk at which prices are compared.</param>
    /// <param name="now">The moment.</param>
    public Suggestions(Workings workings, Tried asIs, double risk, Instant now)
    {
        (this.workings, this.asIs, this.risk, this.now) = (workings, asIs, risk, now);
        changes = asIs.Outcome is { } outcome && workings.Order is OrderOfWork.Made { Graph: var graph }
            ? new SingleChanges(workings.Read, outcome, workings.FaceSavingsOf(graph)).All()
            : [];
    }

    /// <summary>How many there are.</summary>
    public int Count => changes.Count;

    /// <summary>Those that save something, what saves most first.</summary>
    public IReadOnlyList<Tried> Best()
    {
        if (asIs.Outcome is not { } outcome || changes.Count == 0)
        {
            return [];
        }

        var few = Math.Min(FewSchedules, workings.Schedules);
        var first = WayOfDoing.Try(asIs.Name, workings.Otherwise(workings.Read, workings.Layout, few, FewCourses), risk, isFirstLook: true).Outcome!;
        var looked = changes.Select(Otherwise).Where(one => one is not null).Select(one => one!.Value).Select(one => (one.Workings, Tried: WayOfDoing.Try(one.Change.Name, one.Workings, risk, isFirstLook: true) with { Text = one.Change.Text }));
        var again = InOrder(looked, first).Take(MostLookedAtAgain).Select(one =>
        {
            var thorough = workings.Otherwise(one.Workings.Read, one.Workings.Layout, workings.Schedules, workings.Courses);
            return (thorough, WayOfDoing.Try(one.Tried.Name, thorough, risk) with { Text = one.Tried.Text });
        });
        return [.. InOrder(again, outcome).Select(one => one.Tried)];

        (SingleChange Change, Workings Workings)? Otherwise(SingleChange change)
        {
            var findings = new Findings();
            var variant = VariantsFile.ReadTyped(change.Text, change.Name, findings);

            // What a job does not let itself be changed to is no suggestion, and no mistake of the maker's.
            return variant is not null && findings.AreNone && workings.Read.Otherwise(variant, now).Read is { } read
                ? (change, workings.Otherwise(read, variant.Job is null ? workings.Layout : null, few, FewCourses))
                : null;
        }
    }

    private static IReadOnlyList<(Workings Workings, Tried Tried)> InOrder(IEnumerable<(Workings Workings, Tried Tried)> tried, Outcome against) =>
        Gain.InOrder(tried.Where(one => one.Tried.Outcome is not null).ToList(), one => Gain.Of(Difference.Between(against, one.Tried.Outcome!)));
}
