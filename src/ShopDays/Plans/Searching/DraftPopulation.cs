using ShopDays.Plans.Scheduling;

namespace ShopDays.Plans.Searching;

/// <summary>
/// Drafts in pairs, one forwards and one backwards, that are bred in turns: from all of one side, each crossed with another
/// of it, come new drafts for the other side, where each takes its place if it is no worse.
/// </summary>
internal sealed class DraftPopulation
{
    private readonly BothWays ways;
    private readonly Random draws;
    private readonly KeyCrossing[] crossings;
    private readonly KeyedOrder[] orders;
    private readonly Draft[][] sides;
    private readonly long[] keys;
    private readonly int[] order;
    private Draft child;
    private bool isForwards;

    /// <summary>A population without drafts.</summary>
    public DraftPopulation(BothWays ways, int pairs, Random draws)
    {
        this.ways = ways;
        this.draws = draws;
        var (problem, mirrored) = (ways.ProblemOf(isForwards: true), ways.ProblemOf(isForwards: false));
        crossings = [new(mirrored, draws), new(problem, draws)];
        orders = [new(mirrored), new(problem)];
        sides = [.. Enumerable.Range(0, 2).Select(_ => Enumerable.Range(0, pairs).Select(_ => Empty(problem)).ToArray())];
        keys = new long[problem.Blocks];
        order = new int[problem.Blocks];
        child = Empty(problem);
    }

    /// <summary>How many pairs there are.</summary>
    public int Pairs => sides[0].Length;

    /// <summary>Fills one pair's forward draft.</summary>
    public bool Begin(int pair, ReadOnlySpan<int> blocks) => ways.Forwards(blocks, sides[1][pair]);

    /// <summary>Breeds one generation of drafts.</summary>
    /// <param name="budget">Passes after which it stops.</param>
    /// <returns>Whether any draft got better.</returns>
    public bool Breed(int budget)
    {
        var (from, onto) = (sides[isForwards ? 0 : 1], sides[isForwards ? 1 : 0]);
        var isBetter = false;
        for (var pair = 0; pair < from.Length && ways.Tried < budget; pair++)
        {
            if (!from[pair].IsMade)
            {
                continue;
            }

            var other = Other(from, pair);
            crossings[isForwards ? 1 : 0].Cross(from[pair].Keys, other.Keys, keys);
            if (Place(from[pair], child) && child.Score <= onto[pair].Score)
            {
                isBetter |= child.Score.Late < onto[pair].Score.Late || child.Score.Finish < onto[pair].Score.Finish;
                (onto[pair], child) = (child, onto[pair]);
            }
        }

        isForwards = !isForwards;
        return isBetter;
    }

    /// <summary>Turns the best backward draft forwards, if it promises to be better than all that are.</summary>
    public void TurnBest()
    {
        var best = sides[0].MinBy(draft => draft.Score)!;
        if (!best.IsMade || best.Score >= ways.BestScore)
        {
            return;
        }

        isForwards = true;
        for (var block = 0; block < keys.Length; block++)
        {
            keys[block] = best.Keys[block];
        }

        Place(best, child);
    }

    private static Draft Empty(ScheduleProblem problem) => new(problem.Blocks, problem.Orders.Length);

    private bool Place(Draft from, Draft into)
    {
        orders[isForwards ? 1 : 0].Write(keys, order);
        return isForwards ? ways.Forwards(order, into) : ways.Backwards(order, from, into);
    }

    /// <summary>The better of two that are drawn; not the same as the one that it is for.</summary>
    private Draft Other(Draft[] from, int than)
    {
        var one = draws.Next(from.Length);
        var other = draws.Next(from.Length);
        var pick = from[other].Score < from[one].Score ? other : one;
        return from[pick == than ? (pick + 1) % from.Length : pick] is { IsMade: true } made ? made : from[than];
    }
}
