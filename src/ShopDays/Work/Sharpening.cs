using System.Globalization;
using ShopDays.Measures;

namespace ShopDays.Work;

/// <summary>Edges go dull by use: the saw is touched up and irons are honed as the work in hand calls for it.</summary>
internal static class Sharpening
{
    // Feet of ripping in 1-in hardwood between touch-ups: the middle of 150 to 300 (common practice, no source).
    private const double FeetPerTouchUp = 225;

    // Planing between honings of one iron: 60 to 90 min of cutting (common practice, no source); two irons at a time.
    private const double MinutesPerHoning = 90;
    private const int IronsAtATime = 2;

    private const string Hone = "hone an edge";

    /// <summary>Touches up the saw before the rip with which its teeth would be through.</summary>
    public static void AddTouchUps(Draft draft)
    {
        double used = 0;
        foreach (var (task, timing) in ByHand(draft, PaceGroup.Sawing).Where(one => one.Timing.Operation.Name is "rip" or "straighten a live edge"))
        {
            used += timing.Quantity * CentralTime.SlopeFactor(timing.Method, timing.Covariates);
            var touchUps = (int)(used / FeetPerTouchUp);
            if (touchUps > 0)
            {
                used -= touchUps * FeetPerTouchUp;
                Before(draft, task, "file and set a saw", "touch up the rip saw", touchUps, "a saw is touched up before its teeth are through");
            }
        }
    }

    /// <summary>
    /// Hones plane irons at the start of the planing that would find them dull, the first time of the first: as part of
    /// that planing, so that no keen iron lies waiting for a week.
    /// </summary>
    public static void AddHonings(Draft draft)
    {
        var used = MinutesPerHoning * IronsAtATime;
        foreach (var (task, timing) in ByHand(draft, PaceGroup.Planing))
        {
            if (used >= MinutesPerHoning * IronsAtATime)
            {
                var honings = (int)(used / (MinutesPerHoning * IronsAtATime));
                used -= honings * MinutesPerHoning * IronsAtATime;
                HoneFirst(draft, task, honings * IronsAtATime);
            }

            used += CentralTime.Of(timing with { Setups = 0, Besides = WorkTime.Zero }).Minutes;
        }
    }

    private static void HoneFirst(Draft draft, ShopTask task, int irons)
    {
        var timing = draft.TimingOf(new TaskSketch { Stage = task.Stage, Operation = Hone, Name = Hone, Quantity = irons, Run = irons, Batch = irons });
        var planing = (TaskTiming.ByOperation)task.Timing;
        draft.Change(task with
        {
            Timing = planing with { Besides = planing.Besides + CentralTime.Of(timing) },
            Cautions = [.. task.Cautions.Concat(timing.Operation.Cautions).Concat(timing.Method.Cautions).Distinct(StringComparer.Ordinal)],
            Note = "hone the irons first" + (task.Note.Length == 0 ? "" : "; " + task.Note),
        });
    }

    private static List<(ShopTask Task, TaskTiming.ByOperation Timing)> ByHand(Draft draft, PaceGroup pace) =>
    [
        .. from task in draft.Tasks
           let timing = task.Timing as TaskTiming.ByOperation
           where timing is not null && timing.Method.PaceGroup == pace && timing.Method.Name == "hand"
           select (task, timing),
    ];

    // Sharpened when the wood for the next work is ready, so that it is not all done on the first day.
    private static void Before(Draft draft, ShopTask task, string operation, string name, int quantity, string reason)
    {
        var id = draft.Add(new TaskSketch
        {
            Stage = task.Stage,
            Operation = operation,
            Name = string.Create(CultureInfo.InvariantCulture, $"{name}, before: {task.Name}"),
            Quantity = quantity,
            Run = quantity,
            Batch = quantity,
        });
        draft.Before(draft.Precedences.Where(one => one.After == task.Id).Select(one => one.Before).ToList(), id, "sharpened for the work in hand");
        draft.Before(id, task.Id, reason);
    }
}
