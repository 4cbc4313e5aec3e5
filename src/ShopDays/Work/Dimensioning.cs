using NodaTime;
using ShopDays.Measures;
using ShopDays.Parts;

namespace ShopDays.Work;

/// <summary>
/// From sawn blank to sized part: reference face, reference edge, second face, width, ends, each measured from the one
/// before. Strips get their two faces here and the rest as a panel.
/// </summary>
internal static class Dimensioning
{
    // Longer pieces, strips of panels, and whatever comes of timber of which nothing is known, rest between the saw and the
    // plane (common practice, no source).
    private static readonly Length ShortEnough = Length.FromFeet(3);

    // Well-seasoned stock, 12 % or less, has little tension left: single pieces up to 4 ft need no rest (common practice, no source).
    private static readonly Length ShortEnoughWhenSeasoned = Length.FromFeet(4);
    private static readonly MoistureContent WellSeasoned = MoistureContent.FromPercent(12);

    /// <summary>Writes the tasks of every part that has blanks, its panels glued up.</summary>
    public static void Add(Draft draft, PieceStages stages)
    {
        var gate = new DrynessGate(draft);
        foreach (var part in draft.Job.Parts)
        {
            var pieces = RoughPiece.Of(part, draft.Layout, draft.Job.Allowances);
            foreach (var like in pieces.GroupBy(piece => (piece.Thickness, piece.Board.Faces, piece.Board.Cup, piece.Board.GrainFactor, piece.IsResawn, IsStrip: piece.Piece.Strip > 0, ReadyFrom: gate.ReadyFrom(piece.Board), IsKnown: gate.IsKnown(piece.Board), IsAtRest: gate.IsAtRest(piece.Board))))
            {
                List<RoughPiece> run = [.. like];
                var rest = RestBefore(draft, run[0], like.Key.IsKnown, like.Key.IsAtRest);
                var first = draft.Tasks.Count;
                stages.Faces(run, pieces.Count, rest, afterFaceOne: like.Key.IsStrip ? null : stages.JointTheEdge);
                gate.Hold(like.Key.ReadyFrom, Enumerable.Range(first, draft.Tasks.Count - first));
                if (!like.Key.IsStrip)
                {
                    stages.WidthAndEnds(run, pieces.Count);
                }
            }

            Panels.Add(draft, stages, part, [.. pieces.Where(piece => piece.Piece.Strip > 0)]);
        }

        gate.Close();
    }

    private static Wait? RestBefore(Draft draft, RoughPiece piece, bool isKnown, bool isAtRest)
    {
        if (piece.IsResawn)
        {
            return RestNamed(draft, "rest after resawing", "at rest, stickered: resawing has opened faces that are not as dry as the others", isAtRest);
        }

        var shortEnough = piece.Board.Moisture <= WellSeasoned ? ShortEnoughWhenSeasoned : ShortEnough;
        return piece.Board.Faces != BoardFaces.Planed && (!isKnown || piece.Piece.Strip > 0 || piece.Length > shortEnough)
            ? RestNamed(draft, "rest between rough and final dimension", "at rest, stickered: the saw has let tension out, and what is planed now would bow again", isAtRest)
            : null;
    }

    /// <summary>
    /// A rest of the table as a wait of its likely length, or of its shortest for timber that is measured and has come to
    /// rest in the shop's air: what is left to come to rest is the saw's doing alone. None when the table has no such rest.
    /// </summary>
    public static Wait? RestNamed(Draft draft, string name, string reason, bool isAtRest = false) =>
        draft.Waits.TryFindRest(name, out var rest) && rest.Likely > Duration.Zero ? new Wait(isAtRest ? rest.Low : rest.Likely, reason) : null;
}
