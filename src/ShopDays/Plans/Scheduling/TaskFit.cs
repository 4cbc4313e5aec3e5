namespace ShopDays.Plans.Scheduling;

/// <summary>A stretch of a whole team's work.</summary>
/// <param name="From">The first minute.</param>
/// <param name="To">The end, not included.</param>
/// <param name="Session">The session of the team's first worker.</param>
/// <param name="Gap">Of a single worker, the gap it lies in.</param>
/// <param name="Previous">Of a single worker, the gap before that in the session; below 0 none.</param>
internal readonly record struct FitPiece(int From, int To, int Session, int Gap = -1, int Previous = -1);

/// <summary>One way to place a task: a team and its stretches of work. Used again and again.</summary>
internal sealed class TaskFit
{
    private FitPiece[] pieces = new FitPiece[16];
    private int count;

    /// <summary>Who does it.</summary>
    public int[] Team { get; private set; } = [];

    /// <summary>The first minute.</summary>
    public int Start { get; private set; }

    /// <summary>The end.</summary>
    public int End { get; private set; }

    /// <summary>The stretches; none for a task that goes on by itself.</summary>
    public ReadOnlySpan<FitPiece> Pieces => pieces.AsSpan(0, count);

    /// <summary>Begins anew.</summary>
    public void Clear(int[] team, int start)
    {
        Team = team;
        Start = End = start;
        count = 0;
    }

    /// <summary>Goes on by the clock.</summary>
    public void GoOnBy(int minutes) => End += minutes;

    /// <summary>Adds a stretch.</summary>
    public void Add(in FitPiece piece)
    {
        if (count == pieces.Length)
        {
            Array.Resize(ref pieces, 2 * count);
        }

        if (count == 0)
        {
            Start = piece.From;
        }

        End = piece.To;
        pieces[count++] = piece;
    }
}
