using NodaTime;
using ShopDays.Parts;
using ShopDays.Work;

namespace ShopDays.Plans;

/// <summary>Makes the problem that is scheduled from a job, a shop and its hours.</summary>
internal static class ProblemCompiler
{
    private const int Bench = 0;

    /// <summary>Compiles. What the shop has must be enough for each task: <see cref="Obstacles"/> looks for that first.</summary>
    public static ScheduleProblem Compile(PlanRequest request, OpenHours hours)
    {
        var graph = request.Graph;
        var keys = graph.Tasks.Select(task => task.SetupKey).Distinct(StringComparer.Ordinal).Select((key, index) => (key, index)).ToDictionary(StringComparer.Ordinal);
        var clamps = ClampRow.Of(request.Limits);
        var after = graph.Precedences
            .Where(one => one.Wait is not null)
            .Select(one => (Task: one.Before, Wait: one.Wait!))
            .Concat(graph.ClosingWaits.Select(one => (Task: one.After, one.Wait)))
            .ToLookup(one => one.Task, one => one.Wait);
        var closing = graph.ClosingWaits.ToLookup(one => one.After, one => MinutesOf(one.Wait.Duration));
        var opening = graph.OpeningWaits
            .SelectMany(wait => wait.Holds.Select(task => (Task: task, Minutes: MinutesOf(hours.EndOf(wait).ToInstant() - hours.Origin))))
            .Concat(request.UnderWay?.Waits.SelectMany(wait => wait.Holds.Select(task => (Task: task, Minutes: hours.MinuteUpTo(wait.Until)))) ?? [])
            .ToLookup(one => one.Task, one => one.Minutes);
        var held = request.UnderWay?.Held ?? [];
        var benchMatters = request.Limits.Benches < request.Calendars.Count || graph.Precedences.Any(one => one.Wait?.HoldsBench == true) || graph.ClosingWaits.Any(one => one.Wait.HoldsBench) || held.Any(one => one.BenchUntil is not null);
        var tasks = graph.Tasks.Select(task => new CompiledTask
        {
            Minutes = MinutesOf(request.Times[task.Id].Minutes),
            Crew = task.Crew,
            IsSplittable = task.IsSplittable,
            LeastPiece = MinutesOf(task.LeastUseful.Minutes),
            IsHeavy = task.WorkClass == WorkClass.Heavy,
            IsNoisy = task.IsNoisy,
            IsDusty = task.IsDusty,
            WetAfter = MinutesOf(task.DustFreeAfter),
            SetupKey = keys[task.SetupKey],
            NotBefore = opening[task.Id].Append(0).Max(),
            WaitAtEnd = closing[task.Id].DefaultIfEmpty().Max(),
            Place = benchMatters && IsAtBench(task) && !after[task.Id].Any(wait => wait.HoldsBench) ? Bench : -1,
            Holds = [.. HoldsOf(task, after[task.Id], clamps)],
        });
        var precedences = graph.Precedences.Select(one =>
            new CompiledPrecedence(one.Before, one.After, one.Wait is null ? 0 : MinutesOf(one.Wait.Duration), one.SameSession));
        return new(
            [.. tasks],
            [.. precedences],
            hours.Calendars,
            [request.Limits.Benches, .. clamps.Counts],
            Math.Max(1, (int)Math.Floor(request.Limits.HeavyPerDay.Minutes)),
            (int)Math.Ceiling(request.Changeover.Minutes),
            StandingOf(request, hours, clamps),
            [new CompiledOrder(FinishedFrom: FinishedFrom(request, hours))]);
    }

    private static ShopStanding StandingOf(PlanRequest request, OpenHours hours, ClampRow clamps) => request.UnderWay is not { } underWay
        ? ShopStanding.Empty
        : new()
        {
            Begin = hours.Begin,
            Held =
            [
                .. underWay.Held
                    .Where(one => one.BenchUntil is not null)
                    .Select(one => (new Hold(Bench, Bench, 1), hours.MinuteUpTo(one.BenchUntil!.Value))),
                .. underWay.Held
                    .SelectMany(one => one.Clamps.OrderByDescending(held => held.Reach), (one, held) => (Held: held, Until: hours.MinuteUpTo(one.ClampsUntil!.Value)))
                    .Select(one => (OnClamps(one.Held, clamps), one.Until)),
            ],
            WetUntil = underWay.Held.Select(one => one.WetUntil).OfType<Instant>().Select(hours.MinuteUpTo).Append(0).Max(),
            HeavyDone = [.. request.Calendars.Select(calendar => (int)Math.Ceiling(underWay.HeavyToday.GetValueOrDefault(calendar.Worker).Minutes))],
        };

    /// <summary>The first usable minute, or the end of a wait at the end of the job that runs already.</summary>
    private static int FinishedFrom(PlanRequest request, OpenHours hours) => (request.UnderWay?.Waits ?? [])
        .Where(wait => wait.EndsTheJob)
        .Select(wait => hours.MinuteUpTo(wait.Until))
        .Append(hours.Begin)
        .Max();

    private static Hold OnClamps(ClampsHeld held, ClampRow clamps, int minutesAfter = 0) =>
        new(Bench + 1 + clamps.FirstThatReaches(held.Reach), Bench + clamps.Counts.Length, held.Count, minutesAfter);

    /// <summary>Hands-on minutes in whole ones, 1 at least.</summary>
    public static int MinutesOf(double minutes) => Math.Clamp((int)Math.Ceiling(Math.Min(minutes, CompiledCalendar.Never)), 1, CompiledCalendar.Never);

    /// <summary>
    /// Planing, joints, assembly and finish are done at a bench; sawing out on trestles, the rest on paper or outside
    /// (common practice, no source).
    /// </summary>
    private static bool IsAtBench(ShopTask task) => task.Stage is Stage.Dimensioning or Stage.Joinery or Stage.Assembly or Stage.Finish;

    private static IEnumerable<Hold> HoldsOf(ShopTask task, IEnumerable<Wait> waits, ClampRow clamps)
    {
        var all = waits.ToList();
        if (all.Exists(wait => wait.HoldsBench))
        {
            yield return new(Bench, Bench, 1, LongestOf(all.Where(wait => wait.HoldsBench)));
        }

        var onClamps = LongestOf(all.Where(wait => wait.HoldsClamps));
        foreach (var held in task.Clamps.OrderByDescending(held => held.Reach))
        {
            yield return OnClamps(held, clamps, onClamps);
        }
    }

    private static int LongestOf(IEnumerable<Wait> waits) => waits.Select(wait => MinutesOf(wait.Duration)).DefaultIfEmpty().Max();

    private static int MinutesOf(Duration wait) => (int)Math.Ceiling(Math.Min(wait.TotalMinutes, CompiledCalendar.Never));
}
