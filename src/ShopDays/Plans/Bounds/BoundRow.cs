using System.Collections.Immutable;
using System.Globalization;
using NodaTime;
using NodaTime.Text;
using ShopDays.Parts;
using ShopDays.Plans.Scheduling;
using ShopDays.Work;

namespace ShopDays.Plans.Bounds;

/// <summary>A row of tasks that binds: whether an appointment, a date, waits or the work itself make it so long, and the same in words.</summary>
internal sealed class BoundRow
{
    private static readonly LocalDatePattern Day = LocalDatePattern.Create("ddd d MMM", CultureInfo.InvariantCulture);
    private static readonly LocalDatePattern DayOfAYear = LocalDatePattern.Create("ddd d MMM uuuu", CultureInfo.InvariantCulture);
    private static readonly LocalTimePattern Clock = LocalTimePattern.Create("HH:mm", CultureInfo.InvariantCulture);

    private readonly ScheduleProblem problem;
    private readonly OpenHours hours;
    private readonly WorkInHand work;
    private readonly ImmutableArray<int> tasks;
    private readonly int year;

    /// <summary>Looks at a row.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="hours">Its hours.</param>
    /// <param name="work">Its tasks by name.</param>
    /// <param name="tasks">The tasks in their order; none where it is only waits that run already.</param>
    /// <param name="year">The year in which a date is told without it.</param>
    public BoundRow(ScheduleProblem problem, OpenHours hours, WorkInHand work, ImmutableArray<int> tasks, int year)
    {
        (this.problem, this.hours, this.work, this.year) = (problem, hours, work, year);
        var row = tasks.RemoveAll(task => work.Tasks[task].Awaited is not null && problem.Tasks[task].Minutes == 0);
        var awaited = row.RemoveAll(task => work.Tasks[task].Awaited is null);
        this.tasks = tasks = row.RemoveRange(awaited);
        var isAwaitedFirst = !row.IsEmpty && awaited.Contains(row[0]);
        var isAwaitedLater = awaited.Length > (isAwaitedFirst ? 1 : 0);
        var (before, after) = (isAwaitedFirst || (!tasks.IsEmpty && WaitsAtFirst), !tasks.IsEmpty && problem.Tasks[tasks[^1]].WaitAtEnd > 0);
        var between = isAwaitedLater || Enumerable.Range(1, Math.Max(0, tasks.Length - 1)).Any(WaitsBefore);
        (Kind, Reason) = (isAwaitedFirst ? null : HeldBy, tasks.Length) switch
        {
            (_, 0) => ("waits", "waits: those that run already are not over sooner"),
            ({ } held, 1) => (held.Kind, $"{held.Words}{(after ? ", and the wait after it takes until then" : ", and takes until then")}"),
            ({ } held, _) => (held.Kind, $"{held.Words}, and the row of {tasks.Length} tasks from there to {NameOf(tasks[^1])} takes until then"),
            (_, 1) when before || after => ("waits", $"waits: {NameOf(tasks[0])} with the {(before && after ? "waits before and after it" : before ? "wait before it" : "wait after it")} takes until then, even with nothing else to do"),
            (_, 1) => ("single task", $"a single task: {NameOf(tasks[0])} takes until then, even with nothing else to do"),
            _ when before || between || after => ("waits", $"waits: the longest row of work and waits, {Row}, takes until then, even with nothing else to do"),
            _ => ("row of work", $"a row of work: {Row}, one after another, take until then, even with nothing else to do"),
        };
        Reason += awaited.IsEmpty ? "" : $"; it waits for {string.Join(" and ", awaited.Select(one => work.Tasks[one].Awaited!.Decision.What))}";
    }

    /// <summary>What binds, in a word or two: waits, appointment, not-before date, single task or row of work.</summary>
    public string Kind { get; }

    /// <summary>The same at length.</summary>
    public string Reason { get; }

    /// <summary>Whether what holds a task with a date is its appointment.</summary>
    public static bool IsAppointed(ShopTask task) => task.Appointed is { } fixedFor && (task.NotBefore is not { } date || fixedFor.On >= date);

    /// <summary>The appointment or the date of a task that has one, in words.</summary>
    public static string DateOf(ShopTask task, int year) => IsAppointed(task)
        ? $"an appointment: \"{task.Name}\" is fixed for {Words(task.Appointed!.Value, year)}"
        : $"a date: \"{task.Name}\" does not begin before {DayOf(task.NotBefore!.Value, year)}";

    /// <summary>A date, with its year where it is not that one.</summary>
    public static string DayOf(LocalDate date, int year) => (date.Year == year ? Day : DayOfAYear).Format(date);

    private string Row => string.Create(CultureInfo.InvariantCulture, $"{tasks.Length} tasks from {NameOf(tasks[0])} to {NameOf(tasks[^1])}");

    /// <summary>The first task's own appointment or date, where there are hours before it that it does not let be used.</summary>
    private (string Kind, string Words)? HeldBy
    {
        get
        {
            if (tasks.IsEmpty || !WaitsAtFirst || hours.DatesOf(First).NotBefore < problem.Tasks[tasks[0]].NotBefore)
            {
                return null;
            }

            return (IsAppointed(First) ? "appointment" : "not-before date", DateOf(First, year));
        }
    }

    private ShopTask First => work.Tasks[tasks[0]].Task;

    /// <summary>Whether the first task could begin sooner by the hours that there are.</summary>
    private bool WaitsAtFirst
    {
        get
        {
            var (from, by) = (hours.BeginOf(work.Orders[work.Tasks[tasks[0]].Order]), problem.Tasks[tasks[0]].NotBefore);
            return problem.Workers.Any(worker => worker.SessionEndingAfter(from) is var session && session < worker.Count && worker.From[session] < by);
        }
    }

    private bool WaitsBefore(int place)
    {
        foreach (var one in problem.Before(tasks[place]))
        {
            if (one.Before == tasks[place - 1] && one.Lag > 0)
            {
                return true;
            }
        }

        return false;
    }

    private static string Words(AppointedTime appointed, int year) => appointed.At is { } at ? $"{DayOf(appointed.On, year)}, {Clock.Format(at)}" : DayOf(appointed.On, year);

    private string NameOf(int task) => $"\"{work.Tasks[task].Task.Name}\"";
}
