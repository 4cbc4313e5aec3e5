using System.Collections.Immutable;
using NodaTime;

namespace ShopDays.Days;

/// <summary>Dates on which the shop stays shut: holidays, a fair, a fortnight away.</summary>
public sealed class ClosedDates
{
    /// <summary>Closed dates from spans, first and last date included; they may overlap.</summary>
    public ClosedDates(params IEnumerable<DateInterval> spans)
    {
        ArgumentNullException.ThrowIfNull(spans);
        Spans = [.. spans.OrderBy(span => span.Start)];
    }

    /// <summary>Never closed.</summary>
    public static ClosedDates None { get; } = new();

    /// <summary>The spans, in order of their first dates; first and last date are included.</summary>
    public ImmutableArray<DateInterval> Spans { get; }

    /// <summary>Whether the shop is shut on a date.</summary>
    public bool Contains(LocalDate date) => Spans.Any(span => span.Contains(date));
}
