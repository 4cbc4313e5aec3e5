using ShopDays.Measures;
using ShopDays.Parts;

namespace ShopDays.Cli.Files.Jobs;

/// <summary>Settles the timber of parts, and sees whether the stock could give such a part at all.</summary>
/// <param name="stock">The stock.</param>
/// <param name="isWhole">Whether all of the stock could be read; otherwise what it cannot give is not known.</param>
/// <param name="reading">How lengths are written, and where mistakes go.</param>
internal sealed class PartSettling(IReadOnlyList<StockLine> stock, bool isWhole, Reading reading)
{
    private readonly List<Species> there = [.. stock.Select(line => line.Board.Species).Distinct()];

    /// <summary>The part with its timber; null when something of it is wrong, which has been reported.</summary>
    public Part? Settle(PartLine line)
    {
        var from = line.From.IsRead ? BoardsCalled(line.From.Value!) : [];
        foreach (var name in line.Rest.NotFrom.Append(line.From).Where(name => isWhole && name.IsRead && BoardsCalled(name.Value!).Count == 0))
        {
            reading.Findings.Add(StockMistakes.UnknownBoard(
                name.Place, name.Value!, [.. stock.Select(one => one.Name.Value!)], [.. stock.SelectMany(one => one.Boards).Select(board => board.Name)]));
        }

        if (!line.Name.IsRead || SpeciesOf(line, from) is not { } species || !line.Size.IsRead)
        {
            return null;
        }

        if (from.Count > 0 && from[0].Species != species)
        {
            reading.Findings.Add(StockMistakes.BoardOfAnotherSpecies(line.From.Place, line.From.Value!, from[0].Species.Name, species.Name));
            return null;
        }

        var size = line.Size.Value;
        var part = new Part
        {
            Name = line.Name.Value!,
            Count = line.Rest.Count,
            Length = size.Length,
            Width = size.Width,
            Thickness = size.Thickness,
            Species = species,
            IsPanel = line.Rest.IsPanel,
            Ends = line.Rest.Ends.Ends,
            EndAngle = line.Rest.Ends.Angle,
            Shows = line.Rest.Shows,
            Surfaces = line.Rest.Surfaces.ToDictionary(one => one.Key, one => one.Value.Value),
            Spare = line.Rest.Spare,
            Matched = line.Rest.Matched,
            From = line.From.Value,
            NotFrom = [.. line.Rest.NotFrom.Where(name => name.IsRead).Select(name => name.Value!)],
            IsForBestFace = line.Rest.IsForBestFace,
        };
        CompareWithStock(line, part);
        return part;
    }

    private List<Board> BoardsCalled(string name) => [.. stock.SelectMany(line => line.Boards).Where(board => board.IsCalled(name))];

    private Species? SpeciesOf(PartLine line, List<Board> from)
    {
        if (line.Species.IsWritten)
        {
            return line.Species.Value;
        }

        if (from.Count > 0)
        {
            return from[0].Species;
        }

        if (there.Count > 1)
        {
            reading.Findings.Add(StockMistakes.SpeciesUnsaid(line.Place, line.Name.Or(""), [.. there.Select(one => one.Name)]));
            return null;
        }

        return there.SingleOrDefault();
    }

    private void CompareWithStock(PartLine line, Part part)
    {
        if (!isWhole || stock.Count == 0)
        {
            return;
        }

        var species = part.Species;
        List<Board> boards = [.. stock.SelectMany(one => one.Boards).Where(board => board.Species == species)];
        if (boards.Count == 0)
        {
            reading.Findings.Add(StockMistakes.NoStockOfSpecies(line.Species.Place, part.Name, species.Name, [.. there.Select(one => one.Name)]));
            return;
        }

        // An unknown name leaves nothing to compare with, and has been said.
        boards = [.. boards.Where(part.MayComeFrom)];
        if (boards.Count == 0)
        {
            if (part.NotFrom.Count > 0 && (part.From is not { } from || BoardsCalled(from).Count > 0))
            {
                reading.Findings.Add(StockMistakes.NoBoardAllowed(line.Rest.NotFrom[0].Place, part.Name, species.Name));
            }

            return;
        }

        Compare(part.Length, boards.Max(board => board.Length - (board.EndTrim * 2)), StockMistakes.LongerThanAnyBoard);
        Compare(part.Thickness, boards.Max(board => board.Thickness), StockMistakes.ThickerThanAnyBoard);
        if (!part.IsPanel)
        {
            Compare(part.Width, boards.Max(board => board.Width), StockMistakes.WiderThanAnyBoard);
        }

        void Compare(Length needs, Length gives, Func<Place, string, string, string, string, Finding> mistake)
        {
            if (needs > gives)
            {
                reading.Findings.Add(mistake(line.Size.Place, part.Name, reading.Format.Write(needs), reading.Format.Write(gives), species.Name));
            }
        }
    }
}
