using System.Collections.Immutable;
using NodaTime;

namespace ShopDays.Days;

/// <summary>Stretches of real time, in order, apart from each other, the end of each not included.</summary>
public sealed class Stretches : IEquatable<Stretches>
{
    /// <summary>Stretches in any order; those that overlap or touch become one, empty ones are left out.</summary>
    /// <exception cref="InvalidOperationException">One has no beginning or no end.</exception>
    public Stretches(params IEnumerable<Interval> items)
    {
        ArgumentNullException.ThrowIfNull(items);
        var joined = ImmutableArray.CreateBuilder<Interval>();
        foreach (var next in items.Where(item => item.Duration > Duration.Zero).OrderBy(item => item.Start))
        {
            if (joined.Count > 0 && next.Start <= joined[^1].End)
            {
                joined[^1] = new Interval(joined[^1].Start, Instant.Max(joined[^1].End, next.End));
            }
            else
            {
                joined.Add(next);
            }
        }

        Items = joined.ToImmutable();
    }

    /// <summary>No time at all.</summary>
    public static Stretches None { get; } = new();

    /// <summary>The stretches.</summary>
    public ImmutableArray<Interval> Items { get; }

    /// <summary>How long they are together.</summary>
    public Duration Total => Items.Aggregate(Duration.Zero, (sum, item) => sum + item.Duration);

    /// <summary>Whether there is no time in them.</summary>
    public bool IsEmpty => Items.IsEmpty;

    /// <summary>What of them lies in a span.</summary>
    public Stretches Within(Interval span) =>
        new(Items.Where(item => item.End > span.Start && item.Start < span.End)
            .Select(item => new Interval(Instant.Max(item.Start, span.Start), Instant.Min(item.End, span.End))));

    /// <summary>What of a span lies outside them.</summary>
    public Stretches GapsIn(Interval span)
    {
        var gaps = new List<Interval>();
        var open = span.Start;
        foreach (var item in Within(span).Items)
        {
            gaps.Add(new Interval(open, item.Start));
            open = item.End;
        }

        return new([.. gaps, new Interval(open, span.End)]);
    }

    /// <summary>Whether an instant lies in one of them.</summary>
    public bool Contains(Instant instant) => Items.Any(item => item.Contains(instant));

    /// <inheritdoc/>
    public bool Equals(Stretches? other) => other is not null && Items.SequenceEqual(other.Items);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as Stretches);

    /// <inheritdoc/>
    public override int GetHashCode()
    {
        var hash = default(HashCode);
        foreach (var item in Items)
        {
            hash.Add(item);
        }

        return hash.ToHashCode();
    }

    /// <summary>The stretches in universal time, for failing tests.</summary>
    public override string ToString() => string.Join(", ", Items);
}
