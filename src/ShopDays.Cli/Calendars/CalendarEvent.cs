using NodaTime;

namespace ShopDays.Cli.Calendars;

/// <summary>An event of a calendar.</summary>
internal sealed record CalendarEvent
{
    /// <summary>By what every calendar knows it again.</summary>
    public required string Uid { get; init; }

    /// <summary>Its properties as lines, not folded, beside those that say which version of it this is; the first is its start.</summary>
    public required IReadOnlyList<string> Lines { get; init; }

    /// <summary>The lines of its reminder; empty for none.</summary>
    public IReadOnlyList<string> Alarm { get; init; } = [];

    /// <summary>How often it was changed, from 0.</summary>
    public int Sequence { get; init; }

    /// <summary>When it was changed last.</summary>
    public Instant Stamp { get; init; }

    /// <summary>Whether it is called off.</summary>
    public bool IsCancelled { get; init; }

    /// <summary>When it begins.</summary>
    public Instant Start => Moment("DTSTART") ?? throw new InvalidOperationException("an event has no start");

    /// <summary>When it ends: with its start where it has no end of its own.</summary>
    public Instant End => Moment("DTEND") ?? Start;

    /// <summary>The zones that its times are in.</summary>
    public IEnumerable<string> Zones => Lines.Where(line => ContentLine.NameOf(line) is "DTSTART" or "DTEND").Select(CalendarTime.ZoneOf).OfType<string>();

    /// <summary>Whether it says the same as another, whatever its version.</summary>
    public bool SaysTheSame(CalendarEvent other) => IsCancelled == other.IsCancelled && Lines.SequenceEqual(other.Lines, StringComparer.Ordinal) && Alarm.SequenceEqual(other.Alarm, StringComparer.Ordinal);

    /// <summary>All its lines.</summary>
    public IEnumerable<string> AllLines() =>
    [
        "BEGIN:VEVENT",
        $"UID:{Uid}",
        $"DTSTAMP:{CalendarTime.Utc(Stamp)}",
        FormattableString.Invariant($"SEQUENCE:{Sequence}"),
        $"STATUS:{(IsCancelled ? "CANCELLED" : "CONFIRMED")}",
        .. Lines,
        .. Alarm,
        "END:VEVENT",
    ];

    private Instant? Moment(string name) => Lines.FirstOrDefault(line => ContentLine.NameOf(line) == name) is { } line ? CalendarTime.Of(line) : null;
}
