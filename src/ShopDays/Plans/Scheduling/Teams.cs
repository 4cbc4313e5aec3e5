using System.Collections.Immutable;

namespace ShopDays.Plans.Scheduling;

/// <summary>The sets of workers that make up a crew.</summary>
internal static class Teams
{
    /// <summary>Every set of so many of the workers, each set and the list of them in rising order.</summary>
    public static ImmutableArray<int[]> Of(int crew, int workers) => [.. Choose(crew, 0, workers)];

    private static IEnumerable<int[]> Choose(int crew, int first, int workers)
    {
        if (crew == 0)
        {
            return [[]];
        }

        return from worker in Enumerable.Range(first, workers - first)
               from rest in Choose(crew - 1, worker + 1, workers)
               select (int[])[worker, .. rest];
    }
}
