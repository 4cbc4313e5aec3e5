using NodaTime;
using NodaTime.Text;
using ShopDays.Measures;
using ShopDays.Plans.Scheduling;
using ShopDays.Plans.Searching;
using ShopDays.Work;

namespace ShopDays.Plans;

/// <summary>Why work is not done within the years that are looked at, although each task by itself fits into a session.</summary>
internal sealed class TooLongWork(PlanRequest request, OpenHours hours, ScheduleProblem problem)
{
    private const string Years = "within the five years that are looked at";
    private const int Day = 24 * 60;
    private const int DaysOfWeek = 7;

    private readonly WorkInHand work = new(request.Orders);
    private readonly LongerHours longer = new(request, hours);

    /// <summary>The limit that binds, and the least change of it with which the work is done.</summary>
    public Unplannable Reason()
    {
        var schedule = Generated(problem);
        var stuck = schedule.Unplaced;
        if (stuck < 0)
        {
            return Hours(null);
        }

        return Alone(stuck, Opening(stuck, schedule)) ?? Heavy() ?? Work() ?? Waits() ?? Hours(work.Tasks[stuck].Task);
    }

    /// <summary>Before which a task may not begin for the sake of its date and of what is awaited.</summary>
    private int Opening(int number, Schedule schedule)
    {
        var opening = problem.Tasks[number].NotBefore;
        foreach (var one in problem.Before(number))
        {
            opening = Math.Max(opening, work.Tasks[one.Before].Awaited is null ? 0 : schedule.End[one.Before]);
        }

        return opening;
    }

    /// <summary>A task that found no place for the sake of what it is, not of how much there is to do.</summary>
    private Unplannable? Alone(int number, int opening)
    {
        var (task, plan) = (work.Tasks[number].Task, problem.Tasks[number]);
        var takes = Words(SessionObstacles.InOneGo(plan));
        var honing = SessionObstacles.Honing(task, plan);
        if (opening >= hours.Days * Day)
        {
            return new(
                UnplannableKind.TooLong,
                task,
                $"it does not begin before {DateAt(opening)}, and that is not {Years}",
                $"a date before {DateAt(hours.Days * Day)}, or a shorter wait");
        }

        if (plan.IsHeavy && Start(plan with { IsHeavy = false }) is { } light && !LoneWork.CanBeDone(LoneFrom(light, isHeavy: true)))
        {
            var (allowed, raised) = new HeavyMeasure(request, problem.HeavyPerDay).For(SessionObstacles.InOneGo(plan), TeamsFrom(light))!.Value;
            return new(UnplannableKind.TooHeavyForADay, task, $"what must come before it is done by {DateAt(light)}, and for those who are there from then on for the {takes} of it{honing}, {allowed}", raised);
        }

        if (plan.Crew > 1 && Start(plan with { Crew = 1 }) is { } met)
        {
            return new(
                UnplannableKind.NotTogetherLongEnough,
                task,
                $"what must come before it is done by {DateAt(met)}, and from then on {plan.Crew} people are not there together for {takes}{honing} {Years}",
                HoursFrom(met));
        }

        if (plan.IsNoisy && Start(plan with { IsNoisy = false }) is { } loud)
        {
            return new(
                UnplannableKind.QuietHours,
                task,
                $"what must come before it is done by {DateAt(loud)}, and from then on no session has {takes}{honing} outside quiet hours {Years}",
                HoursFrom(loud) + (new ShorterQuiet(request, hours, problem).For(other => LoneWork.CanBeDone(Changed.Workers(LoneFrom(loud, plan.IsHeavy), other.Workers))) is var (less, _) ? $", or {less}" : ""));
        }

        return !plan.IsSplittable && Start(plan with { IsSplittable = true, LeastPiece = 1 }) is { } broken
            ? new(
                UnplannableKind.NoSessionLongEnough,
                task,
                $"what must come before it is done by {DateAt(broken)}, and from then on no session has {takes} of work{honing} {Years}",
                HoursFrom(broken))
            : null;

        string HoursFrom(int minute) => longer.InTheYearFrom(
            LoneFrom(minute, plan.IsHeavy),
            plan.Crew,
            hours.At(minute).Date)?.Words ?? $"a session with {takes} for it, on {DateAt(minute)} or later";

        ScheduleProblem LoneFrom(int minute, bool isHeavy) =>
            LoneWork.Of(problem, [number], one => one with { Minutes = SessionObstacles.InOneGo(plan), IsSplittable = false, IsHeavy = isHeavy, NotBefore = minute, StartBy = CompiledCalendar.Never }, problem.HeavyPerDay);

        IEnumerable<int[]> TeamsFrom(int minute) => problem.TeamsOf(plan.Crew).Where(team =>
            LoneWork.CanBeDone(Changed.Workers(LoneFrom(minute, isHeavy: false), [.. problem.Workers.Select((own, worker) => team.Contains(worker) ? own : new([], []))])));

        int? Start(CompiledTask other)
        {
            var tried = Generated(Changed.Tasks(problem, (own, id) => id == number ? other : own));
            return tried.Unplaced == number || (tried.Start[number] == 0 && tried.Unplaced >= 0) ? null : tried.Start[number];
        }
    }

    private Unplannable? Heavy()
    {
        if (!IsDone(Changed.HeavyPerDay(problem, Day)))
        {
            return null;
        }

        var least = Least(problem.HeavyPerDay.Least, Day, cap => IsDone(Changed.HeavyPerDay(problem, cap)));
        var caps = string.Join(" and ", problem.HeavyPerDay.Different.Select(cap => Words(cap))) + " of heavy work a day";
        if (IsDone(Changed.HeavyPerDay(problem, problem.HeavyPerDay.WithoutTwoDays())))
        {
            caps += " and " + string.Join(" and ", problem.HeavyPerDay.DifferentInTwoDays.Select(cap => Words(cap))) + " in two days running";
        }

        var minutes = problem.Tasks.Where(task => task.IsHeavy).Sum(task => (long)task.Minutes * task.Crew);
        return new(
            UnplannableKind.TooLong,
            null,
            $"at {caps} its {Words(minutes)} are not done {Years}",
            new HeavyMeasure(request, problem.HeavyPerDay).Raised(least));
    }

    private Unplannable? Work()
    {
        var wanted = problem.Tasks.Sum(task => (long)task.Minutes * task.Crew);
        var there = problem.Workers.Sum(calendar => Enumerable.Range(0, calendar.Count).Sum(session => (long)calendar.To[session] - calendar.From[session]));
        if (wanted <= there)
        {
            return null;
        }

        var weeks = hours.Days / DaysOfWeek;
        return new(
            UnplannableKind.TooLong,
            null,
            $"there are {Words(wanted)} of work, and the sessions of five years have {Words(there)}",
            longer.HasWeek ? $"{Words(Rows(wanted - there, weeks))} more of work a week" : LongerDate() ?? $"another 'extra' date, with {Words(wanted - there)} or more for the work");
    }

    private Unplannable? Waits()
    {
        var longest = problem.Precedences.OrderByDescending(one => one.Lag).FirstOrDefault();
        if (longest.Lag <= 0 || !IsDone(Shortened(0)))
        {
            return null;
        }

        var (task, after) = (work.Tasks[longest.Before].Task, work.Tasks[longest.After].Task);
        var least = Least(0, longest.Lag, cut => IsDone(Shortened(longest.Lag - cut)));
        return new(
            UnplannableKind.TooLong,
            after,
            $"with the wait after {task.Name}, {WaitText.Write(Duration.FromMinutes(longest.Lag))}, it is not done {Years}",
            $"a wait that is {WaitText.Write(Duration.FromMinutes(least))} shorter");

        ScheduleProblem Shortened(int lag) => Changed.Waits(problem, one => one == longest ? lag : one.Lag);
    }

    /// <summary>The date with hours of its own that must be the least longer for all the work.</summary>
    private string? LongerDate() => longer.OfExtraDates(other => IsDone(Changed.Workers(problem, other)))?.Words;

    private Unplannable Hours(ShopTask? task) => new(
        UnplannableKind.TooLong,
        task,
        task is null
            ? $"the work is not done {Years}"
            : $"when what must come before it is done, no session {Years} has room for it",
        (longer.HasWeek ? null : LongerDate()) ?? "more or longer sessions, or less work");

    /// <summary>The least number above one that will not do, up to one that will.</summary>
    private static int Least(int tooLittle, int enough, Func<int, bool> isEnough)
    {
        while (enough - tooLittle > 1)
        {
            var middle = (tooLittle + enough) / 2;
            (tooLittle, enough) = isEnough(middle) ? (tooLittle, middle) : (middle, enough);
        }

        return enough;
    }

    private static bool IsDone(ScheduleProblem other) => Generated(other).Finish < CompiledCalendar.Never;

    private static Schedule Generated(ScheduleProblem other)
    {
        var schedule = new Schedule(other.Tasks.Length, other.Orders.Length);

        // What is fixed for a time comes first, with all that must come before it: other work is to find its place beside it.
        var first = FixedTimes.UpTo(other, [.. Enumerable.Range(0, other.Tasks.Length).Where(task => other.Tasks[task].StartBy < CompiledCalendar.Never)]);
        new ScheduleGenerator(other).Generate([.. first, .. Enumerable.Range(0, other.Blocks).Except(first)], other.Minutes.AsSpan(), schedule);
        return schedule;
    }

    private static long Rows(long number, long inEach) => ((number - 1) / inEach) + 1;

    private static string Words(long minutes) => WorkTimeText.Write(WorkTime.FromMinutes(minutes));

    private string DateAt(int minute) => LocalDatePattern.Iso.Format(hours.At(minute).Date);
}
