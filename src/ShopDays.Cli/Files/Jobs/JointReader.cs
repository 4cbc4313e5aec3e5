using ShopDays.Measures;
using ShopDays.Parts;

namespace ShopDays.Cli.Files.Jobs;

/// <summary>Reads the <c>joints</c> of a job.</summary>
internal sealed class JointReader(JobNames names, JobPlaces places)
{
    private const int MostAlike = 10_000;

    /// <summary>A groove runs round many parts: a length in all, not that of a board.</summary>
    private static readonly Length LongestInAll = Length.FromMillimetres(500_000m);

    public Joint Read(Section line)
    {
        places.AddJoint(line.Place);
        var kind = line.Required("joint", Values.Text("a kind of joint, such as dovetail"), "a kind of joint, such as dovetail");
        kind = kind.Unless(line.Findings, typed => JointKeys.TryFind(typed) is null
                ? JointMistakes.UnknownJoint(kind.Place, typed, [.. JointKeys.All.Select(one => one.Kind)])
                : null);
        var keys = kind.IsRead ? JointKeys.TryFind(kind.Value!) : null;
        var joint = new Joint
        {
            Kind = keys?.Kind ?? "",
            Parts = ReadParts(line, keys),
            Count = ReadCount(line, keys),
            Tails = Figure(line, keys, "tails", Values.Whole("a count of tails", 1, 60)).Or(0),
            Length = Figure(line, keys, "length", LengthValues.AboveZero("the length of a joint", LongestInAll)).Or(Length.Zero),
            Width = Figure(line, keys, "width", LengthValues.AboveZero("the width of a joint", LengthValues.Widest)).Or(Length.Zero),
            Depth = Figure(line, keys, "depth", LengthValues.AboveZero("the depth of a joint", LengthValues.Widest)).Or(Length.Zero),
            Thickness = Figure(line, keys, "thickness", LengthValues.AboveZero("the thickness of a joint", LengthValues.Thickest)).Or(Length.Zero),
        };
        return joint;
    }

    private IReadOnlyList<string> ReadParts(Section line, JointKeys? keys)
    {
        var between = line.Optional("between", names.Parts);
        var inside = line.Optional("in", names.Parts);
        if (keys is null)
        {
            return [];
        }

        if (between.IsWritten && inside.IsWritten)
        {
            line.Findings.Add(JointMistakes.PartsNamedTwice(inside.Place, keys.Kind));
        }
        else if (!between.IsWritten && !inside.IsWritten)
        {
            line.Findings.Add(JointMistakes.JointWithoutParts(line.Place, keys.Kind));
        }
        else if (keys.Joins && between.IsRead && between.Value!.Count == 1)
        {
            line.Findings.Add(JointMistakes.JointOfOnePart(between.Place, keys.Kind));
        }

        return between.IsRead ? between.Value! : inside.Or([]);
    }

    private static int ReadCount(Section line, JointKeys? keys)
    {
        var count = line.Optional("count", Values.Whole("a count of joints", 1, MostAlike));
        var corners = line.Optional("corners", Values.Whole("a count of corners", 1, MostAlike));
        if (keys is not null && corners.IsWritten && !keys.May.Contains("corners"))
        {
            line.Findings.Add(JointMistakes.FigureWithoutUse(corners.Place, keys.Kind, "corners", [.. keys.Needs, .. keys.May]));
        }
        else if (count.IsWritten && corners.IsWritten)
        {
            line.Findings.Add(JointMistakes.CountedTwice(corners.Place, keys?.Kind ?? "the joint"));
        }

        return corners.IsRead ? corners.Value : count.Or(1);
    }

    private static Field<T> Figure<T>(Section line, JointKeys? keys, string key, ValueReader<T> read)
    {
        var figure = line.Optional(key, read);
        if (keys is null)
        {
            return figure;
        }

        if (!figure.IsWritten && keys.Needs.Contains(key))
        {
            line.Findings.Add(JointMistakes.FigureMissing(line.Place, keys.Kind, key, JointKeys.Figures.First(one => one.Key == key).Example));
        }

        if (figure.IsWritten && !keys.Needs.Contains(key) && !keys.May.Contains(key))
        {
            line.Findings.Add(JointMistakes.FigureWithoutUse(figure.Place, keys.Kind, key, [.. keys.Needs, .. keys.May]));
        }

        return figure;
    }
}
