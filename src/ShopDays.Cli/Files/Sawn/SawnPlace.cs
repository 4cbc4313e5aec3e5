using ShopDays.Cli.Files.Yaml;
using ShopDays.Layouts;
using ShopDays.Measures;
using ShopDays.Parts;

namespace ShopDays.Cli.Files.Sawn;

/// <summary>Where something that came of a board lay in it, and how large it is.</summary>
internal static class SawnPlace
{
    /// <summary>Reads <c>length</c>, <c>width</c> and <c>at</c>; null when one of them could not be read.</summary>
    public static Region? Read(Section line)
    {
        var length = line.Required("length", LengthValues.AboveZero("the length of a piece", LengthValues.Longest), "how long it is along the grain");
        var width = line.Required("width", LengthValues.AboveZero("the width of a piece", LengthValues.Widest), "how wide it is");
        var at = line.Required("at", At, "how far from the end and from the edge of its board it began, such as [14\", 3\"]");
        return length.IsRead && width.IsRead && at.IsRead ? new Region(at.Value.X, at.Value.Y, length.Value, width.Value) : null;
    }

    /// <summary>Whether it lies in its board and on nothing else; otherwise that is reported. What lies there is added to the list.</summary>
    public static bool IsFree(Section line, string what, Region place, Board board, List<(string What, Region Region)> taken)
    {
        var format = line.Reading.Format;
        var mistake = !Region.Whole(board).Holds(place) ? SawnMistakes.OffTheBoard(line.Place, what, board.Name, $"{format.Write(board.Length)} x {format.Write(board.Width)}")
            : taken.Find(other => other.Region.Overlaps(place)) is { What: { } other } ? SawnMistakes.OnTopOfAnother(line.Place, what, other)
            : null;
        if (mistake is not null)
        {
            line.Findings.Add(mistake);
        }

        taken.Add((what, place));
        return mistake is null;
    }

    private static ValueReader<(Length X, Length Y)> At { get; } = (node, reading) =>
    {
        if (node is not YamlList { Items.Count: 2 } pair)
        {
            reading.Findings.Add(SawnMistakes.AtIsNoPair(node.Place));
            return Field<(Length, Length)>.Wrong(node.Place);
        }

        var x = LengthValues.FromZero("a place along a board", LengthValues.Longest)(pair.Items[0], reading);
        var y = LengthValues.FromZero("a place across a board", LengthValues.Widest)(pair.Items[1], reading);
        return x.IsRead && y.IsRead ? Field<(Length, Length)>.Read(node.Place, (x.Value, y.Value)) : Field<(Length, Length)>.Wrong(node.Place);
    };
}
