using ShopDays.Layouts;
using ShopDays.Measures;
using ShopDays.Parts;

namespace ShopDays.Work;

/// <summary>The cuts of the layout as tasks: one for each board and kind of cut, as far as the order of cuts allows.</summary>
public static class SawingOut
{
    /// <summary>The operation of a kind of cut.</summary>
    public static string OperationOf(CutKind kind) => kind switch
    {
        CutKind.Straighten => "straighten a live edge",
        CutKind.Rip => "rip",
        CutKind.Crosscut => "crosscut",
        CutKind.Resaw => "resaw",
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    /// <summary>Whether a task of some name is one of the cuts of a board, whatever their numbers.</summary>
    /// <param name="task">The name, in a job or in a log.</param>
    /// <param name="board">The board.</param>
    public static bool IsCutOf(string task, string board) => Enum.GetValues<CutKind>().Any(kind => task.StartsWith($"{Lead(kind)} {board}, cut", StringComparison.Ordinal));

    /// <summary>Writes the tasks and says where every blank has come to.</summary>
    internal static void Add(Draft draft, IReadOnlyList<int> chalked)
    {
        foreach (var board in draft.Layout.Boards)
        {
            var done = new List<(Cut Cut, int Id)>();
            var last = chalked;
            var reason = "all parts are chosen and chalked out before the first cut: matching, grain and flaws";
            if (Lifted(draft, board) is { } lifted)
            {
                draft.Before(last, lifted, "all parts are chalked out, with all the boards in sight, before one is lifted to the saw");
                last = [lifted];
                reason = "the board is on the trestles before it is sawn";
            }

            foreach (var group in CutGroups.Of(board))
            {
                var passes = AddWithMoves(draft, board.Board, group);
                draft.Before(last, passes[0], reason);
                last = [passes[^1]];
                done.AddRange(passes.SelectMany(id => group.Select(cut => (cut, id))));
                reason = group[0].Kind == CutKind.Straighten
                    ? "until an edge is straight there is none to gauge from"
                    : "the next cuts are in pieces that these cuts free";
            }

            // What is sawn already waits for no task: it is there, and its rest runs from when it was sawn.
            var ready = board.IsSawn ? [] : chalked;
            foreach (var blank in board.Blanks)
            {
                var freed = done.Where(one => one.Cut.Of.Holds(blank.Region)).Select(one => one.Id).ToList();
                List<Piece> pieces = [.. blank.Blank.Numbers.Select(number => new Piece(blank.Blank.Part.Name, number, blank.Blank.Strip))];
                draft.CameTo(pieces, freed.Count > 0 ? [freed.Max()] : ready);
                if (board.IsSawn)
                {
                    draft.CameSawn(pieces, board);
                }

                foreach (var id in freed.Distinct())
                {
                    draft.WorksOn(id, pieces);
                }
            }
        }
    }

    /// <summary>
    /// Where there are two, a board that is more than one lifts goes onto the trestles as work of a few minutes for two: so
    /// all such lifts can be gathered where the second is there, and the saw itself stays work for one.
    /// </summary>
    private static int? Lifted(Draft draft, BoardLayout board) => board.IsSawn || board.Cuts.Count == 0 || draft.Limits.Workers < 2 || !draft.Limits.IsForTwo(board.Board.Weight)
        ? null
        : draft.Add(new TaskSketch
        {
            Stage = Stage.Sawing,
            Operation = "lift a board onto the trestles",
            Name = $"lift {board.Board.Name} onto the trestles",
            Quantity = 1,
            Board = board.Board.Name,
            Lift = board.Board.Weight,
            Note = "or onto bearers of their height beside them, from which one slides it over",
        });

    private static TaskSketch Sketch(Draft draft, Board board, IReadOnlyList<Cut> cuts)
    {
        var kind = cuts[0].Kind;
        var operation = OperationOf(kind);
        var unit = draft.Operations[operation].Unit;
        var length = cuts.Aggregate(Length.Zero, (sum, cut) => sum + cut.Length);
        var kerf = cuts.Aggregate(Area.Zero, (sum, cut) => sum + (cut.Length * cut.Thickness));
        // The mean by length, so that the whole kerf comes out right.
        var through = Length.FromMillimetres(kerf.SquareMillimetres / length.Millimetres);
        return new TaskSketch
        {
            Stage = Stage.Sawing,
            Operation = operation,
            Name = Name(board, cuts),
            Quantity = unit.Kind == UnitKind.Area ? unit.Of(kerf) : unit.Of(length),
            Each = cuts.Count,
            Run = cuts.Count,
            Batch = LikeCuts(draft, board, kind),
            Covariates = kind == CutKind.Resaw
                ? Properties.Of([board.Species], width: through)
                : Properties.Of([board.Species], thickness: through),
            Board = board.Name,
        };
    }

    private static string Name(Board board, IReadOnlyList<Cut> cuts) => $"{Lead(cuts[0].Kind)} {board.Name}, {Numbers(cuts)}";

    private static string Lead(CutKind kind) => kind switch
    {
        CutKind.Straighten => "straighten the edges of",
        CutKind.Rip => "rip",
        CutKind.Crosscut => "crosscut",
        CutKind.Resaw => "resaw out of",
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    /// <summary>The numbers of cuts as they stand on the board's drawing, neighbours drawn together: <c>cuts 2, 5-7</c>.</summary>
    private static string Numbers(IReadOnlyList<Cut> cuts)
    {
        var spans = new List<(int First, int Last)>();
        foreach (var order in cuts.Select(cut => cut.Order).Order())
        {
            if (spans.Count > 0 && spans[^1].Last == order - 1)
            {
                spans[^1] = spans[^1] with { Last = order };
            }
            else
            {
                spans.Add((order, order));
            }
        }

        return (cuts.Count == 1 ? "cut " : "cuts ") + string.Join(", ", spans.Select(span => span.Last == span.First
            ? FormattableString.Invariant($"{span.First}")
            : FormattableString.Invariant($"{span.First}-{span.Last}")));
    }

    private static int LikeCuts(Draft draft, Board board, CutKind kind) => draft.Layout.Boards
        .Where(other => other.Board.Species == board.Species && other.Board.Thickness == board.Thickness)
        .Sum(other => other.Cuts.Count(cut => cut.Kind == kind));

    // One end at a time: the trestle carries the other half.
    private static IReadOnlyList<int> AddWithMoves(Draft draft, Board board, IReadOnlyList<Cut> cuts)
    {
        var moves = cuts[0].Kind == CutKind.Crosscut ? 0 : cuts.Sum(cut => Passes.Moves(cut.Length, draft.Limits.LongestPass));
        LongMoves.Warn(draft, board.Name, moves, board.Weight / 2);
        return LongMoves.Add(draft, Sketch(draft, board, cuts), moves, board.Weight / 2);
    }
}
