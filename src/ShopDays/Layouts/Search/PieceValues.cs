namespace ShopDays.Layouts.Search;

/// <summary>
/// The most that a piece of any size can be worth when it is cut right across again and again, to any depth, and there
/// is no end of each candidate: an exact dynamic programme. Every row is one length, every place in it a width; a
/// crosscut adds two rows, a rip adds one row to itself.
/// </summary>
/// <remarks>
/// Only lengths that candidates add up to have a row, and only cuts that part such lengths are tried (the discretisation
/// points of J. C. Herz, 1972, and N. Christofides and C. Whitlock, 1977, from memory). Where all sizes are multiples of
/// fewer steps than allowed the values are exact; otherwise candidates and pieces are rounded down to steps, so that the
/// values are never too low.
/// </remarks>
internal sealed class PieceValues
{
    /// <summary>How many values of all rows are worked on at a time, so that they stay near the processor.</summary>
    private const int InHand = 1 << 17;

    private readonly IReadOnlyList<Candidate> whole;
    private readonly Candidate[] candidates;
    private readonly int stepAlong;
    private readonly int stepAcross;
    private readonly int[] rowOf;
    private readonly int[] lengths;
    private readonly int stride;
    private readonly double[] values;

    /// <param name="length">Length of the longest piece that will be asked for.</param>
    /// <param name="width">Width of the widest.</param>
    /// <param name="candidates">What pieces are cut into; those that are worth nothing are left out of account.</param>
    /// <param name="mostAlong">How many steps of length there may be.</param>
    /// <param name="mostAcross">How many steps of width there may be.</param>
    public PieceValues(int length, int width, IReadOnlyList<Candidate> candidates, int mostAlong = int.MaxValue, int mostAcross = int.MaxValue)
    {
        whole = candidates;
        stepAlong = CutSteps.For(length, [.. candidates.Select(candidate => candidate.Length)], mostAlong);
        stepAcross = CutSteps.For(width, [.. candidates.Select(candidate => candidate.Width)], mostAcross);
        this.candidates = [.. candidates.Select(candidate => candidate with { Length = candidate.Length / stepAlong, Width = candidate.Width / stepAcross })];
        IsExact = candidates.All(candidate => candidate.Length % stepAlong == 0 && candidate.Width % stepAcross == 0);
        rowOf = RowsOf(length / stepAlong, [.. this.candidates.Select(candidate => candidate.Length).Distinct()]);
        lengths = [.. Enumerable.Range(0, rowOf.Length).Where(along => along == 0 || rowOf[along] != rowOf[along - 1])];
        stride = (width / stepAcross) + 1;
        values = new double[lengths.Length * stride];
        Work();
    }

    /// <summary>Whether no size had to be rounded.</summary>
    public bool IsExact { get; }

    /// <summary>How far apart two lengths are at least that are told apart.</summary>
    public int StepAlong => stepAlong;

    /// <summary>How far apart two widths are at least that are told apart.</summary>
    public int StepAcross => stepAcross;

    /// <summary>The most that a piece is worth; up to the size that was said when the table was made.</summary>
    public double Best(int length, int width) => values[(rowOf[length / stepAlong] * stride) + (width / stepAcross)];

    /// <summary>The cuts that make a piece worth the most; null when it yields nothing. The piece may be larger than what is asked for unless <see cref="IsExact"/>.</summary>
    public Filling? Cuts(int length, int width) => Trace(rowOf[length / stepAlong], width / stepAcross);

    private static int[] RowsOf(int longest, int[] sizes)
    {
        var rows = new int[longest + 1];
        var reached = new bool[longest + 1];
        reached[0] = true;
        for (var along = 1; along <= longest; along++)
        {
            reached[along] = Array.Exists(sizes, size => size <= along && reached[along - size]);
            rows[along] = rows[along - 1] + (reached[along] ? 1 : 0);
        }

        return rows;
    }

    private void Work()
    {
        var block = Math.Max(64, InHand / lengths.Length);
        for (var from = 0; from < stride; from += block)
        {
            for (var row = 1; row < lengths.Length; row++)
            {
                Work(row, from, Math.Min(stride, from + block));
            }
        }
    }

    /// <summary>Works out a stretch of a row; all rows before it are done as far, and it is done up to there.</summary>
    private void Work(int row, int from, int to)
    {
        var all = values.AsSpan();
        var here = all.Slice(row * stride, stride);
        all.Slice(((row - 1) * stride) + from, to - from).CopyTo(here[from..]);
        var along = lengths[row];
        foreach (var candidate in candidates)
        {
            if (candidate.Length == along && candidate.Width < to)
            {
                var at = Math.Max(from, candidate.Width);
                here[at] = Math.Max(here[at], candidate.Value);
            }
        }

        for (var near = 1; lengths[near] * 2 <= along; near++)
        {
            var far = rowOf[along - lengths[near]];
            if (lengths[far] + lengths[near] == along)
            {
                Rows.Raise(here[from..to], all.Slice((near * stride) + from, to - from), all.Slice((far * stride) + from, to - from));
            }
        }

        Rip(here[..to], from);
    }

    /// <summary>
    /// Adds a row to itself. A place hands on to all that it reaches with a narrower one, once it is final itself; a cut
    /// where the value does not rise is no better than the one before it.
    /// </summary>
    private static void Rip(Span<double> here, int from)
    {
        for (var near = (from + 1) / 2; near < here.Length; near++)
        {
            if (near >= from && near > 0)
            {
                here[near] = Math.Max(here[near], here[near - 1]);
            }

            if (near == 0 || here[near] <= here[near - 1])
            {
                continue;
            }

            var least = Math.Max(1, from - near);
            var most = Math.Min(near, here.Length - 1 - near);
            if (least <= most)
            {
                Rows.Raise(here.Slice(near + least, most - least + 1), here[near], here.Slice(least, most - least + 1));
            }
        }
    }

    private Filling? Trace(int row, int across)
    {
        // The least piece of the same value: whatever is beyond it is waste.
        var value = values[(row * stride) + across];
        while (across > 0 && values[(row * stride) + across - 1] == value)
        {
            across--;
        }

        while (row > 0 && values[((row - 1) * stride) + across] == value)
        {
            row--;
        }

        if (row == 0 || across == 0 || value <= 0)
        {
            return null;
        }

        var along = lengths[row];
        var kind = Array.FindIndex(candidates, one => one.Length == along && one.Width == across && one.Value == value);
        if (kind >= 0)
        {
            return new Filling.Single(kind, whole[kind].Length, whole[kind].Width);
        }

        for (var near = 1; lengths[near] * 2 <= along; near++)
        {
            var far = rowOf[along - lengths[near]];
            if (values[(near * stride) + across] + values[(far * stride) + across] == value)
            {
                return new Filling.EndToEnd(Trace(near, across)!, Trace(far, across)!);
            }
        }

        var here = row * stride;
        var ripped = Enumerable.Range(1, across / 2).First(near => values[here + near] + values[here + across - near] == value);
        return new Filling.SideBySide(Trace(row, ripped)!, Trace(row, across - ripped)!);
    }
}
