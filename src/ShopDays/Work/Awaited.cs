using NodaTime;
using ShopDays.Parts;

namespace ShopDays.Work;

/// <summary>What a job waits for from somebody else: it takes nobody's hands, and how long it takes is uncertain.</summary>
public sealed record Awaited
{
    /// <summary>What is waited for, from whom and how long.</summary>
    public required Decision Decision { get; init; }

    /// <summary>When the work after which it is asked for was done; null where some of that is still to do, or there is none.</summary>
    public Instant? Since { get; init; }

    /// <summary>The ids of the tasks after which it is asked for; none where the date is known.</summary>
    public IReadOnlyList<int> After { get; init; } = [];

    /// <summary>The places, in the graph's list, of what else must have come before it is asked for; none where the date is known.</summary>
    public IReadOnlyList<int> AfterOthers { get; init; } = [];

    /// <summary>The ids of the tasks after which it is asked for as long as no date is known: <see cref="After"/> then, and kept when a date is.</summary>
    public IReadOnlyList<int> AfterByOrder { get; init; } = [];

    /// <summary>The same of the places of what else must have come before: <see cref="AfterOthers"/>, as long as no date is known.</summary>
    public IReadOnlyList<int> AfterOthersByOrder { get; init; } = [];

    /// <summary>The ids of the tasks that it holds back.</summary>
    public required IReadOnlyList<int> Holds { get; init; }

    /// <summary>What is waited for.</summary>
    public string Name => Decision.Name;

    /// <summary>How long it may take from when it is asked for.</summary>
    public WaitGuess Wait => Decision.Wait;

    /// <summary>Whether it has come.</summary>
    public bool HasCome => Decision.Arrived is not null;

    /// <summary>Whether it begins with the job: nothing says otherwise.</summary>
    public bool BeginsWithTheJob => Decision.Asked is null && Since is null && After.Count + AfterOthers.Count == 0;

    /// <summary>Why work waits for it: <c>waits for the client's word: client approves the drawing</c>.</summary>
    public string Reason => "waits for " + Decision.What;

    /// <summary>The same as it was known on an earlier date: what came later had not come, and what was asked for later was still to be asked for after its work.</summary>
    /// <param name="date">The date.</param>
    public Awaited AsKnownOn(LocalDate date)
    {
        var isAskedLater = Decision.Asked > date && AfterByOrder.Count + AfterOthersByOrder.Count > 0;
        if (Decision.IsDrying || !(isAskedLater || Decision.Arrived > date))
        {
            return this;
        }

        var asked = isAskedLater ? null : Decision.Asked;
        return this with
        {
            Decision = Decision with { Asked = asked, Arrived = Decision.Arrived > date ? null : Decision.Arrived },
            After = asked is null ? AfterByOrder : [],
            AfterOthers = asked is null ? AfterOthersByOrder : [],
        };
    }

    /// <summary>When it is over if it takes so long. Whole days are days of the calendar, also over a change of clocks: people do not count hours.</summary>
    /// <param name="asked">When it was asked for.</param>
    /// <param name="length">How long, zero or more.</param>
    public static ZonedDateTime EndOf(ZonedDateTime asked, Duration length) => length == Duration.FromDays(length.Days)
        ? asked.Zone.AtLeniently(asked.LocalDateTime.PlusDays(length.Days))
        : asked + length;

    /// <summary>By how many days of the calendar it is later than nine in ten of its like; 0 when it is not, and when it has come.</summary>
    /// <param name="decision">What is waited for.</param>
    /// <param name="asked">When it was asked for.</param>
    /// <param name="now">The moment.</param>
    public static int DaysLate(Decision decision, ZonedDateTime asked, Instant now) => decision.Arrived is null && EndOf(asked, decision.Wait.High) is var last && last.ToInstant() < now
        ? Math.Max(1, Period.DaysBetween(last.Date, now.InZone(asked.Zone).Date))
        : 0;
}
