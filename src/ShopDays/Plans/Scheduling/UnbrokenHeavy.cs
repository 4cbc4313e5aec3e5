namespace ShopDays.Plans.Scheduling;

/// <summary>
/// How much heavy work of a schedule goes on for longer than a bout with nothing lighter, and no rest, in between: of each
/// run of it within a session what is beyond a bout, all runs together, in minutes. Buffers are kept from one to the next.
/// </summary>
/// <param name="problem">The problem.</param>
/// <param name="bout">The minutes of a bout, 1 or more.</param>
internal sealed class UnbrokenHeavy(ScheduleProblem problem, int bout)
{
    /// <summary>A pause of so many minutes is a rest (common practice, no source).</summary>
    private const int Rest = 10;

    private readonly bool isAny = problem.Tasks.Any(task => task.IsHeavy && task.Crew > 0);
    private WorkPiece[] pieces = [];
    private long[] keys = [];

    /// <summary>The minutes.</summary>
    public int In(Schedule schedule)
    {
        if (!isAny)
        {
            return 0;
        }

        var count = schedule.Count;
        if (pieces.Length < count)
        {
            (pieces, keys) = (new WorkPiece[2 * count], new long[2 * count]);
        }

        schedule.Pieces.CopyTo(pieces);
        for (var piece = 0; piece < count; piece++)
        {
            keys[piece] = ((long)pieces[piece].Worker << 32) + pieces[piece].From;
        }

        Array.Sort(keys, pieces, 0, count);
        return Sum(pieces.AsSpan(0, count));
    }

    private int Sum(ReadOnlySpan<WorkPiece> inOrder)
    {
        var (sum, run) = (0, 0);
        var (worker, session, end) = (-1, -1, 0);
        foreach (ref readonly var piece in inOrder)
        {
            var goesOn = piece.Worker == worker && piece.Session == session && piece.From < end + Rest;
            if (!goesOn || !problem.Tasks[piece.Task].IsHeavy)
            {
                sum += Math.Max(0, run - bout);
                run = 0;
            }

            run += problem.Tasks[piece.Task].IsHeavy ? piece.To - piece.From : 0;
            (worker, session, end) = (piece.Worker, piece.Session, piece.To);
        }

        return sum + Math.Max(0, run - bout);
    }
}
