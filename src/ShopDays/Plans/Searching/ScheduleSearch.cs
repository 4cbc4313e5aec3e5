using ShopDays.Plans.Scheduling;

namespace ShopDays.Plans.Searching;

/// <summary>How far a search has come.</summary>
/// <param name="Tried">Schedules made so far.</param>
/// <param name="Best">What the best of them is worth; its finish is that of all orders, each times its weight.</param>
internal readonly record struct SearchPoint(int Tried, ScheduleScore Best);

/// <summary>
/// Looks for a good order of work: first by rules and by chance in their favour, then by breeding from what was found,
/// forwards and backwards in turns, and once that brings nothing more, again with more drafts. Where the budget has room for
/// every order there is, all are tried instead. One seed gives one answer.
/// </summary>
/// <remarks>
/// Two populations, of schedules pushed to their beginning and to their end, bred from each other: D. Debels and
/// M. Vanhoucke (2005, from memory). Their sizes, and beginning again with half as many more, were found by trial.
/// </remarks>
internal sealed class ScheduleSearch
{
    /// <summary>Generations in which nothing got better after which it begins again.</summary>
    private const int Patience = 10;

    /// <summary>How much larger the next population is.</summary>
    private const double Growth = 1.5;

    /// <summary>
    /// Where nobody has hours, one draft in so many begins in an order that is drawn evenly from all. In hours all do: who is
    /// there, caps and quiet decide more than tails, and drafts that follow tails grow alike too soon. Found by trial.
    /// </summary>
    private const int OneInEven = 5;

    /// <summary>The rules: how much of the longest tail like work may jump ahead.</summary>
    private static readonly double[] Likenesses = [0, 0.03, 0.1, 0.3, 1];

    private readonly ScheduleProblem problem;
    private readonly ScheduleOrders orders;
    private readonly Random draws;
    private readonly int[] order;
    private BothWays? ways;
    private ScheduleScore told = ScheduleScore.None;

    /// <summary>A search over a problem.</summary>
    public ScheduleSearch(ScheduleProblem problem, int seed)
    {
        this.problem = problem;
        orders = new(problem);
        draws = new(seed);
        order = new int[problem.Blocks];
    }

    /// <summary>Orders of blocks to begin with, beside those of the rules.</summary>
    public IReadOnlyList<int[]> Known { get; init; } = [];

    /// <summary>A finish, of all orders together and each times its weight, that no schedule betters: from there the search looks only for fewer days, calls and turns, and stops when breeding brings none.</summary>
    public long NoneBefore { get; init; }

    /// <summary>Whether nothing but the finish is looked for, so that the search is over at <see cref="NoneBefore"/>.</summary>
    public bool IsForTheFinishAlone { get; init; }

    /// <summary>Told of every better schedule.</summary>
    public Action<SearchPoint>? Progress { get; init; }

    /// <summary>Asked after each generation whether to go on; for what is measured by the clock.</summary>
    public Func<bool> GoesOn { get; init; } = static () => true;

    /// <summary>How many schedules were made, forwards and backwards.</summary>
    public int Tried => ways?.Tried ?? 0;

    /// <summary>The best so far; none before anything was placed.</summary>
    public ScheduleScore BestScore => ways?.BestScore ?? ScheduleScore.None;

    /// <summary>Whether the best is as good as any can be, by <see cref="NoneBefore"/>.</summary>
    public bool IsAtBound => BestScore is { Late: 0 } best && best.Finish <= NoneBefore;

    /// <summary>Searches.</summary>
    /// <param name="budget">Schedules to make, at least the few that the rules give.</param>
    /// <returns>The best order; null when no order fits before the calendars end.</returns>
    public int[]? Find(int budget)
    {
        orders.Write(order, 0, 0, draws);
        ways = new(problem, order);
        var population = new DraftPopulation(ways, SizeFor(budget), draws);
        var begun = BeginByRules(population);
        Tell();
        if (BestScore == ScheduleScore.None)
        {
            return null;
        }

        if (EveryOrder.IsWithin(problem, budget - Tried))
        {
            TryAll(population);
            return ways.Best.ToArray();
        }

        for (var pair = begun; pair < population.Pairs && MayGoOn(budget); pair++)
        {
            BeginByChance(population, pair);
        }

        while (problem.Blocks > 1 && MayGoOn(budget))
        {
            BreedOut(population, budget);
            population.TurnBest();
            Tell();
            if (IsAtBound)
            {
                break;
            }

            population = new(ways, (int)(population.Pairs * Growth), draws);
            for (var pair = 0; pair < population.Pairs && MayGoOn(budget); pair++)
            {
                BeginByChance(population, pair);
            }
        }

        return ways.Best.ToArray();
    }

    /// <summary>
    /// Small for few schedules, so that there are generations enough: nearly as many as there are blocks, until there are
    /// thirty drafts. Found by trial.
    /// </summary>
    private int SizeFor(int budget)
    {
        var forGenerations = Math.Min(30, (int)(budget / (0.9 * Math.Max(1, problem.Blocks))));
        var least = Math.Max(forGenerations, Likenesses.Length + Known.Count + 3);
        return Math.Clamp((int)(0.42 * Math.Sqrt(budget)), least, Math.Max(Math.Max(40, problem.Blocks * 3 / 2), least));
    }

    /// <summary>Rules that come to the same order, as where no work is like another, count once: drafts are to differ.</summary>
    /// <returns>How many pairs are begun.</returns>
    private int BeginByRules(DraftPopulation population)
    {
        var begun = new List<int[]>();
        foreach (var likeness in Likenesses)
        {
            orders.Write(order, likeness, 0, draws);
            if (!begun.Exists(one => one.AsSpan().SequenceEqual(order)))
            {
                begun.Add([.. order]);
            }
        }

        begun.AddRange(Known);
        for (var pair = 0; pair < begun.Count; pair++)
        {
            population.Begin(pair, begun[pair]);
        }

        return begun.Count;
    }

    /// <summary>Few orders are soon gone through, and no breeding is as sure.</summary>
    private void TryAll(DraftPopulation population)
    {
        foreach (var one in EveryOrder.Of(problem))
        {
            if (IsEnough || !GoesOn())
            {
                return;
            }

            population.Begin(0, one);
            Tell();
        }
    }

    private void BeginByChance(DraftPopulation population, int pair)
    {
        orders.Draw(order, !problem.Workers.IsEmpty || draws.Next(OneInEven) == 0, draws);
        population.Begin(pair, order);
    }

    private void BreedOut(DraftPopulation population, int budget)
    {
        for (var idle = 0; idle <= Patience && MayGoOn(budget);)
        {
            idle = population.Breed(budget - 1) ? 0 : idle + 1;
            Tell();
        }
    }

    private bool MayGoOn(int budget) => Tried < budget && !IsEnough && GoesOn();

    /// <summary>Where nobody has hours there is nothing to better but the finish.</summary>
    private bool IsEnough => IsAtBound && (IsForTheFinishAlone || problem.Workers.IsEmpty);

    private void Tell()
    {
        if (BestScore < told)
        {
            told = BestScore;
            Progress?.Invoke(new(Tried, BestScore));
        }
    }
}
