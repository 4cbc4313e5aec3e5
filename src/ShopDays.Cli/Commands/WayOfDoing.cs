using System.Diagnostics;
using ShopDays.Choices;
using ShopDays.Cli.Phrases;
using ShopDays.Plans;
using ShopDays.Prices;
using ShopDays.Times;
using ShopDays.Work;

namespace ShopDays.Cli.Commands;

/// <summary>Works one way of doing a job out, or says what stands against it.</summary>
internal static class WayOfDoing
{
    /// <summary>Works it out.</summary>
    /// <param name="name">What it is called.</param>
    /// <param name="workings">Its layout, order of work, draws and plan.</param>
    /// <param name="risk">The risk at which its price is told.</param>
    /// <param name="isFirstLook">Whether the courses of the plan do for the price too.</param>
    public static Tried Try(string name, Workings workings, double risk, bool isFirstLook = false) =>
        Outcomes(name, workings, risk, isFirstLook) with { Glues = [.. workings.Read.Job.GlueUps.Select(one => one.Adhesive).Distinct(StringComparer.Ordinal)] };

    private static Tried Outcomes(string name, Workings workings, double risk, bool isFirstLook) => workings switch
    {
        { Missing: { Count: > 0 } missing } => new(name, null, [.. UnplacedWords.Lines(missing, workings.Read.Located.Format)]),
        { Order: OrderOfWork.GoesRound round } => new(name, null, [$"the order of work goes round: {string.Join(", ", round.Names)}"]),
        { Order: OrderOfWork.Made { Graph: var graph } } => workings.PlanOf(graph) switch
        {
            PlanAnswer.CannotBePlanned cannot => new(name, null, [.. ObstacleWords.Lines(cannot.Reasons)]),
            PlanAnswer.Planned planned => new(name, OutcomeOf(workings, graph, planned, risk, isFirstLook), []),
            _ => throw new UnreachableException(),
        },
        _ => throw new UnreachableException(),
    };

    private static Outcome OutcomeOf(Workings workings, TaskGraph graph, PlanAnswer.Planned planned, double risk, bool isFirstLook)
    {
        var (read, draws) = (workings.Read, workings.DrawsOf(graph));
        var timber = TimberBill.Of(workings.Layout, read.Shop.Money?.Terms.SpareBoards ?? 0);
        return new()
        {
            Plan = planned.Plan,
            Forecast = planned.Forecast,
            Spoiling = planned.Spoiling,
            Estimate = JobEstimate.Of(graph, draws),
            Timber = timber,
            Money = read.Shop.Money is { Terms: var terms } ? Priced(terms) : null,
        };

        PricedOutcome Priced(PricingTerms terms)
        {
            var price = workings.PriceOf(graph, terms, timber);
            return new(price, PriceRisk.Of(isFirstLook ? draws : workings.RiskDrawsOf(graph), terms.Rate.PerHour, price.Outlay).LeastPrice(risk));
        }
    }
}
