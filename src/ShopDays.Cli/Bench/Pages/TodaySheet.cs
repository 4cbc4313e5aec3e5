namespace ShopDays.Cli.Bench.Pages;

/// <summary>A day's work of one worker, in words: what is at hand, what is laid aside, what comes next, what is done.</summary>
public sealed record TodaySheet
{
    /// <summary>The date.</summary>
    public required string Date { get; init; }

    /// <summary>Whose day it is.</summary>
    public required string Who { get; init; }

    /// <summary>The task at hand; null for none.</summary>
    public required BegunCard? AtHand { get; init; }

    /// <summary>Tasks that are laid aside, the last first.</summary>
    public required IReadOnlyList<BegunCard> LaidAside { get; init; }

    /// <summary>Where the maker stopped last in each job.</summary>
    public required IReadOnlyList<string> Stopped { get; init; }

    /// <summary>What stands above the sessions: today's, or those of the next day that has any.</summary>
    public required string Heading { get; init; }

    /// <summary>What is still to do in them.</summary>
    public required IReadOnlyList<SessionCard> Sessions { get; init; }

    /// <summary>Time logged of the day.</summary>
    public required string Logged { get; init; }

    /// <summary>What is logged of the day.</summary>
    public required IReadOnlyList<Link> Done { get; init; }

    /// <summary>The plans on paper of all jobs that the day's work is of.</summary>
    public IReadOnlyList<Link> Papers =>
    [
        .. ((BegunCard?[])[AtHand, .. LaidAside])
            .OfType<BegunCard>()
            .Select(card => (card.Key.Job, card.Title))
            .Concat(Sessions.SelectMany(session => session.Work).Select(card => (card.Key.Job, card.Title)))
            .Where(card => card.Job is not null)
            .Distinct()
            .Select(card => new Link(PieceAddress.OfPlan(card.Job!), $"{card.Title}: the plan as a PDF")),
    ];
}

/// <summary>A way to another page.</summary>
/// <param name="To">Its address.</param>
/// <param name="Words">What it says.</param>
public sealed record Link(string To, string Words)
{
    /// <summary>What is said of it in smaller letters; empty for nothing.</summary>
    public string Besides { get; init; } = "";
}

/// <summary>A task as forms name it.</summary>
/// <param name="Who">Who works on it.</param>
/// <param name="Job">Its job; null for work timed by itself.</param>
/// <param name="Task">Its name.</param>
public sealed record TaskKey(string Who, string? Job, string Task);

/// <summary>A task that is begun.</summary>
/// <param name="Key">The task as forms name it.</param>
/// <param name="Title">The job that it is of.</param>
/// <param name="Mark">Its mark; empty where the job is not known any more.</param>
/// <param name="Name">Its name.</param>
public sealed record BegunCard(TaskKey Key, string Title, string Mark, string Name)
{
    /// <summary>Minutes at it up to now.</summary>
    public required double Minutes { get; init; }

    /// <summary>The same on a clock's face.</summary>
    public required string Clock { get; init; }

    /// <summary>The same in words.</summary>
    public required string SoFar { get; init; }

    /// <summary>What is expected of it; null where that is not known.</summary>
    public Expectation? Expected { get; init; }

    /// <summary>When it was begun, with the date.</summary>
    public required string Began { get; init; }

    /// <summary>Since when it goes on, and the moment.</summary>
    public required string Since { get; init; }

    /// <summary>Whether it is laid aside.</summary>
    public required bool IsLaidAside { get; init; }

    /// <summary>Whether it has run on for longer than anybody works: it is asked about, and not counted.</summary>
    public required bool IsForgotten { get; init; }

    /// <summary>Where it was stopped; empty where that is not said.</summary>
    public required string Stopped { get; init; }

    /// <summary>The pieces and the board that it works on.</summary>
    public required IReadOnlyList<Link> Pieces { get; init; }
}

/// <summary>How long something may take.</summary>
/// <param name="Words">In words.</param>
/// <param name="High">Minutes that nine in ten do not exceed.</param>
/// <param name="IsBeyond">Whether it has taken longer than that.</param>
public sealed record Expectation(string Words, double High, bool IsBeyond);

/// <summary>What is still to do in a session.</summary>
/// <param name="Hours">Its hours.</param>
/// <param name="Work">What is to do.</param>
/// <param name="Cautions">The cautions that go with it, each with who says so.</param>
public sealed record SessionCard(string Hours, IReadOnlyList<WorkCard> Work, IReadOnlyList<string> Cautions);

/// <summary>A stretch of work that is still to do.</summary>
/// <param name="Key">The task as forms name it.</param>
/// <param name="Title">The job that it is of.</param>
/// <param name="Mark">Its mark.</param>
/// <param name="Likely">How long it is likely to take.</param>
/// <param name="Range">Its range.</param>
/// <param name="Note">What is to be known beside its name; empty for nothing.</param>
/// <param name="Pieces">The pieces and the board that it works on.</param>
public sealed record WorkCard(TaskKey Key, string Title, string Mark, string Likely, string Range, string Note, IReadOnlyList<Link> Pieces);
