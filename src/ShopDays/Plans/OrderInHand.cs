using NodaTime;
using ShopDays.Measures;
using ShopDays.Times;
using ShopDays.Work;

namespace ShopDays.Plans;

/// <summary>A job that the shop has taken on, or what is left of it.</summary>
public sealed record OrderInHand
{
    /// <summary>The job's name.</summary>
    public required string Name { get; init; }

    /// <summary>The work.</summary>
    public required TaskGraph Graph { get; init; }

    /// <summary>The time that each task is planned with, by its id: what is expected of it in <see cref="WholeMinutes"/>, as a rule. What is not whole counts as the nearest minute, 1 at least.</summary>
    public required IReadOnlyList<WorkTime> Times { get; init; }

    /// <summary>Drawn times, for the forecast; at least one trial, and as many as any other order has: the trials of one number are one course of the whole shop.</summary>
    public required TimeDraws Draws { get; init; }

    /// <summary>Where the spoilings among <see cref="Draws"/> come from, to ask what a spare blank would change; null where that is not asked.</summary>
    public SpoilingDraws? Spoiling { get; init; }

    /// <summary>The date on which the job begins; opening waits run from its first moment.</summary>
    public required LocalDate Start { get; init; }

    /// <summary>How the shop stands when the rest of a job is planned in the middle of it; null for a whole job, from its start on.</summary>
    public UnderWay? UnderWay { get; init; }

    /// <summary>Rests of boards that are sawn before the whole job is planned, as far as they are not over when it begins; the rest of a job has its own in <see cref="UnderWay"/>.</summary>
    public IReadOnlyList<RunningWait> Resting { get; init; } = [];

    /// <summary>The moment up to which it is known what has come from others, where the whole job is planned; null where the plan looks at its start.</summary>
    public Instant? Known { get; init; }

    /// <summary>The date by the end of which it should be finished; null for none.</summary>
    public LocalDate? Due { get; init; }

    /// <summary>How much its lateness counts beside another order's, 1 or more.</summary>
    public int Priority { get; init; } = 1;

    /// <summary>
    /// Whether it takes only the time that the others leave: nothing of theirs is done later for it, in the plan as in each
    /// trial. Orders that give way stand behind all that do not; what gives way to nothing is planned as any other.
    /// </summary>
    public bool GivesWay { get; init; }

    /// <summary>The moment up to which it is known what has come from others; null where nothing is known of that.</summary>
    internal Instant? KnownUntil => Known ?? UnderWay?.Known ?? UnderWay?.From;

    /// <summary>Waits that go on by themselves when it is planned.</summary>
    internal IReadOnlyList<RunningWait> Running => UnderWay?.Waits ?? Resting;

    /// <exception cref="ArgumentException">Something is missing or of the wrong number.</exception>
    internal void Check(int trials)
    {
        if (Times.Count != Graph.Tasks.Count)
        {
            throw new ArgumentException($"{Times.Count} times for {Graph.Tasks.Count} tasks");
        }

        if (trials == 0 || Draws.Trials != trials || Draws.Minutes.Any(trial => trial.Length != Graph.Tasks.Count))
        {
            throw new ArgumentException("every task is drawn in every trial, there is one trial at least, and all orders have as many");
        }

        ArgumentOutOfRangeException.ThrowIfLessThan(Priority, 1);
    }
}
