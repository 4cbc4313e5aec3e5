using ShopDays.Layouts;

namespace ShopDays.Work;

/// <summary>Like cuts of one board that can be made one after the other; no cut before the one that frees its piece.</summary>
public static class CutGroups
{
    /// <summary>
    /// Takes the first cut that is free to be made, then all cuts of its kind that are free or become so, and goes on
    /// until none is left. A cut is free when no earlier cut that is left goes through the piece it lies in.
    /// </summary>
    public static IReadOnlyList<IReadOnlyList<Cut>> Of(BoardLayout board)
    {
        var left = board.Cuts.OrderBy(cut => cut.Order).ToList();
        var groups = new List<IReadOnlyList<Cut>>();
        while (left.Count > 0)
        {
            var group = new List<Cut>();
            var kind = left[0].Kind;
            while (left.FindIndex(cut => cut.Kind == kind && IsFree(cut, left)) is >= 0 and var next)
            {
                group.Add(left[next]);
                left.RemoveAt(next);
            }

            groups.Add(group);
        }

        return groups;
    }

    /// <summary>The tasks that saw a board, in their order, each with its cuts; none where the job does not saw it.</summary>
    /// <param name="graph">The job.</param>
    /// <param name="board">The board as it is laid out in it.</param>
    public static IReadOnlyList<(ShopTask Task, IReadOnlyList<Cut> Cuts)> In(TaskGraph graph, BoardLayout board)
    {
        var groups = Of(board);
        // A board is lifted before it is sawn: its cuts are the last of what is done to it while it is one board.
        var tasks = graph.Tasks.Where(task => task.Stage == Stage.Sawing && string.Equals(task.Board, board.Board.Name, StringComparison.Ordinal)).TakeLast(groups.Count).ToList();
        return tasks.Count == groups.Count ? [.. tasks.Zip(groups)] : [];
    }

    private static bool IsFree(Cut cut, List<Cut> left) => !left.Exists(other => other.Order < cut.Order && other.Of.Holds(cut.Of));
}
