namespace ShopDays.Layouts.Search;

/// <summary>Takes back some of what an arrangement holds, to place it anew.</summary>
internal sealed class Undoing(LayoutProblem problem, Arrangement arrangement, Random random)
{
    /// <summary>
    /// Gives one to three boards back uncut, of which one may then be filled as valuably as can be, or takes some blanks out of one to four; all of one timber, so that they can change places.
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
        if (random.Next(5) < 2)
        {
            Thin(first);
            Draw(others, random.Next(4), Thin);
        }
        else
        {
            arrangement.Clear(first);
            Draw(others, random.Next(3), arrangement.Clear);
            if (random.Next(20) == 0)
            {
                new ValuableFill(problem, arrangement, random).Fill(first);
            }
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
}
