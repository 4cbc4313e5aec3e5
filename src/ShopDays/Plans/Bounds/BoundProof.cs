using System.Collections.Immutable;
using ShopDays.Plans.Scheduling;

namespace ShopDays.Plans.Bounds;

/// <summary>
/// What a bound rests on. Each limit by itself is taken away and the bound looked for again: what lowers it binds. What
/// does not is then taken away for good, so that the cause that is left speaks of nothing that could as well be otherwise.
/// </summary>
/// <param name="Bound">The bound, with its cause.</param>
/// <param name="Ties">What lowers it when it is taken away, that which lowers it most first.</param>
/// <param name="Problem">The problem that the cause is one of: as given, but for limits that do not matter.</param>
internal sealed record BoundProof(Bound Bound, ImmutableArray<BoundTie> Ties, ScheduleProblem Problem)
{
    /// <summary>Looks for it.</summary>
    public static BoundProof Of(PlanRequest request, OpenHours hours, ScheduleProblem problem, WorkInHand work)
    {
        int[] begins = [.. work.Tasks.Select(one => hours.BeginOf(request.Orders[one.Order]))];
        return Of(new BoundRelief(problem, [], ProblemCompiler.OpeningOf(request, hours, work), begins));
    }

    private static BoundProof Of(BoundRelief whole)
    {
        var bound = whole.Bound();
        if (bound.Cause.Tasks.IsEmpty)
        {
            return new(bound, [], whole.Problem);
        }

        var limits = whole.Limits().Select(limit => (Limit: limit, Without: whole.Without(limit).Bound().Minute)).ToList();
        var idle = limits.Where(one => one.Without >= bound.Minute).Select(one => one.Limit).ToList();
        var left = idle.Aggregate(whole, (relief, limit) => relief.Without(limit));
        var proof = left.Bound();
        if (proof.Minute < bound.Minute)
        {
            // Some of them bind alike: of these the last one stays.
            left = idle.Aggregate(whole, (relief, limit) => relief.Without(limit) is var without && without.Bound().Minute >= bound.Minute ? without : relief);
            proof = left.Bound();
        }

        var ties = limits.Where(one => one.Without < bound.Minute).OrderBy(one => one.Without).Select(one => new BoundTie(one.Limit.Kind, one.Limit.Task, one.Without));
        return new(bound with { Cause = proof.Cause }, [.. ties], left.Problem);
    }
}
