using NodaTime;
using ShopDays.Logbook;
using ShopDays.Measures;

namespace ShopDays.Cli.Store;

/// <summary>A task that is begun and not yet logged.</summary>
internal sealed record BegunWork
{
    /// <summary>Who works on it.</summary>
    public required string Worker { get; init; }

    /// <summary>The job; null for work timed by itself.</summary>
    public string? Job { get; init; }

    /// <summary>The task.</summary>
    public required string Task { get; init; }

    /// <summary>What is done, as the job had it when it was begun; null for a task that no operation times.</summary>
    public LoggedWork? Work { get; init; }

    /// <summary>When it was begun.</summary>
    public required Instant Began { get; init; }

    /// <summary>When it was laid aside; null while it is worked on.</summary>
    public Instant? PausedAt { get; init; }

    /// <summary>Where it was stopped when it was laid aside; may be empty.</summary>
    public string Stopped { get; init; } = "";

    /// <summary>How long it lay aside before that.</summary>
    public WorkTime Paused { get; init; }

    /// <summary>When it was gone on with after it had been laid aside; null where it never was.</summary>
    public Instant? GoneOn { get; init; }

    /// <summary>The stretch that goes on now, without those before it was laid aside; zero while it is.</summary>
    public Duration StretchBy(Instant now) => PausedAt is null ? Duration.Max(Duration.Zero, now - (GoneOn ?? Began)) : Duration.Zero;

    /// <summary>Time at the task so far: from its beginning less what was paused; never below zero.</summary>
    public WorkTime TookBy(Instant now)
    {
        var whole = WorkTime.FromMinutes(((PausedAt ?? now) - Began).TotalMinutes) - Paused;
        return whole > WorkTime.Zero ? whole : WorkTime.Zero;
    }
}
