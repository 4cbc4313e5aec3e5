using NodaTime;
using NodaTime.Text;
using ShopDays.Measures;
using ShopDays.Plans.Scheduling;
using ShopDays.Work;

namespace ShopDays.Plans;

/// <summary>Why no session holds a task at the time that it is fixed for, whatever else there is to do, and the least that would.</summary>
internal sealed class SessionsForAppointments(PlanRequest request, OpenHours hours, ScheduleProblem problem, AppointedTasks appointed)
{
    private readonly WorkInHand work = new(request.Orders);
    private readonly HeavyMeasure heavy = new(request, problem.HeavyPerDay);

    /// <summary>What is lacking for a task that cannot be done at its time.</summary>
    public Unplannable Lacking(int number)
    {
        var (task, plan) = (work.Tasks[number].Task, problem.Tasks[number]);
        if (plan.StartBy <= hours.Begin)
        {
            return NotKept(task, $"it is fixed for {AppointedTasks.Words(task)}, which is past", "write down that it is done, or agree on another time");
        }

        var takes = $"it is fixed for {AppointedTasks.Words(task)} and takes {Words(plan.Minutes)}{(plan.Crew > 1 ? $" for {plan.Crew} people" : "")}";
        var on = task.Appointed!.Value.On;
        var (light, quiet) = (Lone(plan with { IsHeavy = false }), Lone(plan with { IsHeavy = false, IsNoisy = false }));
        if (CanBeDone(light, request))
        {
            return Told(number, $"{takes}, is heavy", null, TeamsThere(light, request));
        }

        if (CanBeDone(quiet, request))
        {
            var less = new ShorterQuiet(request, hours, problem).For(other => LoneWork.CanBeDone(Changed.Workers(light, other.Workers)));
            var loud = Another(number) is { } time ? $"{time}, outside quiet hours" : "another time, outside quiet hours";
            return NotKept(task, $"{takes}, is noisy, and these are quiet hours", less is var (quieter, _) ? $"{quieter}, or {loud}" : loud);
        }

        var promised = new PromisedHours(request);
        if (promised.InTheWay(on, shop => CanBeDone(light, shop)) is { Count: > 0 } others)
        {
            return Told(number, $"{takes}, and {PromisedHours.Take(others)}", PromisedHours.Move(others), TeamsThere(light, promised.Without(others)), promised.Without(others));
        }

        var limit = $"{takes}, and there is no session for it then";
        if (WantedIn(request) is { } wanted)
        {
            return Told(number, limit, wanted.Words, [wanted.TeamOf(request)], wanted.In(request));
        }

        if (promised.InTheWay(on, shop => WantedIn(shop) is not null) is { Count: > 0 } both && WantedIn(promised.Without(both)) is { } then)
        {
            return Told(number, $"{limit}, and {PromisedHours.Take(both)}", $"{PromisedHours.Move(both)}, and {then.Words}", [then.TeamOf(request)], then.In(promised.Without(both)));
        }

        var ever = new LongerHours(request, hours).InTheYearFrom(Lone(plan with { IsHeavy = false, NotBefore = 0, StartBy = CompiledCalendar.Never }), plan.Crew, on);
        return NotKept(task, limit, Another(number) ?? (ever is null ? "no day is long enough for it" : $"another time, and {ever.Words}"));

        HoursWanted? WantedIn(PlanRequest shop) => new LongerHours(shop, hours).On(light, plan.Crew, on, OpeningFor(task));

        bool CanBeDone(ScheduleProblem lone, PlanRequest shop) => LoneWork.CanBeDone(Changed.Workers(lone, SessionsOf(shop, on)));

        IEnumerable<int[]> TeamsThere(ScheduleProblem lone, PlanRequest shop)
        {
            var open = SessionsOf(shop, on);
            return problem.TeamsOf(plan.Crew).Where(team => LoneWork.CanBeDone(Changed.Workers(lone, [.. open.Select((own, worker) => team.Contains(worker) ? own : new([], []))])));
        }
    }

    /// <summary>A reason, together with the caps on heavy work that are in the way of those who would do it, or with what must come before it.</summary>
    /// <param name="number">The task.</param>
    /// <param name="limit">Why it has no session.</param>
    /// <param name="cure">What would give it one; null when it has one.</param>
    /// <param name="teams">Those who would do it then.</param>
    /// <param name="cured">The shop with the cure; null without one.</param>
    private Unplannable Told(int number, string limit, string? cure, IEnumerable<int[]> teams, PlanRequest? cured = null)
    {
        var (task, plan) = (work.Tasks[number].Task, problem.Tasks[number]);
        var done = task.Appointed!.Value.On == hours.First ? problem.Standing.HeavyDone.DefaultIfEmpty().Max() : 0;
        if (plan.IsHeavy && heavy.For(plan.Minutes + done, teams) is var (allowed, raised))
        {
            return With(
                $"{limit}{(cure is null ? ", and" : "; besides,")} {allowed}{(done > 0 ? $", and {Words(done)} of heavy work are done on that day" : "")}",
                cure is null ? raised : $"{cure}, and {raised}");
        }

        if (cured is null)
        {
            return With(limit, cure);
        }

        var then = AppointedTasks.Of(cured);
        if (then.IsInTime(number))
        {
            return With(limit, cure);
        }

        var sooner = then.StartThatKeeps(number) is { } begin ? $"{cure}, and begin by {LocalDatePattern.Iso.Format(begin)}, if that is still to come" : null;
        return With($"{limit}; besides, what must come before it is not done by then", sooner);

        Unplannable With(string why, string? way)
        {
            string?[] ways = [way, Another(number)];
            return NotKept(task, why, ways.OfType<string>().Any() ? string.Join(", or ", ways.OfType<string>()) : "another time");
        }
    }

    /// <summary>Another time: the first one after that which is fixed; null when there is none as it stands.</summary>
    private string? Another(int number) => appointed.Earliest(number, []) is { } minute ? $"another time, such as {appointed.TimeOf(work.Tasks[number].Task, minute)}" : null;

    private ScheduleProblem Lone(CompiledTask task) => LoneWork.Of(problem, task);

    private CompiledCalendar[] SessionsOf(PlanRequest shop, LocalDate date) => [.. shop.Calendars.Select(calendar => CompiledCalendar.Of(calendar.On(date).Sessions, hours.Origin, hours.First, hours.Begin))];

    /// <summary>The minute of the day at which the shop would be opened for a task; null when it is not fixed for a time of the day.</summary>
    private int? OpeningFor(ShopTask task) => task.Appointed?.At is { } at
        ? Math.Max(0, (at.Hour * 60) + at.Minute - (int)Math.Ceiling(request.Calendars.Max(calendar => calendar.Overhead.OpenUp.Minutes)))
        : null;

    private static string Words(int minutes) => WorkTimeText.Write(WorkTime.FromMinutes(minutes));

    private static Unplannable NotKept(ShopTask task, string limit, string cure) => new(UnplannableKind.AppointmentNotKept, task, limit, cure);
}
