namespace ShopDays.Plans;

/// <summary>When one more order could be done beside those in hand.</summary>
/// <param name="Behind">A plan in which it takes only the time that the others leave, or what stands against it; it stands last.</param>
/// <param name="Among">
/// A plan in which it is begun before some of the others' work, and is promised sooner for that; null where it would not be,
/// or not without taking from dates that have no room. The others follow each other as they do without it.
/// </param>
public sealed record AnotherOrder(PlanAnswer Behind, PlanAnswer.Planned? Among)
{
    /// <summary>Places among the others' work at which it may come in: the whole of it in so many parts.</summary>
    private const int Places = 16;

    /// <summary>Eight courses of ten are asked for; what a date has more than that is room which another order may take.</summary>
    private const double Asked = 0.8;

    /// <summary>Less than half a percent is nobody's loss and nobody's gain.</summary>
    private const double Nothing = 0.005;

    /// <summary>Plans it.</summary>
    /// <param name="request">All orders, of which the last one gives way.</param>
    /// <param name="inHand">What may become of the others without it: what gives way leaves them that.</param>
    /// <exception cref="ArgumentException">The request contradicts itself, or another order than the last one gives way.</exception>
    public static AnotherOrder Of(PlanRequest request, IReadOnlyList<FinishForecast> inHand)
    {
        if (request.Orders.Count(order => order.GivesWay) != 1 || inHand.Count != request.Orders.Count - 1)
        {
            throw new ArgumentException("one order is asked about, it gives way to the others, and each of these has a forecast", nameof(request));
        }

        if (FoundPlan.Of(request, out var inTheWay) is not { } behind)
        {
            return new(PlanMaker.Against(request, inTheWay), null);
        }

        FinishForecast[] forecasts = [.. inHand, behind.Forecasts[^1]];
        var answer = PlanMaker.Planned(behind, forecasts);
        return new(answer, request.Orders.Count == 1 ? null : Soonest(request, behind, forecasts));
    }

    /// <summary>The plan in which it comes in soonest without harm; the later it comes in the less it takes from the others.</summary>
    private static PlanAnswer.Planned? Soonest(PlanRequest request, FoundPlan behind, IReadOnlyList<FinishForecast> without)
    {
        PlanAnswer.Planned? best = null;
        var (from, to) = (0, Places);
        while (from < to)
        {
            var place = (from + to) / 2;
            if (behind.WithTheLastAt(place, Places) is { } plan && plan.Forecasts is var forecasts && DoesNoHarm(request, without, forecasts))
            {
                (best, to) = (PlanMaker.Planned(plan, [.. without.Zip(forecasts, AtMost).SkipLast(1), forecasts[^1]]), place);
            }
            else
            {
                from = place + 1;
            }
        }

        return best is not null && best.Forecasts[^1].P80 is { } date && (without[^1].P80 is not { } other || date.Date < other.Date) ? best : null;
    }

    private static bool DoesNoHarm(PlanRequest request, IReadOnlyList<FinishForecast> without, IReadOnlyList<FinishForecast> with)
    {
        var (before, after) = (0.0, 0.0);
        foreach (var (place, order) in request.Orders.SkipLast(1).Index())
        {
            var (chance, now) = (without[place].ChanceOfDue ?? 1, with[place].ChanceOfDue ?? 1);

            // What another order gains by more work in the shop is luck of the search, and no reason to promise anything.
            if (now > chance + Nothing)
            {
                return false;
            }

            before += order.Priority * Math.Max(0, Asked - chance);
            after += order.Priority * Math.Max(0, Asked - now);
        }

        return after <= before + 1e-9;
    }

    /// <summary>More work in the shop betters no chance: a set-up that happens to be shared does, by less than can be told from nothing.</summary>
    private static FinishForecast AtMost(FinishForecast without, FinishForecast with) =>
        with.ChanceOfDue > without.ChanceOfDue ? with with { ChanceOfDue = without.ChanceOfDue } : with;
}
