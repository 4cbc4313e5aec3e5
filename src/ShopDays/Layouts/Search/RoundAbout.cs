namespace ShopDays.Layouts.Search;

/// <summary>
/// The most that could lie in a board around a filling in its corner. Whatever is put beside or behind it makes a larger
/// one, so that what is added step by step is at most what the piece of the added size is worth.
/// </summary>
internal sealed class RoundAbout
{
    private readonly Candidate[] byWorth;
    private readonly int[] places;
    private readonly long area;
    private readonly int stepAlong;
    private readonly int stepAcross;
    private readonly double[,] most;

    public RoundAbout(int length, int width, IReadOnlyList<Candidate> candidates, int detail)
    {
        area = (long)length * width;
        places = [.. Enumerable.Range(0, candidates.Count).OrderByDescending(kind => Worth(candidates[kind]))];
        byWorth = [.. places.Select(kind => candidates[kind])];
        var values = new PieceValues(length, width, [.. candidates.Where(one => one.Length <= length && one.Width <= width && one.Most > 0)], detail, detail);
        (stepAlong, stepAcross) = (values.StepAlong, values.StepAcross);
        most = new double[(length / stepAlong) + 1, (width / stepAcross) + 1];
        Work(values);
    }

    /// <summary>The most around a filling of a size, whatever is in it.</summary>
    public double Most(int length, int width) => most[length / stepAlong, width / stepAcross];

    /// <summary>The most that what is left of the candidates is worth on the area that is left, however it may be cut.</summary>
    public double MostOfRest(long filled, ReadOnlySpan<byte> counts)
    {
        var (sum, left) = (0.0, area - filled);
        for (var place = 0; place < byWorth.Length && left > 0; place++)
        {
            var one = byWorth[place];
            var size = (long)one.Length * one.Width;
            var more = Math.Min((double)(one.Most - counts[places[place]]), (double)left / size);
            sum += Math.Max(0, one.Value) * more;
            left -= (long)(more * size);
        }

        // A hair, for what is lost in the sums.
        return sum * (1 + 1e-12);
    }

    private static double Worth(Candidate one) => one.Value / ((double)one.Length * one.Width);

    private void Work(PieceValues values)
    {
        var (ends, edges) = (most.GetLength(0), most.GetLength(1));
        for (var along = ends - 1; along >= 0; along--)
        {
            for (var across = edges - 1; across >= 0; across--)
            {
                var found = 0.0;
                for (var more = 1; along + more < ends; more++)
                {
                    found = Math.Max(found, most[along + more, across] + values.Best(more * stepAlong, across * stepAcross));
                }

                for (var more = 1; across + more < edges; more++)
                {
                    found = Math.Max(found, most[along, across + more] + values.Best(along * stepAlong, more * stepAcross));
                }

                most[along, across] = found;
            }
        }
    }
}
