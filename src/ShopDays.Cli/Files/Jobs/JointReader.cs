using ShopDays.Measures;
using ShopDays.Parts;
using ShopDays.Work;

namespace ShopDays.Cli.Files.Jobs;

/// <summary>Reads the <c>joints</c> of a job by what the work layer knows of each kind.</summary>
internal sealed class JointReader(OperationCatalogue operations, JobNames names, JobPlaces places)
{
    private const int MostAlike = 10_000;

    /// <summary>A groove runs round many parts: a length in all, not that of a board.</summary>
    private static readonly Length LongestInAll = Length.FromMillimetres(500_000m);

    private static readonly (JointFigure Figure, string Key, string Example)[] Figures =
    [
        (JointFigure.Tails, "tails", "how many tails are in a corner, such as tails: 5"),
        (JointFigure.Length, "length", "the length of all of it together, such as length: 9' 6\""),
        (JointFigure.Width, "width", "the width, such as width: 2\""),
        (JointFigure.Depth, "depth", "the depth, such as depth: 3/8\""),
        (JointFigure.Thickness, "thickness", "the thickness, such as thickness: 3/8\""),
    ];

    public Joint Read(Section line)
    {
        places.AddJoint(line.Place);
        var typed = line.Required("joint", Values.Text("a kind of joint, such as dovetail"), "a kind of joint, such as dovetail");
        JointKind? kind = null;
        if (typed.IsRead && !JointKinds.TryFind(typed.Value!, operations, out kind))
        {
            line.Findings.Add(JointMistakes.UnknownJoint(typed.Place, typed.Value!, JointKinds.Names(operations)));
        }

        return new Joint
        {
            Kind = kind?.Name ?? "",
            Parts = ReadParts(line, kind),
            Count = ReadCount(line, kind),
            Tails = Read(line, kind, JointFigure.Tails, Values.Whole("a count of tails", 1, 60)).Or(0),
            Length = Read(line, kind, JointFigure.Length, LengthValues.AboveZero("the length of a joint", LongestInAll)).Or(Length.Zero),
            Width = Read(line, kind, JointFigure.Width, LengthValues.AboveZero("the width of a joint", LengthValues.Widest)).Or(Length.Zero),
            Depth = Read(line, kind, JointFigure.Depth, LengthValues.AboveZero("the depth of a joint", LengthValues.Widest)).Or(Length.Zero),
            Thickness = Read(line, kind, JointFigure.Thickness, LengthValues.AboveZero("the thickness of a joint", LengthValues.Thickest)).Or(Length.Zero),
        };
    }

    private IReadOnlyList<string> ReadParts(Section line, JointKind? kind)
    {
        var between = line.Optional("between", names.Parts);
        var inside = line.Optional("in", names.Parts);
        var parts = between.IsWritten ? between : inside;
        if (kind is null)
        {
            return parts.Or([]);
        }

        if (between.IsWritten && inside.IsWritten)
        {
            line.Findings.Add(JointMistakes.PartsNamedTwice(inside.Place, kind.Name));
        }
        else if (!parts.IsWritten || (parts.IsRead && parts.Value!.Count == 0))
        {
            line.Findings.Add(JointMistakes.JointWithoutParts(line.Place, kind.Name));
        }
        else if (parts.IsRead && parts.Value!.Count < kind.Parts && names.AreAllKnown)
        {
            line.Findings.Add(JointMistakes.JointOfOnePart(parts.Place, kind.Name));
        }

        return parts.Or([]);
    }

    private static int ReadCount(Section line, JointKind? kind)
    {
        var count = line.Optional("count", Values.Whole("a count of joints", 1, MostAlike));
        var corners = line.Optional("corners", Values.Whole("a count of corners", 1, MostAlike));
        if (kind is not null && corners.IsWritten && !HasCorners(kind))
        {
            line.Findings.Add(JointMistakes.FigureWithoutUse(corners.Place, kind.Name, "corners", KeysOf(kind)));
        }
        else if (count.IsWritten && corners.IsWritten)
        {
            line.Findings.Add(JointMistakes.CountedTwice(corners.Place, kind?.Name ?? "the joint"));
        }

        return corners.IsRead ? corners.Value : count.Or(1);
    }

    private static Field<T> Read<T>(Section line, JointKind? kind, JointFigure figure, ValueReader<T> read)
    {
        var (_, key, example) = Figures.First(one => one.Figure == figure);
        var value = line.Optional(key, read);
        if (kind is null)
        {
            return value;
        }

        if (!value.IsWritten && kind.Needs.Contains(figure))
        {
            line.Findings.Add(JointMistakes.FigureMissing(line.Place, kind.Name, key, example));
        }

        if (value.IsWritten && !kind.Needs.Contains(figure) && !kind.Uses.Contains(figure))
        {
            line.Findings.Add(JointMistakes.FigureWithoutUse(value.Place, kind.Name, key, KeysOf(kind)));
        }

        return value;
    }

    /// <summary>Corners are where two parts meet; a groove has none.</summary>
    private static bool HasCorners(JointKind kind) => kind.Parts > 1;

    private static IReadOnlyList<string> KeysOf(JointKind kind) =>
    [
        .. Figures.Where(one => kind.Needs.Contains(one.Figure) || kind.Uses.Contains(one.Figure)).Select(one => one.Key),
        "count",
        .. HasCorners(kind) ? ["corners"] : Array.Empty<string>(),
    ];
}
