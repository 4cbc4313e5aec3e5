using ShopDays.Measures;
using ShopDays.Parts;

namespace ShopDays.Work;

/// <summary>The steps that pieces go through under the planes, each as runs of like pieces short enough for a session.</summary>
internal sealed class PieceStages(Draft draft)
{
    private const string FaceOne = "flatten face one";
    private const string FaceTwo = "gauge and thickness face two";
    private const string Edge = "joint the edge";
    private const string Width = "plane to width";
    private const string MarkOut = "mark out a part with knife and gauge";
    private const string Ends = "square ends";

    // The least that a plane takes where nothing is to be lost: what makes a sawn edge clean.
    private static readonly Length Clean = Length.FromInches(0.015625m);

    // What may stay on a face that is left from the saw; a piece that is thicker comes down near its thickness (common practice, no source).
    private static readonly Length MostLeftOn = Length.FromInches(0.375m);

    /// <summary>
    /// Face one, whatever comes between, face two: each as far as its standard says. A face that stays from the saw keeps
    /// what would have come off it, unless that is too much.
    /// </summary>
    /// <param name="pieces">Like pieces.</param>
    /// <param name="all">How many the part has.</param>
    /// <param name="rest">The rest after sawing; null for none.</param>
    /// <param name="afterFaceOne">What comes between the faces; null for nothing.</param>
    public void Faces(List<RoughPiece> pieces, int all, Wait? rest, Action<List<RoughPiece>, int, Wait?>? afterFaceOne = null)
    {
        var part = pieces[0].Part;
        var one = pieces[0].FaceOneDepth(draft.Job.Allowances);
        var two = pieces[0].FaceTwoDepth(draft.Job.Allowances);
        var standard = FaceStandards.FaceTwo(draft.Job, part, draft.Operations);
        var isTooThick = standard == SurfaceStandard.Rough && two > MostLeftOn;
        var second = FacePlaning.Of(draft, FaceTwo, "face two", isTooThick ? SurfaceStandard.Scrub : standard);
        if (one > Length.Zero && FacePlaning.Of(draft, FaceOne, "face one", FaceStandards.FaceOne(draft.Job, part, draft.Operations)) is { } first)
        {
            Step(pieces, all, Planing(first, one, second is null && two > Length.Zero ? "the other face stays from the saw, and the piece that much thicker" : ""), "the saw lets tension out: what is planed before bows again", rest);
            rest = null;
        }

        afterFaceOne?.Invoke(pieces, all, rest);
        rest = afterFaceOne is null ? rest : null;
        if (two > Length.Zero && second is not null)
        {
            Step(pieces, all, Planing(second, two, second.IsGauged ? SharedGauge(pieces[0]) : isTooThick ? "too thick to stay from the saw" : ""), "thickness is gauged from the true face", rest);
        }
    }

    /// <summary>The reference edge; none where the edges stay from the saw.</summary>
    public void JointTheEdge(List<RoughPiece> pieces, int all, Wait? rest)
    {
        if (!FaceStandards.ArePlanedEdges(draft.Job, pieces[0].Part, draft.Operations))
        {
            return;
        }

        // Of what the two edges lose together the first gives a third, as the rates' own depths stand to each other.
        var spare = pieces[0].Width - pieces[0].Part.Width;
        Step(pieces, all, AlongEdge(Edge, Length.Max(spare / 3, Clean)), "the edge is squared from the true face", rest);
    }

    /// <summary>Width where the edges are planed, knife lines, and ends where they are square.</summary>
    public void WidthAndEnds(List<RoughPiece> pieces, int all)
    {
        if (FaceStandards.ArePlanedEdges(draft.Job, pieces[0].Part, draft.Operations))
        {
            var spare = pieces[0].Width - pieces[0].Part.Width;
            Step(pieces, all, AlongEdge(Width, Length.Max(spare - (spare / 3), Clean)), "width is gauged from the true edge");
        }

        Step(pieces, all, run => new TaskSketch { Stage = Stage.Dimensioning, Operation = MarkOut, Name = "mark out", Quantity = run.Count }, "lines are struck from the true face and edge");
        if (pieces[0].Part.Ends == PartEnds.Square)
        {
            EndsOf(pieces[0].Part, [.. pieces.Select(piece => piece.Piece)], all, Stage.Dimensioning, "ends are squared from the true edge, to length last");
        }
    }

    /// <summary>Saws and shoots the ends of a part's pieces.</summary>
    public void EndsOf(Part part, IReadOnlyList<Piece> pieces, int all, Stage stage, string reason)
    {
        var angle = part.Ends switch
        {
            PartEnds.Mitred => 45,
            PartEnds.Angled => part.EndAngle,
            _ => 0,
        };
        var across = Length.FromMillimetres(part.Width.Millimetres / Math.Cos(angle * Math.PI / 180));
        var verb = part.Ends switch
        {
            PartEnds.Mitred => "mitre the ends",
            PartEnds.Angled => "cut the angled ends",
            _ => Ends,
        };
        var sketch = new TaskSketch
        {
            Stage = stage,
            Operation = Ends,
            Name = verb,
            Quantity = 2,
            Each = 2,
            Covariates = Properties.Of([part.Species], part.Thickness, width: across),
        };
        InRuns(part, pieces, all, run => sketch with { Quantity = 2 * run.Count, Each = 2 * run.Count }, reason, null);
    }

    private Func<IReadOnlyList<RoughPiece>, TaskSketch> Planing(FacePlaning planing, Length depth, string note = "") => run => new TaskSketch
    {
        Stage = Stage.Dimensioning,
        Operation = planing.Operation,
        Name = planing.Name,
        Quantity = draft.Operations[planing.Operation].Unit.Of(run.Aggregate(Area.Zero, (sum, piece) => sum + (piece.Length * piece.Width))),
        Covariates = Properties.Of([run[0].Part.Species], depth: depth, width: run[0].Width),
        Factor = planing.FactorOn(run[0].Board.GrainFactor, run[0].Length, run[0].Width, draft.Limits.LongestPass),
        Note = note,
    };

    private Func<IReadOnlyList<RoughPiece>, TaskSketch> AlongEdge(string operation, Length depth) => run => new TaskSketch
    {
        Stage = Stage.Dimensioning,
        Operation = operation,
        Name = operation,
        Quantity = draft.Operations[operation].Unit.Of(run.Aggregate(Length.Zero, (sum, piece) => sum + piece.Length)),
        Covariates = Properties.Of([run[0].Part.Species], run[0].Part.Thickness, depth),
        Factor = run[0].Board.GrainFactor * Passes.Blending(run[0].Length, draft.Limits.LongestPass),
    };

    private void Step(List<RoughPiece> pieces, int all, Func<IReadOnlyList<RoughPiece>, TaskSketch> sketch, string reason, Wait? wait = null)
    {
        var byPiece = pieces.ToDictionary(piece => piece.Piece);
        InRuns(pieces[0].Part, [.. byPiece.Keys], all, run => sketch([.. run.Select(piece => byPiece[piece])]), reason, wait, byPiece);
    }

    private void InRuns(
        Part part, IReadOnlyList<Piece> pieces, int all, Func<IReadOnlyList<Piece>, TaskSketch> sketch, string reason, Wait? wait, Dictionary<Piece, RoughPiece>? rough = null)
    {
        var one = Sketch([pieces[0]]);
        var isMoved = one.Operation is FaceOne or FaceTwo or FacePlaning.Scrub or FacePlaning.Jack or Edge or Width;
        var each = CentralTime.Of(draft.TimingOf(one)) + LongMoves.TimeOf(draft, one.Stage, Moves([pieces[0]]));
        int? before = null;
        foreach (var run in Runs.Of(pieces, each, draft.RunLimit(one.Operation)))
        {
            var made = Sketch(run);
            LongMoves.Warn(draft, part.Name, Moves(run), made.Lift / 2);
            var ids = LongMoves.Add(draft, made with
            {
                Name = made.Name + ": " + PieceNames.Of(run, all),
                Each = Math.Max(made.Each, run.Count),
                Batch = pieces.Count,
                Parts = [part.Name],
            }, Moves(run), made.Lift / 2);
            draft.Before(draft.LastOf(run), ids[0], reason, wait);
            if (wait is not null)
            {
                draft.RestBefore(run, ids[0], wait);
            }

            draft.CameTo(run, ids[^1]);
            foreach (var id in ids)
            {
                draft.WorksOn(id, run);
            }

            draft.AfterTheRunBefore(before, ids[0]);
            before = ids[^1];
        }

        TaskSketch Sketch(IReadOnlyList<Piece> run) => sketch(run) with { Run = run.Count, Lift = WeightOf(run) };

        Mass WeightOf(IReadOnlyList<Piece> run) => rough is null ? Mass.Zero : rough[run[0]].Weight;

        int Moves(IReadOnlyList<Piece> run) => rough is null || !isMoved ? 0 : run.Sum(piece => Passes.Moves(rough[piece].Length, draft.Limits.LongestPass));
    }

    private string SharedGauge(RoughPiece piece)
    {
        var others = draft.Job.Parts
            .Where(part => part.Name != piece.Part.Name && part.Thickness == piece.Part.Thickness && part.IsPanel == piece.Part.IsPanel)
            .Select(part => part.Name)
            .ToList();
        return others.Count == 0 ? "one setting of the gauge for them all" : "one setting of the gauge, shared with " + string.Join(", ", others);
    }
}
