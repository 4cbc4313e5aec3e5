using ShopDays.Cli.Files.Yaml;
using ShopDays.Measures;
using ShopDays.Parts;

namespace ShopDays.Cli.Files.Jobs;

/// <summary>Reads a flaw of a board: along the grain, and across it where it does not take the whole width.</summary>
internal static class FlawReader
{
    public static Flaw? Read(Section flaw, Field<Size> size)
    {
        var from = flaw.Required("from", LengthValues.FromZero("a place along a board", LengthValues.Longest), "where it begins along the board");
        var to = flaw.Required("to", LengthValues.FromZero("a place along a board", LengthValues.Longest), "where it ends along the board");
        var across = flaw.Optional("across", Across);
        if (!from.IsRead || !to.IsRead || !size.IsRead || (across.IsWritten && !across.IsRead))
        {
            return null;
        }

        var (acrossFrom, acrossTo) = across.Or((Field<Length>.Read(flaw.Place, Length.Zero), Field<Length>.Read(flaw.Place, size.Value.Width)));
        var isInside = IsSpan(from, to, size.Value.Length, "along", flaw.Reading) & IsSpan(acrossFrom, acrossTo, size.Value.Width, "across", flaw.Reading);
        return isInside ? new(from.Value, to.Value, acrossFrom.Value, acrossTo.Value) : null;
    }

    private static ValueReader<(Field<Length> From, Field<Length> To)> Across { get; } = (node, reading) =>
    {
        if (node is not YamlList { Items.Count: 2 } pair)
        {
            reading.Findings.Add(StockMistakes.AcrossIsNoPair(node.Place));
            return Field<(Field<Length>, Field<Length>)>.Wrong(node.Place);
        }

        var read = LengthValues.FromZero("a place across a board", LengthValues.Widest);
        var (from, to) = (read(pair.Items[0], reading), read(pair.Items[1], reading));
        return from.IsRead && to.IsRead ? Field<(Field<Length>, Field<Length>)>.Read(node.Place, (from, to)) : Field<(Field<Length>, Field<Length>)>.Wrong(node.Place);
    };

    private static bool IsSpan(Field<Length> from, Field<Length> to, Length end, string along, Reading reading)
    {
        var write = reading.Format.Write;
        if (to.Value <= from.Value)
        {
            reading.Findings.Add(StockMistakes.FlawEndsBeforeItBegins(to.Place, write(from.Value), write(to.Value)));
            return false;
        }

        if (to.Value > end)
        {
            reading.Findings.Add(StockMistakes.FlawOutsideTheBoard(to.Place, write(to.Value), along, write(end)));
            return false;
        }

        return true;
    }
}
