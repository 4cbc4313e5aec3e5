using ShopDays.Measures;

namespace ShopDays.Work;

/// <summary>Turning and moving pieces that are longer than one pass: work of its own beside the sawing or planing.</summary>
internal static class LongMoves
{
    private const string Move = "turn or move a long piece";

    /// <summary>Adds the moves that go with a task; the id of the last of the two.</summary>
    /// <param name="draft">The order of work.</param>
    /// <param name="of">The task whose pieces are moved.</param>
    /// <param name="moves">How many moves; none adds nothing.</param>
    /// <param name="lift">What is lifted at each.</param>
    public static int Add(Draft draft, int of, int moves, Mass lift)
    {
        if (moves == 0)
        {
            return of;
        }

        var task = draft.Tasks[of];
        var id = draft.Add(new TaskSketch
        {
            Stage = task.Stage,
            Operation = Move,
            Name = "turn and move: " + task.Name,
            Quantity = moves,
            Each = moves,
            Run = moves,
            Batch = moves,
            Parts = task.Parts,
            Board = task.Board,
            Lift = lift,
            Crew = draft.Limits.IsForTwo(lift) && draft.Limits.Workers >= 2 ? 2 : 1,
            Note = "slide and pivot, one end at a time",
        });
        draft.Before(of, id, "the moves between passes belong to this work");
        return id;
    }
}
