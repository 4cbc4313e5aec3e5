using ShopDays.Plans.Scheduling;

namespace ShopDays.Plans.Bounds;

/// <summary>How much of something there is between two minutes: hours of workers, or things in use by the clock.</summary>
internal abstract class BoundCapacity
{
    /// <summary>The minute after which nothing is added.</summary>
    public abstract int Last { get; }

    /// <summary>How much there is from a minute to another at most; 0 when they are the wrong way round.</summary>
    public abstract long Between(int from, int to);

    /// <summary>The first minute by which so much has gone by from a minute on; <see cref="CompiledCalendar.Never"/> when there is none.</summary>
    public int Filled(int from, long work)
    {
        if (Between(from, Last) < work)
        {
            return CompiledCalendar.Never;
        }

        var (low, high) = (from, Last);
        while (low < high)
        {
            var middle = low + ((high - low) / 2);
            (low, high) = Between(from, middle) < work ? (middle + 1, high) : (low, middle);
        }

        return low;
    }

    /// <summary>The last minute from which so much goes by until another; -1 when there is none.</summary>
    public int Emptied(int by, long work)
    {
        if (Between(0, by) < work)
        {
            return -1;
        }

        var (low, high) = (0, by);
        while (low < high)
        {
            var middle = low + ((high - low + 1) / 2);
            (low, high) = Between(middle, by) < work ? (low, middle - 1) : (middle, high);
        }

        return low;
    }
}

/// <summary>So many of a thing, at every minute of the clock.</summary>
internal sealed class ClockCapacity(int count) : BoundCapacity
{
    /// <inheritdoc/>
    public override int Last => CompiledCalendar.Never;

    /// <inheritdoc/>
    public override long Between(int from, int to) => from < to ? (long)count * ((long)to - from) : 0;
}
