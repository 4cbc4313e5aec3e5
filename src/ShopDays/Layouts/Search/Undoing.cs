namespace ShopDays.Layouts.Search;

/// <summary>Takes back some of what an arrangement holds, to place it anew.</summary>
internal sealed class Undoing(LayoutProblem problem, Arrangement arrangement, Random random)
{
    /// <summary>
    /// Gives one to three boards back uncut, and makes a beginning on one of them, or takes some blanks out of one to four;
    /// all of one timber, so that they can change places. Now and then one board is only cut up in another way.
    /// </summary>
    public void Some()
    {
        var cut = CutBoards(null);
        if (cut.Count == 0)
        {
            return;
        }

        var bought = cut[^1] >= problem.OnHand && random.Next(2) == 0 ? cut.FindIndex(board => board >= problem.OnHand) : -1;
        var first = bought < 0 ? cut[random.Next(cut.Count)] : cut[random.Next(bought, cut.Count)];
        var others = CutBoards(first);
        if (random.Next(20) == 0)
        {
            // Worth so much, all that came out of it goes in again: only the cuts may get better.
            arrangement.Clear(first);
            new ValuableFill(problem, arrangement, random).Fill(first, press: 3);
        }
        else if (random.Next(5) < 2)
        {
            Thin(first);
            Draw(others, random.Next(4), Thin);
        }
        else
        {
            arrangement.Clear(first);
            Draw(others, random.Next(3), arrangement.Clear);
            Begin(first);
        }
    }

    /// <summary>The boards that are cut; those of the timber of one of them, without it, when it is given.</summary>
    private List<int> CutBoards(int? like)
    {
        var boards = new List<int>();
        for (var board = 0; board < problem.Stock.Count; board++)
        {
            if (arrangement.Cuttings[board] is not null
                && (like is null || (board != like && problem.Stock[board].Board.Species == problem.Stock[like.Value].Board.Species)))
            {
                boards.Add(board);
            }
        }

        return boards;
    }

    private void Draw(List<int> boards, int count, Action<int> undo)
    {
        for (var drawn = 0; drawn < count && boards.Count > 0; drawn++)
        {
            var at = random.Next(boards.Count);
            undo(boards[at]);
            boards[at] = boards[^1];
            boards.RemoveAt(boards.Count - 1);
        }
    }

    /// <summary>Takes every other blank of a board out, by chance.</summary>
    private void Thin(int board)
    {
        var goes = new HashSet<WantedBlank>();
        foreach (var (blank, _) in arrangement.Cuttings[board]!.Blanks)
        {
            if (random.Next(2) == 0)
            {
                goes.Add(blank);
            }
        }

        if (goes.Count > 0)
        {
            arrangement.Release(board, goes.Contains);
        }
    }

    /// <summary>
    /// Makes a beginning on a board that was given back: now and then it is filled as valuably as can be, every other time
    /// some first cuts are made at once, for what no single blank would ask for.
    /// </summary>
    private void Begin(int board)
    {
        var how = random.Next(20);
        if (how == 0)
        {
            new ValuableFill(problem, arrangement, random).Fill(board, press: 1.3);
        }
        else if (how <= 10)
        {
            var cutting = new BoardCutting(problem.Stock[board]);
            for (var cuts = random.Next(3); cuts >= 0; cuts--)
            {
                Part(cutting);
            }

            arrangement.Replace(board, cutting);
        }
    }

    /// <summary>Cuts a free piece where a row of one to three blanks would end.</summary>
    private void Part(BoardCutting cutting)
    {
        var piece = cutting.Free[random.Next(cutting.Free.Count)];
        var along = random.Next(2) == 0;
        var room = along ? piece.Region.Length : piece.Region.Width;
        var end = -cutting.Stock.Kerf;
        for (var blanks = random.Next(3); blanks >= 0; blanks--)
        {
            var blank = arrangement.Left[random.Next(arrangement.Left.Count)];
            end += (along ? blank.Length : blank.Width) + cutting.Stock.Kerf;
        }

        if (end < room)
        {
            cutting.Carve(piece, along ? piece.Region with { Length = end } : piece.Region with { Width = end }, along);
        }
    }
}
