using NodaTime;
using ShopDays.Measures;

namespace ShopDays.Days;

/// <summary>One stay of one worker in the shop. Ends are not included; all lengths are real, also when clocks change.</summary>
public sealed record Session
{
    /// <summary>A stay in the shop.</summary>
    /// <param name="worker">Whose.</param>
    /// <param name="date">The date on which its hours are written.</param>
    /// <param name="start">Entering the shop.</param>
    /// <param name="end">Leaving it, in the same zone.</param>
    /// <param name="overhead">What is lost at either end.</param>
    /// <param name="quiet">When there must be no noise.</param>
    /// <exception cref="ArgumentException">Opening up and sweeping up leave nothing between them.</exception>
    public Session(string worker, LocalDate date, ZonedDateTime start, ZonedDateTime end, Overhead overhead, QuietHours quiet)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(worker);
        (Worker, Date, Start, End) = (worker, date, start, end);
        (WorkStart, WorkEnd) = (start + overhead.OpenUpOnTheClock, end - overhead.SweepUpOnTheClock);
        if (WorkEnd.ToInstant() <= WorkStart.ToInstant())
        {
            throw new ArgumentException("a session is longer than opening up and sweeping up", nameof(end));
        }

        Quiet = quiet.QuietIn(Span, start.Zone);
    }

    /// <summary>Whose session.</summary>
    public string Worker { get; }

    /// <summary>The date on which its hours are written. A session that ends at 24:00 ends on the next.</summary>
    public LocalDate Date { get; }

    /// <summary>Entering the shop.</summary>
    public ZonedDateTime Start { get; }

    /// <summary>Leaving the shop.</summary>
    public ZonedDateTime End { get; }

    /// <summary>The first stroke, when the shop is opened up.</summary>
    public ZonedDateTime WorkStart { get; }

    /// <summary>The last stroke, with sweeping up still to do.</summary>
    public ZonedDateTime WorkEnd { get; }

    /// <summary>The stretches of the stay in which no noisy work is done.</summary>
    public Stretches Quiet { get; private init; }

    /// <summary>From door to door.</summary>
    public Interval Span => new(Start.ToInstant(), End.ToInstant());

    /// <summary>From the first stroke to the last.</summary>
    public Interval Work => new(WorkStart.ToInstant(), WorkEnd.ToInstant());

    /// <summary>The stretches of the work in which noise is allowed.</summary>
    public Stretches NoisyWork => Quiet.GapsIn(Work);

    /// <summary>What there is to work in: the whole less opening up and sweeping up.</summary>
    public WorkTime UsableTime => WorkTime.FromMinutes(Work.Duration.TotalMinutes);

    /// <summary>The same stay with other quiet hours.</summary>
    public Session With(QuietHours quiet) => this with { Quiet = quiet.QuietIn(Span, Start.Zone) };
}
