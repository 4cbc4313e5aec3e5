using System.Collections.Immutable;
using NodaTime;

namespace ShopDays.Days;

/// <summary>What appointments leave of one stay in the shop.</summary>
/// <remarks>
/// Whoever is in the shop for a delivery neither sweeps up before it nor opens up again behind it: the shop is opened up
/// before the first work of the stay and swept after the last, once each. A piece with less than the least useful work
/// is not used; what it would have lost at its end is then lost by its neighbour.
/// </remarks>
internal static class BrokenStay
{
    /// <summary>The pieces that are worked in with what each loses, and those that are too short, both in order.</summary>
    /// <param name="stay">From door to door.</param>
    /// <param name="taken">The appointments.</param>
    /// <param name="overhead">What the whole stay loses at its ends.</param>
    /// <param name="leastUseful">The least work that is worth beginning.</param>
    public static (ImmutableArray<(Interval Time, Overhead Overhead)> Used, ImmutableArray<Interval> TooShort) Of(Interval stay, Stretches taken, Overhead overhead, Duration leastUseful)
    {
        var pieces = taken.GapsIn(stay).Items.ToList();
        var tooShort = new List<Interval>();
        while (FirstTooShort(pieces, overhead, leastUseful) is >= 0 and var at)
        {
            tooShort.Add(pieces[at]);
            pieces.RemoveAt(at);
        }

        return ([.. pieces.Select((piece, at) => (piece, OverheadOf(at, pieces.Count, overhead)))], [.. tooShort.OrderBy(piece => piece.Start)]);
    }

    private static int FirstTooShort(List<Interval> pieces, Overhead overhead, Duration leastUseful)
    {
        for (var at = 0; at < pieces.Count; at++)
        {
            var lost = OverheadOf(at, pieces.Count, overhead);
            if (pieces[at].Duration < lost.OpenUpOnTheClock + lost.SweepUpOnTheClock + leastUseful)
            {
                return at;
            }
        }

        return -1;
    }

    private static Overhead OverheadOf(int at, int count, Overhead whole) => new(
        at == 0 ? whole.OpenUp : Overhead.None.OpenUp,
        at == count - 1 ? whole.SweepUp : Overhead.None.SweepUp);
}
