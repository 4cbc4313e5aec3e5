using ShopDays.Measures;
using ShopDays.Times;

namespace ShopDays.Choices;

/// <summary>By how much the hours of one operation differ between two ways of doing a job.</summary>
/// <param name="Operation">The operation, for a free task its name; null for what is done again where a piece is spoiled.</param>
/// <param name="Methods">The methods of the one way; none where it does without.</param>
/// <param name="OtherMethods">The methods of the other.</param>
/// <param name="By">The average of the other less that of the one.</param>
public sealed record HoursOtherwise(string? Operation, IReadOnlyList<string> Methods, IReadOnlyList<string> OtherMethods, WorkTime By)
{
    private static readonly WorkTime Hair = WorkTime.FromMinutes(1e-6);

    /// <summary>
    /// The differences of all operations, the greatest first. They are of averages, and so add up to the difference of the
    /// averages of all work: medians would not.
    /// </summary>
    /// <param name="one">The one way.</param>
    /// <param name="other">The other.</param>
    public static IReadOnlyList<HoursOtherwise> Between(JobEstimate one, JobEstimate other)
    {
        var (before, after) = (ByOperation(one), ByOperation(other));
        var again = new HoursOtherwise(null, [], [], MeanAgain(other) - MeanAgain(one));
        return
        [
            .. before.Keys.Union(after.Keys, StringComparer.Ordinal)
                .Select(name => new HoursOtherwise(name, MethodsOf(before, name), MethodsOf(after, name), MeanOf(after, name) - MeanOf(before, name)))
                .Append(again)
                .Where(difference => difference.By > Hair || difference.By < WorkTime.Zero - Hair)
                .OrderByDescending(difference => Math.Abs(difference.By.Minutes)),
        ];
    }

    private static Dictionary<string, List<OperationTime>> ByOperation(JobEstimate estimate) =>
        estimate.Operations.GroupBy(one => one.Operation, StringComparer.Ordinal).ToDictionary(group => group.Key, group => group.ToList(), StringComparer.Ordinal);

    private static IReadOnlyList<string> MethodsOf(Dictionary<string, List<OperationTime>> times, string name) =>
        times.TryGetValue(name, out var found) ? [.. found.Select(one => one.Method).Distinct()] : [];

    private static WorkTime MeanOf(Dictionary<string, List<OperationTime>> times, string name) =>
        times.TryGetValue(name, out var found) ? found.Aggregate(WorkTime.Zero, (sum, one) => sum + one.Time.Mean) : WorkTime.Zero;

    private static WorkTime MeanAgain(JobEstimate estimate) => estimate.Spoiling?.Mean ?? WorkTime.Zero;
}
