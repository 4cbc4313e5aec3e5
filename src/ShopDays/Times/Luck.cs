namespace ShopDays.Times;

/// <summary>
/// How the luck of single tasks is spread in this shop. Real days are not normal: most are ordinary, a few are dreadful. What
/// the log's own times were off by, in units of what was believed, speaks for times to come; the more like the work, the
/// louder.
/// </summary>
/// <remarks>
/// The shares of likeness and the weight of the believed spread are our choice, tried on published times of estimated
/// tasks and on makers drawn from the prior; the benchmarks print both.
/// </remarks>
internal sealed class Luck
{
    /// <summary>So many of the latest times say enough of the shape, and keep the work small.</summary>
    private const int Most = 400;

    /// <summary>What the luck of another operation counts for.</summary>
    private const double OtherOperation = 0.25;

    /// <summary>Work whose expected time differs by a factor of e to this counts 1/e.</summary>
    private const double LikeSize = 0.5;

    private readonly Past[] past;
    private readonly Past[] sorted;
    private readonly double[] offs;

    /// <summary>No luck is known yet.</summary>
    public static readonly Luck Unknown = new([]);

    /// <summary>Takes the luck out of a log.</summary>
    /// <param name="log">What each time was off by, in the order of the log.</param>
    public Luck(IEnumerable<Past> log)
    {
        past = [.. log.TakeLast(Most)];
        sorted = [.. past.OrderBy(one => one.Off)];
        offs = [.. sorted.Select(one => one.Off)];
    }

    /// <summary>The luck with one more time.</summary>
    public Luck With(Past one) => new(past.Append(one));

    /// <summary>The luck of work like this.</summary>
    /// <param name="block">The block of its operation and method.</param>
    /// <param name="size">ln of its expected minutes.</param>
    /// <param name="degrees">Degrees of freedom of the spread that is believed without a log.</param>
    /// <param name="without">A time of the log that is left out; null for none.</param>
    public LuckSpread Of(int block, double size, double degrees, Past? without = null)
    {
        var like = without is null ? sorted : Array.FindAll(sorted, one => !ReferenceEquals(one, without));
        var weights = new double[like.Length];
        for (var at = 0; at < weights.Length; at++)
        {
            var one = like[at];
            weights[at] = one.Weight * (one.Block == block ? 1 : OtherOperation) * Math.Exp(-Math.Abs(one.Size - size) / LikeSize);
        }

        return new(without is null ? offs : [.. like.Select(one => one.Off)], weights, degrees);
    }

    /// <summary>What a time was off by.</summary>
    /// <param name="Block">The block of its operation and method.</param>
    /// <param name="Size">ln of its expected minutes.</param>
    /// <param name="Off">How far ln of its minutes was off, in scales of what was believed.</param>
    /// <param name="Weight">How much it counts, by its age.</param>
    internal sealed record Past(int Block, double Size, double Off, double Weight);
}
