using System.Runtime.InteropServices;

namespace ShopDays.Layouts.Search;

/// <summary>What cuts cost, in the unit of the candidates' values.</summary>
/// <param name="Crosscut">A crosscut, however long.</param>
/// <param name="CrosscutPerUnit">What each unit of a crosscut's length adds.</param>
/// <param name="Rip">A rip, however long.</param>
/// <param name="RipPerUnit">What each unit of a rip's length adds.</param>
internal readonly record struct CostOfCuts(double Crosscut, double CrosscutPerUnit, double Rip, double RipPerUnit)
{
    public double CrosscutOf(int width) => Crosscut + (CrosscutPerUnit * width);

    public double RipOf(int length) => Rip + (RipPerUnit * length);
}

/// <summary>A board filled.</summary>
/// <param name="Value">What its candidates are worth less its cuts; 0 when nothing is worth its cuts.</param>
/// <param name="Filling">How it is cut; null when it is left whole.</param>
/// <param name="IsProven">Whether nothing is better that is cut as <see cref="BoardFill"/> cuts.</param>
internal readonly record struct FilledBoard(double Value, Filling? Filling, bool IsProven);

/// <summary>
/// Fills one board as valuably as possible with so many of each candidate: best first, small fillings are put end to end
/// and side by side into larger ones, as long as what is in them and what could at most lie around them is more than the
/// best that is known (after P. Y. Wang, 1983, and K. V. Viswanathan and A. Bagchi, 1993, from memory).
/// </summary>
/// <remarks>
/// Every piece is trimmed to the least that holds its filling before it is cut on. Where cuts cost nothing, no other way
/// of cutting right across yields more. Where they cost, one that parts a piece with its waste and trims the parts may
/// save a little more, and is not looked for.
/// </remarks>
internal sealed class BoardFill
{
    private readonly int length;
    private readonly int width;
    private readonly IReadOnlyList<Candidate> candidates;
    private readonly CostOfCuts cuts;
    private readonly RoundAbout around;
    private readonly FillingStore store;
    private readonly PriorityQueue<int, Promise> open = new();
    private readonly List<int> done = [];
    private double hope = 1;
    private double best;
    private int bestFilling = -1;
    private int trials;

    /// <param name="length">Length of the board.</param>
    /// <param name="width">Its width.</param>
    /// <param name="candidates">What it may be filled with.</param>
    /// <param name="cuts">What its cuts cost; nothing by default.</param>
    /// <param name="detail">Into how many steps of length the board is divided to judge what lies around a filling.</param>
    public BoardFill(int length, int width, IReadOnlyList<Candidate> candidates, CostOfCuts cuts = default, int detail = 128)
    {
        (this.length, this.width, this.candidates, this.cuts) = (length, width, candidates, cuts);
        around = new RoundAbout(length, width, candidates, detail);
        store = new FillingStore(candidates.Count, cuts);
    }

    /// <summary>The best that is found.</summary>
    /// <param name="most">How many pairs of fillings are tried at most.</param>
    /// <param name="atLeast">A value that is known to be within reach; only what is better is looked for.</param>
    /// <param name="hope">
    /// What share of what could lie around a filling counts when the next is chosen, 0 to 1: 1 proves soonest, less finds
    /// something good sooner.
    /// </param>
    public FilledBoard Find(int most, double atLeast = 0, double hope = 1)
    {
        (best, this.hope) = (atLeast, hope);
        for (var kind = 0; kind < candidates.Count; kind++)
        {
            var one = candidates[kind];
            if (one.Length <= length && one.Width <= width && one.Most > 0)
            {
                Keep(store.Single(kind, one));
            }
        }

        var isProven = true;
        while (open.TryDequeue(out var next, out var promise))
        {
            if (promise.Most <= best)
            {
                continue;
            }

            done.Add(next);
            if (trials >= most)
            {
                isProven = false;
                break;
            }

            Join(next);
        }

        return new FilledBoard(best, bestFilling < 0 ? null : store.Filling(bestFilling, candidates), isProven);
    }

    /// <summary>Puts a filling together with all that came before it, and with itself.</summary>
    private void Join(int one)
    {
        var (oneLength, oneWidth) = store.Size(one);
        foreach (var other in CollectionsMarshal.AsSpan(done))
        {
            var (otherLength, otherWidth) = store.Size(other);
            var endToEnd = oneLength + otherLength <= length;
            var sideBySide = oneWidth + otherWidth <= width;
            if (!endToEnd && !sideBySide)
            {
                continue;
            }

            trials++;
            if (!store.CountsAllow(one, other))
            {
                continue;
            }

            var value = store.Value(one) + store.Value(other);
            if (endToEnd)
            {
                var trim = oneWidth == otherWidth ? 0 : cuts.RipOf(oneWidth < otherWidth ? oneLength : otherLength);
                var across = Math.Max(oneWidth, otherWidth);
                TryKeep(one, other, false, oneLength + otherLength, across, value - trim - cuts.CrosscutOf(across));
            }

            if (sideBySide)
            {
                var trim = oneLength == otherLength ? 0 : cuts.CrosscutOf(oneLength < otherLength ? oneWidth : otherWidth);
                var along = Math.Max(oneLength, otherLength);
                TryKeep(one, other, true, along, oneWidth + otherWidth, value - trim - cuts.RipOf(along));
            }
        }
    }

    private void TryKeep(int one, int other, bool sideBySide, int along, int across, double value)
    {
        if (value + around.Most(along, across) > best && store.Join(one, other, sideBySide, along, across, value) is var joined and >= 0)
        {
            Keep(joined);
        }
    }

    /// <summary>Keeps a new filling for later when it promises more than the best, and as the best when it is more itself.</summary>
    private void Keep(int filling)
    {
        var (along, across) = store.Size(filling);
        var value = store.Value(filling);
        var promise = value + Math.Min(around.Most(along, across), around.MostOfRest((long)along * across, store.Counts(filling)));
        var alone = value - Math.Min(
            (along < length ? cuts.CrosscutOf(width) : 0) + (across < width ? cuts.RipOf(along) : 0),
            (across < width ? cuts.RipOf(length) : 0) + (along < length ? cuts.CrosscutOf(across) : 0));
        if (alone > best)
        {
            (best, bestFilling) = (alone, filling);
        }

        if (promise > best)
        {
            open.Enqueue(filling, new Promise(value + (hope * (promise - value)), promise, filling));
        }
    }

    /// <summary>The order in which fillings are gone on from: who promises most, then who came first.</summary>
    private readonly record struct Promise(double Hoped, double Most, int Order) : IComparable<Promise>
    {
        public int CompareTo(Promise other)
        {
            var byHope = other.Hoped.CompareTo(Hoped);
            return byHope != 0 ? byHope : Order.CompareTo(other.Order);
        }

        public static bool operator <(Promise left, Promise right) => left.CompareTo(right) < 0;

        public static bool operator >(Promise left, Promise right) => left.CompareTo(right) > 0;

        public static bool operator <=(Promise left, Promise right) => left.CompareTo(right) <= 0;

        public static bool operator >=(Promise left, Promise right) => left.CompareTo(right) >= 0;
    }
}
