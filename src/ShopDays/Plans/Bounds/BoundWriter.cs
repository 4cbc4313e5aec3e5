using System.Collections.Immutable;
using System.Diagnostics;
using System.Globalization;
using NodaTime;
using ShopDays.Measures;
using ShopDays.Plans.Scheduling;

namespace ShopDays.Plans.Bounds;

/// <summary>Says in a maker's words why nothing can finish before the bound.</summary>
/// <param name="request">What was asked for.</param>
/// <param name="hours">The hours that it was planned in.</param>
/// <param name="work">The tasks by name.</param>
/// <param name="finish">The date of the plan's finish: of another year than its a date is told with its year.</param>
internal sealed class BoundWriter(PlanRequest request, OpenHours hours, WorkInHand work, LocalDate finish)
{
    /// <summary>More than these are not said, though all are counted.</summary>
    private const int MostSaid = 4;

    private readonly HeavyCaps caps = ProblemCompiler.CapsOf(request);

    /// <summary>Writes it.</summary>
    public PlanBound Write(BoundProof proof)
    {
        var (bound, cause) = (proof.Bound, proof.Bound.Cause);
        var (kind, reason) = Binding(proof);
        return new(hours.At(bound.Minute), reason + Together(proof))
        {
            Kind = kind,
            Binds = [.. proof.Ties.Select(tie => new BindingLimit(KindOf(tie), tie.Task < 0 ? null : work.Tasks[tie.Task].Task, hours.At(tie.Without)))],
            Tasks = [.. cause.Tasks.Where(task => work.Tasks[task].Awaited is null).Select(task => work.Tasks[task].Task)],
            From = hours.At(cause.From),
            By = hours.At(Math.Max(cause.From, cause.To)),
            Needed = WorkTime.FromMinutes(cause.Needed),
            There = WorkTime.FromMinutes(cause.There),
        };
    }

    /// <summary>What the cause says of itself, unless something else weighs more.</summary>
    private (string Kind, string Reason) Binding(BoundProof proof)
    {
        var cause = proof.Bound.Cause;
        var told = Told(cause, proof);
        if (proof.Ties.FirstOrDefault(tie => tie.Kind == BoundKind.ColdNights) is { Kind: BoundKind.ColdNights } cold && hours.At(cold.Without).Date == hours.At(proof.Ties[0].Without).Date)
        {
            // With warm nights it would be as soon as with no waits at all, give or take some hours of the same day.
            return Weighing(cold, proof);
        }

        var own = proof.Ties.Where(tie => IsTold(tie, cause)).Select(tie => tie.Without).DefaultIfEmpty(proof.Bound.Minute).Min();
        return proof.Ties.IsEmpty || proof.Ties[0].Without >= own ? told : Weighing(proof.Ties[0], proof);
    }

    /// <summary>Whether what the cause says of itself tells of a limit.</summary>
    private static bool IsTold(BoundTie tie, BoundCause cause) => cause.Kind == BoundKind.Waits
        ? tie.Kind == BoundKind.Waits || tie.Task == cause.Tasks[0]
        : tie.Kind == cause.Kind;

    private (string Kind, string Reason) Told(BoundCause cause, BoundProof proof)
    {
        switch (cause.Kind)
        {
            case BoundKind.Waits:
                var row = new BoundRow(proof.Problem, hours, work, cause.Tasks, finish.Year);
                return (row.Kind, row.Reason);

            case BoundKind.WorkedHours:
                return ("worked hours", $"worked hours: the sessions before then do not hold all the work{Share(cause, "")}");

            case BoundKind.NoisyWork:
                return ("noisy work", $"noisy work: the hours that are not quiet do not hold it sooner{Share(cause, "")}");

            case BoundKind.Things:
                return ("clamps and bench", "clamps and bench: what must be kept in use takes all there are until then");

            case BoundKind.HeavyWork:
                return ("heavy work", $"heavy work under its cap: at {HeavyPerDay} a day{InTwoDays} it takes until then{Share(cause, " under the cap")}");

            default:
                throw new UnreachableException();
        }
    }

    /// <summary>A limit that weighs more than what the cause speaks of.</summary>
    private (string Kind, string Reason) Weighing(BoundTie tie, BoundProof proof) => (KindOf(tie), tie.Kind switch
    {
        BoundKind.Date => $"{BoundRow.DateOf(work.Tasks[tie.Task].Task, finish.Year)}, and what comes with it and after it takes until then",
        BoundKind.Together => $"people together: {ForSeveral(proof)} not there together soon enough to finish sooner",
        BoundKind.ColdNights => "cold nights: glue and coats set so slowly in them, or not at all, that it takes until then",
        BoundKind.Waits => "waits: with those between the tasks it takes until then",
        BoundKind.HeavyWork => $"heavy work under its cap: at {HeavyPerDay} a day{InTwoDays} it takes until then",
        BoundKind.NoisyWork => "noisy work: it has to keep to the hours that are not quiet, and takes until then",
        BoundKind.Things => "clamps and bench: what must be kept in use takes until then",
        BoundKind.WorkedHours => "worked hours: the sessions do not hold all the work sooner",
        _ => throw new UnreachableException(),
    });

    private string ForSeveral(BoundProof proof)
    {
        var those = Enumerable.Range(0, proof.Problem.Tasks.Length).Where(task => proof.Problem.Tasks[task].Crew > 1).ToList();
        return those.Count == 1
            ? $"\"{work.Tasks[those[0]].Task.Name}\" takes {proof.Problem.Tasks[those[0]].Crew}, who are"
            : $"{those.Count} tasks take several at the same time, who are";
    }

    /// <summary>Where several things bind, what each of them costs.</summary>
    private string Together(BoundProof proof)
    {
        if (proof.Ties.Length < 2)
        {
            return "";
        }

        var said = proof.Ties
            .Take(MostSaid)
            .GroupBy(tie => WhenOf(tie.Without, proof.Bound.Minute), StringComparer.Ordinal)
            .Select(group => $"{group.Key} {string.Join(" or ", group.Select(WithoutIt))}")
            .ToImmutableArray();
        return $"; it would be {string.Join(", ", said[..^1])}{(said.Length > 1 ? ", or " : "")}{said[^1]}";
    }

    private string WithoutIt(BoundTie tie) => tie.Kind switch
    {
        BoundKind.Date => $"but for the date of \"{work.Tasks[tie.Task].Task.Name}\"",
        BoundKind.Together => "with a helper always at hand",
        BoundKind.Waits => "with no waits",
        BoundKind.ColdNights => "with nights as warm as the tables of glue and finish",
        BoundKind.HeavyWork => "with no cap on heavy work",
        BoundKind.NoisyWork => "with no quiet hours",
        BoundKind.Things => "with clamps and bench enough",
        BoundKind.WorkedHours => "with hours enough for all the work",
        _ => throw new UnreachableException(),
    };

    private string KindOf(BoundTie tie) => tie.Kind switch
    {
        BoundKind.Date => BoundRow.IsAppointed(work.Tasks[tie.Task].Task) ? "appointment" : "not-before date",
        BoundKind.Together => "people together",
        BoundKind.Waits => "waits",
        BoundKind.ColdNights => "cold nights",
        BoundKind.HeavyWork => "heavy work",
        BoundKind.NoisyWork => "noisy work",
        BoundKind.Things => "clamps and bench",
        BoundKind.WorkedHours => "worked hours",
        _ => throw new UnreachableException(),
    };

    /// <summary>Each worker's where they differ.</summary>
    private string HeavyPerDay => string.Join(" and ", request.Calendars.Select(calendar => request.Limits.HeavyPerDayOf(calendar.Worker)).Distinct().OrderDescending().Select(WorkTimeText.Write));

    /// <summary>The same on two days running; nothing where nobody has hours on two, or the second is like any other.</summary>
    private string InTwoDays => string.Join(" and ", hours.Calendars.Select((calendar, worker) => (calendar, worker)).Where(one => HasDaysRunning(one.calendar) && caps.OfTwoDays(one.worker) < 2 * caps.Of(one.worker)).Select(one => caps.OfTwoDays(one.worker)).Distinct().OrderDescending().Select(minutes => WorkTimeText.Write(WorkTime.FromMinutes(minutes)))) is { Length: > 0 } said
        ? $" and {said} in two days running"
        : "";

    private static bool HasDaysRunning(CompiledCalendar calendar)
    {
        for (var session = 1; session < calendar.Count; session++)
        {
            if (calendar.Day[session] == calendar.Day[session - 1] + 1)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>What would have to fit between two dates to finish sooner, where more is needed than there is.</summary>
    private string Share(BoundCause cause, string how)
    {
        if (cause.Tasks.Length == 0)
        {
            return "";
        }

        var (needed, there) = (WorkTimeText.Write(WorkTime.FromMinutes(cause.Needed)), WorkTimeText.Write(WorkTime.FromMinutes(cause.There)));
        if (cause.Needed > cause.There)
        {
            return $" ({needed} of it cannot begin before {DateOf(cause.From)}, and to finish sooner would have to be done by {DateOf(Math.Max(cause.From, cause.To))}, where the sessions between hold {there}{how})";
        }

        var (from, by) = (hours.At(cause.From), hours.At(cause.To));
        var between = $"{Moment(from)} to {(from.Date == by.Date ? ClockOf(by) : Moment(by))}";
        return cause.IsBehind
            ? $" ({needed} of it comes after the rest; to finish sooner it would have to fill every hour from {between}, and what comes before it is not done by then)"
            : $" ({needed} of it has to come before the rest, and even begun as early as can be it fills every hour from {between})";
    }

    /// <summary>The day, or on the day of another minute the time.</summary>
    private string WhenOf(int minute, int other) => hours.At(minute) is var at && at.Date == hours.At(other).Date
        ? $"{ClockOf(at)} that day"
        : DateOf(minute);

    private string Moment(ZonedDateTime at) => $"{BoundRow.DayOf(at.Date, finish.Year)}, {ClockOf(at)}";

    private static string ClockOf(ZonedDateTime at) => at.TimeOfDay.ToString("HH:mm", CultureInfo.InvariantCulture);

    private string DateOf(int minute) => BoundRow.DayOf(hours.At(minute).Date, finish.Year);
}
