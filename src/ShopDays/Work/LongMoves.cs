using System.Globalization;
using ShopDays.Measures;

namespace ShopDays.Work;

/// <summary>
/// Turning and moving pieces that are longer than one pass, timed by the catalogue's own operation for it: part of the
/// sawing or planing that they interrupt, or work of their own for two where one end is more than one should lift.
/// </summary>
internal static class LongMoves
{
    private const string PassMark = ", pass ";
    private const string Move = "turn or move a long piece";

    /// <summary>
    /// Writes sawing or planing down with the moves between its passes. What two have to turn is worked on from one end as far
    /// as that goes, and turned once for all its cuts: so no visit is wanted for each of them, and the rest stays work for one.
    /// </summary>
    /// <param name="draft">The order of work.</param>
    /// <param name="sketch">The sawing or planing whose pieces are moved.</param>
    /// <param name="moves">How many moves.</param>
    /// <param name="lift">What is lifted at each.</param>
    /// <returns>The ids of what is written, each after the one before; the last has the name of the sketch.</returns>
    public static IReadOnlyList<int> Add(Draft draft, TaskSketch sketch, int moves, Mass lift)
    {
        if (moves == 0 || !IsForTwoHere(draft, lift))
        {
            return [draft.Add(With(draft, sketch, moves, lift))];
        }

        // As much is left for one end as for the other: the moves themselves are as many as the reach makes them.
        var passes = 1 + (int)Math.Ceiling((double)moves / sketch.Run);
        var ids = new List<int>();
        for (var pass = 1; pass <= passes; pass++)
        {
            var name = pass == passes ? sketch.Name : sketch.Name + PassMark + FormattableString.Invariant($"{pass}");
            var part = sketch with { Name = name, Quantity = sketch.Quantity / passes, Each = sketch.Each / passes, MorePassesFollow = pass < passes, Lift = Mass.Zero, Note = Noted(sketch.Note, FormattableString.Invariant($"pass {pass} of {passes}, as far as the reach goes")) };
            Follow(draft, ids, draft.Add(part), "the next pass begins when it is turned");
            if (pass < passes)
            {
                Follow(draft, ids, draft.Add(Turn(sketch, pass + 1, lift)), "it is turned when all is done that can be reached");
            }
        }

        return ids;
    }

    /// <summary>Whether time of a name in the log is of a pass after which the same pieces were gone on with.</summary>
    /// <param name="task">The name.</param>
    /// <param name="timing">What was done.</param>
    public static bool IsEarlierPass(string task, TaskTiming.ByOperation timing) =>
        timing.Method.PaceGroup is PaceGroup.Sawing or PaceGroup.Planing
        && task.LastIndexOf(PassMark, StringComparison.Ordinal) is var mark and > 0
        && int.TryParse(task.AsSpan(mark + PassMark.Length), NumberStyles.None, CultureInfo.InvariantCulture, out _);

    /// <summary>What moves take that are part of other work.</summary>
    public static WorkTime TimeOf(Draft draft, Stage stage, int moves) => moves == 0 ? WorkTime.Zero : CentralTime.Of(TimingOf(draft, stage, moves));

    private static TaskTiming.ByOperation TimingOf(Draft draft, Stage stage, int moves) =>
        draft.TimingOf(new TaskSketch { Stage = stage, Operation = Move, Name = Move, Quantity = moves, Each = moves, Run = moves, Batch = moves });

    private static TaskSketch Turn(TaskSketch sketch, int pass, Mass lift) => new()
    {
        Stage = sketch.Stage,
        Operation = Move,
        Name = FormattableString.Invariant($"turn for pass {pass}: {sketch.Name}"),
        Quantity = sketch.Parts.Count == 0 ? 1 : sketch.Run,
        Crew = 2,
        Board = sketch.Board,
        Parts = sketch.Parts,
        Lift = lift,
        Note = "two lift one end; it turns about the other",
    };

    private static void Follow(Draft draft, List<int> ids, int id, string reason)
    {
        if (ids.Count > 0)
        {
            draft.Before(ids[^1], id, reason);
        }

        ids.Add(id);
    }

    private static bool IsForTwoHere(Draft draft, Mass lift) => draft.Limits.Workers >= 2 && draft.Limits.IsForTwo(lift);

    private static string Noted(string note, string more) => note.Length == 0 ? more : note + "; " + more;

    /// <summary>A sketch with the moves between its passes in it; none changes nothing.</summary>
    /// <param name="draft">The order of work.</param>
    /// <param name="sketch">The sawing or planing whose pieces are moved.</param>
    /// <param name="moves">How many moves.</param>
    /// <param name="lift">What is lifted at each.</param>
    private static TaskSketch With(Draft draft, TaskSketch sketch, int moves, Mass lift)
    {
        if (moves == 0)
        {
            return sketch;
        }

        var timing = TimingOf(draft, sketch.Stage, moves);
        var passes = sketch.Run == 1 ? FormattableString.Invariant($"{moves + 1} passes, ") : "";
        var note = passes + (moves == 1 ? "1 move" : FormattableString.Invariant($"{moves} moves")) + " between passes: slide it, and turn it about one end";
        return sketch with
        {
            Besides = sketch.Besides + CentralTime.Of(timing),
            Lift = lift > sketch.Lift ? lift : sketch.Lift,
            Cautions = [.. sketch.Cautions, .. timing.Operation.Cautions, .. timing.Method.Cautions],
            Note = Noted(sketch.Note, note),
        };
    }

    /// <summary>Says that moves lift more than one person should, and what the plan does about it.</summary>
    public static void Warn(Draft draft, string about, int moves, Mass lift)
    {
        if (moves > 0 && draft.Limits.IsForTwo(lift) && draft.IsFirst(Move, about))
        {
            draft.Remarks.Add(new Remark(
                RemarkKind.Lift,
                about,
                $"{about} is moved between passes, and one end of it is more than one person should lift",
                IsForTwoHere(draft, lift) ? "the plan has two for each turn, in minutes of their own; all that can be reached is done before it" : "ask somebody in for the moves, or saw it shorter first",
                lift));
        }
    }
}
