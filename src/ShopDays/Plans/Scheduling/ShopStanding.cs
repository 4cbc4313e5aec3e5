using System.Collections.Immutable;

namespace ShopDays.Plans.Scheduling;

/// <summary>What of the shop is taken before the first task is placed, by work that is done already. Times are minutes from the problem's origin.</summary>
internal sealed record ShopStanding
{
    /// <summary>An empty shop from minute 0 on.</summary>
    public static ShopStanding Empty { get; } = new();

    /// <summary>The first minute that can be used.</summary>
    public int Begin { get; init; }

    /// <summary>Things that are kept from the first usable minute until another.</summary>
    public ImmutableArray<(Hold Hold, int Until)> Held { get; init; } = [];

    /// <summary>The minute until which a coat takes dust; 0 when none is wet.</summary>
    public int WetUntil { get; init; }

    /// <summary>Minutes of heavy work that each worker has done on day 0; empty when nobody has.</summary>
    public ImmutableArray<int> HeavyDone { get; init; } = [];

    /// <summary>Minutes of heavy work that each worker did on the day before day 0; empty when nobody did.</summary>
    public ImmutableArray<int> HeavyDoneBefore { get; init; } = [];

    /// <summary>Minutes of heavy work that a worker has done on day 0.</summary>
    public int HeavyDoneBy(int worker) => worker < HeavyDone.Length ? HeavyDone[worker] : 0;

    /// <summary>Minutes of heavy work that a worker did on the day before day 0.</summary>
    public int HeavyDoneBeforeBy(int worker) => worker < HeavyDoneBefore.Length ? HeavyDoneBefore[worker] : 0;

    /// <summary>Takes things in an empty shop; of things that the shop has fewer of by now, those that there are.</summary>
    /// <param name="capacities">How many there are of each thing.</param>
    /// <param name="usage">The use of each thing.</param>
    /// <param name="bars">Of a lone worker, what may be barred in each session.</param>
    public void Take(ReadOnlySpan<int> capacities, ResourceUse[] usage, SessionBars? bars)
    {
        foreach (var (hold, until) in Held)
        {
            var missing = hold.Count;
            for (var resource = hold.First; resource <= hold.Last && missing > 0; resource++)
            {
                var number = Math.Clamp(capacities[resource] - usage[resource].Most(Begin, until), 0, missing);
                usage[resource].Add(Begin, until, number);
                bars?.Bar(TaskNeeds.Place, Begin, until);
                missing -= number;
            }
        }
    }
}
