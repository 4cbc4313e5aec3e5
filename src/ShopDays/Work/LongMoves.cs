using ShopDays.Measures;

namespace ShopDays.Work;

/// <summary>
/// Turning and moving pieces that are longer than one pass: part of the sawing or planing that they interrupt, and
/// timed by the catalogue's own operation for it.
/// </summary>
internal static class LongMoves
{
    private const string Move = "turn or move a long piece";

    /// <summary>A sketch with the moves between its passes in it; none changes nothing.</summary>
    /// <param name="draft">The order of work.</param>
    /// <param name="sketch">The sawing or planing whose pieces are moved.</param>
    /// <param name="moves">How many moves.</param>
    /// <param name="lift">What is lifted at each.</param>
    public static TaskSketch With(Draft draft, TaskSketch sketch, int moves, Mass lift)
    {
        if (moves == 0)
        {
            return sketch;
        }

        var timing = draft.TimingOf(new TaskSketch { Stage = sketch.Stage, Operation = Move, Name = Move, Quantity = moves, Each = moves, Run = moves, Batch = moves });
        var passes = sketch.Run == 1 ? FormattableString.Invariant($"{moves + 1} passes, ") : "";
        var note = passes + (moves == 1 ? "1 move" : FormattableString.Invariant($"{moves} moves")) + " between passes: slide it, and turn it about one end";
        return sketch with
        {
            Besides = sketch.Besides + CentralTime.Of(timing),
            Lift = lift > sketch.Lift ? lift : sketch.Lift,
            Cautions = [.. sketch.Cautions, .. timing.Operation.Cautions, .. timing.Method.Cautions],
            Note = sketch.Note.Length == 0 ? note : sketch.Note + "; " + note,
        };
    }

    /// <summary>
    /// Says that moves lift more than one person should. A second pair of hands is wanted for minutes, so the task
    /// itself stays work for one.
    /// </summary>
    public static void Warn(Draft draft, string about, int moves, Mass lift)
    {
        if (moves > 0 && draft.Limits.IsForTwo(lift) && draft.IsFirst(Move, about))
        {
            draft.Remarks.Add(new Remark(
                RemarkKind.Lift,
                about,
                $"{about} is moved between passes, and one end of it is more than one person should lift",
                draft.Limits.Workers >= 2 ? "saw and plane it when there are two in the shop, and call the helper for the moves" : "ask somebody in for the moves, or saw it shorter first",
                lift));
        }
    }
}
