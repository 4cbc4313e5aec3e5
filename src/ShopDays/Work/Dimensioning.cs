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
    // Longer pieces, and strips of panels, rest between the saw and the plane (common practice, no source).
    private static readonly Length ShortEnough = Length.FromFeet(3);

    // Well-seasoned stock, 12 % or less, has little tension left: single pieces up to 4 ft need no rest (common practice, no source).
    private static readonly Length ShortEnoughWhenSeasoned = Length.FromFeet(4);
    private static readonly MoistureContent WellSeasoned = MoistureContent.FromPercent(12);

    /// <summary>Writes the tasks of every part that has blanks, its panels glued up.</summary>
    public static void Add(Draft draft, PieceStages stages)
    {
        foreach (var part in draft.Job.Parts)
        {
            var pieces = RoughPiece.Of(part, draft.Layout, draft.Job.Allowances);
            foreach (var like in pieces.GroupBy(piece => (piece.Thickness, piece.Board.Faces, piece.Board.Cup, piece.Board.GrainFactor, piece.IsResawn, IsStrip: piece.Piece.Strip > 0)))
            {
                List<RoughPiece> run = [.. like];
                var rest = RestBefore(draft, run[0]);
                if (like.Key.IsStrip)
                {
                    stages.Faces(run, pieces.Count, rest);
                }
                else
                {
                    stages.Faces(run, pieces.Count, rest, afterFaceOne: stages.JointTheEdge);
                    stages.WidthAndEnds(run, pieces.Count);
                }
            }

            Panels.Add(draft, stages, part, [.. pieces.Where(piece => piece.Piece.Strip > 0)]);
        }
    }

    private static Wait? RestBefore(Draft draft, RoughPiece piece)
    {
        if (piece.IsResawn)
        {
            return RestNamed(draft, "rest after resawing", "at rest, stickered: resawing has opened faces that are not as dry as the others");
        }

        var shortEnough = piece.Board.Moisture <= WellSeasoned ? ShortEnoughWhenSeasoned : ShortEnough;
        return piece.Board.Faces != BoardFaces.Planed && (piece.Piece.Strip > 0 || piece.Length > shortEnough)
            ? RestNamed(draft, "rest between rough and final dimension", "at rest, stickered: the saw has let tension out, and what is planed now would bow again")
            : null;
    }

    /// <summary>A rest of the table as a wait of its likely length; none when the table has no such rest.</summary>
    public static Wait? RestNamed(Draft draft, string name, string reason) =>
        draft.Waits.TryFindRest(name, out var rest) && rest.Likely > Duration.Zero ? new Wait(rest.Likely, reason) : null;
}
