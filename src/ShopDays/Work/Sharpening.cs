using System.Globalization;

namespace ShopDays.Work;

/// <summary>Edges go dull by use: the saw is touched up and irons are honed as the work in hand calls for it.</summary>
internal static class Sharpening
{
    // Feet of ripping in 1-in hardwood between touch-ups: the middle of 150 to 300 (common practice, no source).
    private const double FeetPerTouchUp = 225;

    // Planing between honings of one iron: 60 to 90 min of cutting (common practice, no source); two irons at a time.
    private const double MinutesPerHoning = 90;
    private const int IronsAtATime = 2;

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

    /// <summary>Hones plane irons before the planing that would find them dull; the first time before any planing.</summary>
    public static void AddHonings(Draft draft)
    {
        var used = MinutesPerHoning * IronsAtATime;
        foreach (var (task, timing) in ByHand(draft, PaceGroup.Planing))
        {
            if (used >= MinutesPerHoning * IronsAtATime)
            {
                var honings = (int)(used / (MinutesPerHoning * IronsAtATime));
                used -= honings * MinutesPerHoning * IronsAtATime;
                Before(draft, task, "hone an edge", "hone the plane irons", honings * IronsAtATime, "a keen iron leaves less to do again");
            }

            used += CentralTime.Of(timing with { Setups = 0 }).Minutes;
        }
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
