using System.Diagnostics;
using System.Globalization;
using ShopDays.Measures;
using ShopDays.Plans.Scheduling;

namespace ShopDays.Plans.Bounds;

/// <summary>Says in a maker's words why nothing can finish before the bound.</summary>
internal sealed class BoundWriter(PlanRequest request, OpenHours hours, ScheduleProblem problem, WorkInHand work)
{
    /// <summary>Writes it.</summary>
    public PlanBound Write(Bound bound)
    {
        var cause = bound.Cause;
        var (kind, reason) = Binding(cause);
        return new(hours.At(bound.Minute), reason)
        {
            Kind = kind,
            Tasks = [.. cause.Tasks.Select(task => work.Tasks[task].Task)],
            From = hours.At(cause.From),
            By = hours.At(Math.Max(cause.From, cause.To)),
            Needed = WorkTime.FromMinutes(cause.Needed),
            There = WorkTime.FromMinutes(cause.There),
        };
    }

    private (string Kind, string Reason) Binding(BoundCause cause)
    {
        switch (cause.Kind)
        {
            case BoundKind.Waits:
                var row = new BoundRow(problem, hours, work, cause.Tasks);
                return (row.Kind, row.Reason);

            case BoundKind.WorkedHours:
                return ("worked hours", $"worked hours: the sessions before then do not hold all the work{Share(cause, "")}");

            case BoundKind.NoisyWork:
                return ("noisy work", $"noisy work: the hours that are not quiet do not hold it sooner{Share(cause, "")}");

            case BoundKind.Things:
                return ("clamps and bench", "clamps and bench: what must be kept in use takes all there are until then");

            case BoundKind.HeavyWork:
                return ("heavy work", $"heavy work under its cap: at {HeavyPerDay} a day it takes until then{Share(cause, " under the cap")}");

            default:
                throw new UnreachableException();
        }
    }

    /// <summary>Each worker's where they differ.</summary>
    private string HeavyPerDay => string.Join(" and ", request.Calendars.Select(calendar => request.Limits.HeavyPerDayOf(calendar.Worker)).Distinct().OrderDescending().Select(WorkTimeText.Write));

    /// <summary>What would have to fit between two dates to finish sooner, where more is needed than there is.</summary>
    private string Share(BoundCause cause, string how)
    {
        if (cause.Tasks.Length == 0)
        {
            return "";
        }

        var (needed, there) = (WorkTimeText.Write(WorkTime.FromMinutes(cause.Needed)), WorkTimeText.Write(WorkTime.FromMinutes(cause.There)));
        var (from, by) = (DateOf(cause.From), DateOf(Math.Max(cause.From, cause.To)));
        return cause.Needed > cause.There
            ? $" ({needed} of it cannot begin before {from}, and to finish sooner would have to be done by {by}, where the sessions between hold {there}{how})"
            : string.Equals(from, by, StringComparison.Ordinal)
                ? $" ({needed} of it fills what there is on {from} at the earliest; all else comes before or after that)"
                : $" ({needed} of it fills what there is from {from} to {by} at the earliest; all else comes before or after that)";
    }

    private string DateOf(int minute) => hours.At(minute).Date.ToString("ddd d MMM", CultureInfo.InvariantCulture);
}
