using System.Globalization;
using NodaTime;
using NodaTime.Text;
using ShopDays.Plans.Scheduling;
using ShopDays.Plans.Searching;
using ShopDays.Work;

namespace ShopDays.Plans;

/// <summary>Tasks that are fixed for a time and cannot be begun then, with the time at which they could.</summary>
internal sealed class AppointedTasks
{
    private static readonly LocalDateTimePattern Minute = LocalDateTimePattern.Create("uuuu'-'MM'-'dd HH':'mm", CultureInfo.InvariantCulture);

    private const int MostDaysEarlier = 183;

    private readonly PlanRequest request;
    private readonly OpenHours hours;
    private readonly ScheduleProblem problem;
    private readonly WorkInHand work;
    private readonly FixedTimes times;
    private readonly IReadOnlyList<int> fixedTasks;

    /// <summary>Looks at a problem.</summary>
    public AppointedTasks(PlanRequest request, OpenHours hours, ScheduleProblem problem)
    {
        (this.request, this.hours, this.problem) = (request, hours, problem);
        work = new(request.Orders);
        times = new(problem, request.Seed);
        fixedTasks = times.Tasks;
    }

    /// <summary>The fixed tasks of a request in its first year.</summary>
    public static AppointedTasks Of(PlanRequest request)
    {
        var open = OpenHours.FirstYear(request);
        return new(request, open, ProblemCompiler.Compile(request, open));
    }

    /// <summary>Those for which no session is open, whatever else there is to do.</summary>
    public IReadOnlyList<Unplannable> WithoutSession()
    {
        var sessions = new SessionsForAppointments(request, hours, problem, this);
        return [.. fixedTasks.Where(task => !CanBeDone(task)).Select(sessions.Lacking)];
    }

    /// <summary>Those that what must come before them, or other appointments, do not leave time for; empty when it is not for their sake that there is no plan.</summary>
    public IReadOnlyList<Unplannable> NotKept()
    {
        List<Unplannable> late = [.. fixedTasks.Order().Select(task => Late(task, [])).OfType<Unplannable>()];
        return late.Count > 0
            ? late
            : [.. fixedTasks.Order().Select(task => Late(task, [.. fixedTasks.Where(other => other != task)]))
                .Concat(fixedTasks.Select((task, place) => Late(task, [.. fixedTasks.Take(place)])))
                .OfType<Unplannable>()
                .Take(1)];
    }

    private bool CanBeDone(int task) => Generated(problem, [problem.BlockOf(task)]) is not null;

    /// <summary>An appointed task that cannot begin in time when only what must come before it is done, and some others are kept.</summary>
    private Unplannable? Late(int number, IReadOnlyList<int> others)
    {
        if (Earliest(number, others) is not { } minute || minute < problem.Tasks[number].StartBy)
        {
            return null;
        }

        var task = work.Tasks[number].Task;
        var could = TimeOf(task, minute);
        var why = others.Count > 0
            ? $"what else is fixed ({string.Join(", ", others.Select(other => work.Tasks[other].Task.Name))}) leaves no time for it"
            : "what must come before it is not done by then";
        var sooner = others.Count == 0 && StartThatKeeps(number) is { } begin ? $"; or begin by {LocalDatePattern.Iso.Format(begin)}, if that is still to come" : "";
        return NotKept(task, $"it is fixed for {Words(task)}, and {why}", $"agree on {could}, the earliest that was found, or on a later time{sooner}");
    }

    /// <summary>The first minute that was found in which an appointed task could begin, whatever it is fixed for; null when there is none.</summary>
    public int? Earliest(int number, IReadOnlyList<int> others) => times.Earliest(number, others);

    /// <summary>Whether a task can begin when it is fixed for, with nothing done but what must come before it.</summary>
    public bool IsInTime(int number) => Earliest(number, []) is { } minute && minute < problem.Tasks[number].StartBy;

    /// <summary>The latest date with which the task's order could begin so that the time is kept; null for an order that is begun, and where half a year earlier is not enough.</summary>
    public LocalDate? StartThatKeeps(int number)
    {
        var place = work.Tasks[number].Order;
        if (request.Orders[place].UnderWay is not null || !Keeps(MostDaysEarlier))
        {
            return null;
        }

        var (tooFew, enough) = (0, MostDaysEarlier);
        while (enough - tooFew > 1)
        {
            var middle = (tooFew + enough) / 2;
            (tooFew, enough) = Keeps(middle) ? (tooFew, middle) : (middle, enough);
        }

        return request.Orders[place].Start.PlusDays(-enough);

        bool Keeps(int days)
        {
            var sooner = request with { Orders = [.. request.Orders.Select((order, at) => at == place ? order with { Start = order.Start.PlusDays(-days) } : order)] };
            return Of(sooner).IsInTime(number);
        }
    }

    private static Schedule? Generated(ScheduleProblem problem, int[] order)
    {
        var schedule = new Schedule(problem.Tasks.Length, problem.Orders.Length);
        return new ScheduleGenerator(problem).Generate(order, problem.Minutes.AsSpan(), schedule) ? schedule : null;
    }

    /// <summary>The time that a task is fixed for.</summary>
    public static string Words(ShopTask task) => task.Appointed is { At: { } at, On: var on } ? Minute.Format(on + at) : LocalDatePattern.Iso.Format(task.Appointed!.Value.On);

    /// <summary>A minute as a time that a task may be fixed for: with the time of the day only where it has one now.</summary>
    public string TimeOf(ShopTask task, int minute) => task.Appointed!.Value.At is null ? LocalDatePattern.Iso.Format(hours.At(minute).Date) : Minute.Format(hours.At(minute).LocalDateTime);

    private static Unplannable NotKept(ShopTask task, string limit, string cure) => new(UnplannableKind.AppointmentNotKept, task, limit, cure);
}
