using ShopDays.Layouts;
using ShopDays.Parts;

namespace ShopDays.Work;

/// <summary>The boards are fetched and stacked, and all parts chosen and chalked out on them before any is cut.</summary>
internal static class FetchAndChalk
{
    private const string Fetch = "fetch and stack boards";
    private const string Chalk = "choose and chalk out parts on boards";

    /// <summary>Writes the tasks; the ids of the chalking, after which the saw may begin.</summary>
    public static IReadOnlyList<int> Add(Draft draft)
    {
        var boards = draft.Layout.ToCut.Select(layout => layout.Board).ToList();
        if (boards.Count == 0)
        {
            return [];
        }

        var heavy = boards.Where(board => draft.Limits.IsForTwo(board.Weight)).ToList();
        var light = boards.Except(heavy).ToList();
        var fetched = new List<int>();
        if (heavy.Count > 0)
        {
            fetched.Add(FetchThem(draft, heavy, "fetch and stack the heavy boards", draft.Limits.Workers >= 2 ? 2 : 1));
            Warn(draft, heavy);
        }

        if (light.Count > 0)
        {
            fetched.Add(FetchThem(draft, light, heavy.Count > 0 ? "fetch and stack the other boards" : "fetch and stack the boards", 1));
        }

        return ChalkOut(draft, fetched);
    }

    private static int FetchThem(Draft draft, List<Board> boards, string name, int crew) => draft.Add(new TaskSketch
    {
        Stage = Stage.Layout,
        Operation = Fetch,
        Name = name,
        Quantity = boards.Count,
        Each = boards.Count,
        Run = boards.Count,
        Batch = boards.Count,
        Lift = boards.Max(board => board.Weight),
        Cautions = boards.Exists(board => ProtectedTimber.Holds(board.Species)) ? ["protected timber"] : [],
        Crew = crew,
        Note = "boards " + string.Join(", ", boards.Select(board => board.Name))
            + (crew < 2 && boards.Exists(board => draft.Limits.IsForTwo(board.Weight)) ? "; slide it and turn it about one end, or call a helper" : ""),
    });

    private static List<int> ChalkOut(Draft draft, List<int> fetched)
    {
        var ids = new List<int>();
        var layouts = draft.Layout.ToCut;
        var parts = layouts.Select(PartsOn).Sum();
        var each = CentralTime.Of(draft.TimingOf(Sketch(layouts, parts))) / layouts.Count;
        foreach (var run in Runs.Of(layouts, each, draft.RunLimit(Chalk)))
        {
            var id = draft.Add(Sketch(run, run.Sum(PartsOn)) with
            {
                Name = run.Count == layouts.Count ? "choose and chalk out all parts" : "chalk out the parts on " + string.Join(", ", run.Select(board => board.Board.Name)),
            });
            draft.Before(fetched, id, "grain, flaws and matching are judged with all the boards in sight");
            ids.Add(id);
        }

        return ids;
    }

    private static int PartsOn(BoardLayout board) => board.Blanks.Sum(blank => blank.Blank.Numbers.Count);

    private static TaskSketch Sketch(IReadOnlyList<BoardLayout> boards, int parts) => new()
    {
        Stage = Stage.Layout,
        Operation = Chalk,
        Name = Chalk,
        Quantity = Math.Max(parts, 1),
        Each = Math.Max(parts, 1),
        Note = "best face to what shows; boards " + string.Join(", ", boards.Select(board => board.Board.Name)) + BestFaceUp(boards),
    };

    private static string BestFaceUp(IReadOnlyList<BoardLayout> boards) => boards.Where(board => board.IsBestFaceUp).ToList() is { Count: > 0 } some
        ? "; best face up on " + string.Join(", ", some.Select(board => board.Board.Name))
        : "";

    private static void Warn(Draft draft, List<Board> heavy)
    {
        foreach (var board in heavy)
        {
            var index = Lifting.Index(board.Weight, Lifting.SlabInTheArms);
            var twoWillDo = board.Weight <= Lifting.OfTwo(draft.Limits.LiftAlone);
            draft.Remarks.Add(new Remark(
                RemarkKind.Lift,
                board.Name,
                FormattableString.Invariant($"board {board.Name} is more than one person should lift: lifting index {index:0.0} in the arms"),
                twoWillDo ? "lift it with a second person, or slide it and turn it about one end" : "two people want trestles or a trolley for it as well; slide it, and crosscut it first if the layout allows",
                board.Weight));
        }
    }
}
