namespace ShopDays.Layouts.Search;

/// <summary>Blanks of one size that cost the same on every board.</summary>
/// <param name="Length">Length with a kerf.</param>
/// <param name="Width">Width with a kerf.</param>
/// <param name="Count">How many of them there are.</param>
internal readonly record struct BlankKind(int Length, int Width, int Count)
{
    public double Area => (double)Length * Width;
}

/// <summary>Boards that are alike. Costs are told twice, since each of two ways of reckoning what a board can earn is at times the stricter.</summary>
/// <param name="Length">Length of the usable place with a kerf.</param>
/// <param name="Width">Width of the usable place with a kerf.</param>
/// <param name="Room">Area in which blanks with their kerfs could lie.</param>
/// <param name="Count">How many of them there are.</param>
/// <param name="ByArea">The costs with sawing charged to each blank.</param>
/// <param name="BySaw">The costs with sawing left to the cuts.</param>
/// <param name="Cuts">What cuts cost.</param>
/// <param name="Border">What the board's own ends and edges cost.</param>
internal sealed record BoardKind(
    int Length, int Width, double Room, int Count, LeastCosts ByArea, LeastCosts BySaw, CostOfCuts Cuts, BorderCost Border);

/// <summary>What a board costs at least.</summary>
/// <param name="Board">When it is cut at all.</param>
/// <param name="Blanks">What a blank of each kind adds; infinite when the board must not yield it.</param>
internal readonly record struct LeastCosts(double Board, double[] Blanks);

/// <summary>
/// A lower bound to what it costs to cut given blanks out of given boards. Every kind of blank is given a price; whatever the
/// prices are, no layout costs less than all prices together, less what the boards could earn at those prices beyond
/// their own cost (Lagrangian duality). The prices are bettered step by step (subgradients, steps after B. T. Polyak,
/// 1969, from memory).
/// </summary>
internal sealed class PricedBound
{
    /// <summary>Sums in another order differ by less.</summary>
    private const double Hair = 1 - 1e-11;

    /// <summary>The pace is halved whenever nothing is gained for a while; below this nothing more is to be had.</summary>
    private const double LeastPace = 0.1;

    private readonly IReadOnlyList<BlankKind> blanks;
    private readonly IReadOnlyList<BoardKind> boards;
    private readonly (SawnValues Values, int[] Kinds)[] tables;
    private readonly double[] slope;
    private readonly double[] taken;
    private readonly double[] net;

    /// <param name="blanks">All blanks, by kinds.</param>
    /// <param name="boards">All boards, by kinds.</param>
    /// <param name="kerf">The kerf that is in all sizes.</param>
    /// <param name="mostAlong">Into how many steps of length a board is divided.</param>
    /// <param name="mostAcross">Into how many steps of width a board is divided.</param>
    public PricedBound(IReadOnlyList<BlankKind> blanks, IReadOnlyList<BoardKind> boards, int kerf, int mostAlong, int mostAcross)
    {
        (this.blanks, this.boards) = (blanks, boards);
        tables = [.. boards.Select(board => TableFor(board, kerf, mostAlong, mostAcross))];
        slope = new double[blanks.Count];
        taken = new double[blanks.Count];
        net = new double[blanks.Count];
    }

    /// <summary>The best bound found; never below 0.</summary>
    /// <param name="known">What a layout that is known costs: no bound can be above it.</param>
    /// <param name="rounds">How often the prices are bettered.</param>
    public double Least(double known, int rounds)
    {
        var prices = FirstPrices();
        var best = 0.0;
        var (pace, since) = (1.0, 0);
        for (var round = 0; round <= rounds; round++)
        {
            var bound = Bound(prices);
            since = bound > best ? 0 : since + 1;
            best = Math.Max(best, bound);
            if (since == 4)
            {
                (pace, since) = (pace / 2, 0);
            }

            // Steep where a kind is scarce; prices of large blanks move more than those of small ones.
            var steep = 0.0;
            for (var kind = 0; kind < prices.Length; kind++)
            {
                steep += slope[kind] * slope[kind] * blanks[kind].Area * blanks[kind].Area;
            }

            if (steep == 0 || pace < LeastPace || best >= known * (1 - 1e-9))
            {
                break;
            }

            var step = pace * (known - bound) / steep;
            for (var kind = 0; kind < prices.Length; kind++)
            {
                prices[kind] = Math.Max(0, prices[kind] + (step * slope[kind] * blanks[kind].Area * blanks[kind].Area));
            }
        }

        return best * Hair;
    }

    /// <summary>Prices by area at which no board earns more than it costs.</summary>
    private double[] FirstPrices() => [.. blanks.Select((blank, kind) => boards
        .Where(board => double.IsFinite(board.ByArea.Blanks[kind]))
        .Select(board => Math.Max(0, board.ByArea.Blanks[kind] + (blank.Area * Math.Max(0, board.ByArea.Board) / board.Room)))
        .DefaultIfEmpty(0)
        .Min())];

    /// <summary>The bound that prices give; sets the slope: how many of each kind the boards would rather leave or yield more of.</summary>
    private double Bound(double[] prices)
    {
        var bound = 0.0;
        for (var kind = 0; kind < prices.Length; kind++)
        {
            slope[kind] = blanks[kind].Count;
            bound += prices[kind] * blanks[kind].Count;
        }

        for (var index = 0; index < boards.Count; index++)
        {
            var board = boards[index];
            var earned = MostEarned(board, tables[index], prices);
            if (earned > 0)
            {
                bound -= board.Count * earned;
                for (var kind = 0; kind < prices.Length; kind++)
                {
                    slope[kind] -= board.Count * taken[kind];
                }
            }
        }

        return bound;
    }

    /// <summary>The most a board earns at some prices beyond its own cost, by area or by cuts, whichever is less.</summary>
    private double MostEarned(BoardKind board, (SawnValues Values, int[] Kinds) table, double[] prices)
    {
        for (var kind = 0; kind < prices.Length; kind++)
        {
            net[kind] = Math.Max(0, prices[kind] - board.ByArea.Blanks[kind]);
        }

        var byArea = MostByArea(board.Room) - board.ByArea.Board;
        if (byArea <= 0)
        {
            return byArea;
        }

        var (own, yielded) = (new double[table.Kinds.Length], new double[table.Kinds.Length]);
        for (var place = 0; place < own.Length; place++)
        {
            own[place] = Math.Max(0, prices[table.Kinds[place]] - board.BySaw.Blanks[table.Kinds[place]]);
        }

        var bySaw = table.Values.Most(own, yielded) - board.BySaw.Board;
        if (bySaw >= byArea)
        {
            return byArea;
        }

        Array.Clear(taken);
        for (var place = 0; place < own.Length; place++)
        {
            taken[table.Kinds[place]] = yielded[place];
        }

        return bySaw;
    }

    /// <summary>As if blanks could be melted into the board's area, the dearest for their area first, as many as there are.</summary>
    private double MostByArea(double room)
    {
        Array.Clear(taken);
        var sum = 0.0;
        foreach (var kind in Enumerable.Range(0, net.Length).Where(kind => net[kind] > 0).OrderByDescending(kind => net[kind] / blanks[kind].Area))
        {
            var count = Math.Min(blanks[kind].Count, room / blanks[kind].Area);
            taken[kind] = count;
            sum += count * net[kind];
            room -= count * blanks[kind].Area;
            if (room <= 0)
            {
                break;
            }
        }

        return sum;
    }

    private (SawnValues Values, int[] Kinds) TableFor(BoardKind board, int kerf, int mostAlong, int mostAcross)
    {
        int[] kinds = [.. Enumerable.Range(0, blanks.Count)
            .Where(kind => double.IsFinite(board.ByArea.Blanks[kind]) && blanks[kind].Length <= board.Length && blanks[kind].Width <= board.Width)];
        Candidate[] candidates = [.. kinds.Select(kind => new Candidate(blanks[kind].Length, blanks[kind].Width, 0))];
        var step = kinds.Length == 0
            ? (board.Length, board.Width)
            : (CutSteps.Fitting(board.Length, [.. candidates.Select(one => one.Length)], mostAlong),
                CutSteps.Fitting(board.Width, [.. candidates.Select(one => one.Width)], mostAcross));
        return (new SawnValues((board.Length, board.Width), candidates, step, board.Cuts, kerf, board.Border), kinds);
    }
}
