namespace ShopDays.Layouts.Search;

/// <summary>
/// An upper limit to what a board can earn when it is cut right across to any depth, there is no end of each candidate and
/// every cut costs something: a dynamic programme over pieces of every size, counted in steps.
/// </summary>
/// <remarks>
/// A piece is as many steps as go into it whole. A candidate has just its own size, and whatever is beyond must be sawn
/// off. The two parts of a piece may together have one step less than it, which is lost in rounding; so every way of
/// sawing has its like here, at no higher cost.
/// </remarks>
internal sealed class SawnValues
{
    private readonly Candidate[] candidates;
    private readonly int ends;
    private readonly int stride;
    private readonly double[] crosscuts;
    private readonly double[] rips;
    private readonly BorderCost border;
    private readonly (int Along, int Across) step;
    private readonly double[] values;
    private readonly double[] parted;
    private readonly double[] partedBefore;
    private readonly double[] ripped;

    /// <param name="most">Length and width of the board.</param>
    /// <param name="candidates">What it is cut into.</param>
    /// <param name="step">The steps of length and width; none may be above a candidate's size.</param>
    /// <param name="cuts">What cuts cost.</param>
    /// <param name="kerf">What a cut is shorter than the piece is reckoned, a kerf being in all sizes.</param>
    /// <param name="border">What the board's own ends and edges cost besides.</param>
    public SawnValues((int Length, int Width) most, IReadOnlyList<Candidate> candidates, (int Along, int Across) step, CostOfCuts cuts, int kerf, BorderCost border)
    {
        this.candidates = [.. candidates.Select(candidate => candidate with { Length = candidate.Length / step.Along, Width = candidate.Width / step.Across })];
        (this.step, this.border) = (step, border);
        ends = (most.Length / step.Along) + 1;
        stride = (most.Width / step.Across) + 1;
        crosscuts = [.. Enumerable.Range(0, stride).Select(across => cuts.CrosscutOf(Math.Max(0, (across * step.Across) - kerf)))];
        rips = [.. Enumerable.Range(0, ends).Select(along => cuts.RipOf(Math.Max(0, (along * step.Along) - kerf)))];
        values = new double[ends * stride];
        (parted, partedBefore, ripped) = (new double[stride], new double[stride], new double[stride]);
    }

    /// <summary>The most that the board earns at some prices, and how many of each candidate it then yields.</summary>
    public double Most(ReadOnlySpan<double> prices, Span<double> taken)
    {
        for (var kind = 0; kind < candidates.Length; kind++)
        {
            candidates[kind] = candidates[kind] with { Value = prices[kind] };
        }

        Array.Clear(values);
        Array.Clear(parted);
        for (var along = 1; along < ends; along++)
        {
            Work(along);
        }

        var (most, best) = (0.0, (Along: 0, Across: 0));
        for (var along = 1; along < ends; along++)
        {
            for (var across = 1; across < stride; across++)
            {
                var earned = values[(along * stride) + across] - (border.PerLength * along * step.Along) - (border.PerWidth * across * step.Across);
                if (earned > most)
                {
                    (most, best) = (earned, (along, across));
                }
            }
        }

        taken.Clear();
        Trace(best.Along, best.Across, taken);
        return most;
    }

    private void Work(int along)
    {
        var here = values.AsSpan(along * stride, stride);
        foreach (var candidate in candidates)
        {
            if (candidate.Length == along && candidate.Width < stride)
            {
                here[candidate.Width] = Math.Max(here[candidate.Width], candidate.Value);
            }
        }

        parted.CopyTo(partedBefore, 0);
        Array.Clear(parted);
        for (var near = 1; near * 2 <= along; near++)
        {
            Rows.Raise(parted, values.AsSpan(near * stride, stride), values.AsSpan((along - near) * stride, stride));
        }

        Array.Clear(ripped);
        for (var across = 1; across < stride; across++)
        {
            var sum = Math.Max(Math.Max(parted[across], partedBefore[across]) - crosscuts[across], Math.Max(ripped[across], ripped[across - 1]) - rips[along]);
            var value = Math.Max(here[across], sum);
            here[across] = value;
            var most = Math.Min(across, stride - 1 - across);
            if (most > 0)
            {
                Rows.Raise(ripped.AsSpan(across + 1, most), value, here.Slice(1, most));
            }
        }
    }

    private void Trace(int along, int across, Span<double> taken)
    {
        var value = values[(along * stride) + across];
        if (value <= 0)
        {
            return;
        }

        var kind = Array.FindIndex(candidates, one => one.Length == along && one.Width == across && one.Value == value);
        if (kind >= 0)
        {
            taken[kind]++;
            return;
        }

        for (var lost = 0; lost <= 1; lost++)
        {
            for (var near = 1; near * 2 <= along - lost; near++)
            {
                if (values[(near * stride) + across] + values[((along - lost - near) * stride) + across] - crosscuts[across] == value)
                {
                    Trace(near, across, taken);
                    Trace(along - lost - near, across, taken);
                    return;
                }
            }

            for (var near = 1; near * 2 <= across - lost; near++)
            {
                if (values[(along * stride) + near] + values[(along * stride) + across - lost - near] - rips[along] == value)
                {
                    Trace(along, near, taken);
                    Trace(along, across - lost - near, taken);
                    return;
                }
            }
        }

        throw new System.Diagnostics.UnreachableException();
    }
}

/// <summary>What it costs to cut a board's own ends and edges off, or make them straight, along all that is in the board.</summary>
/// <param name="PerLength">What each unit of length adds.</param>
/// <param name="PerWidth">What each unit of width adds.</param>
internal readonly record struct BorderCost(double PerLength, double PerWidth);
