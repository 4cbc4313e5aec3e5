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
        var from = FindBoard(line);
        if (line.From.IsRead && from is null && isWhole)
        {
            reading.Findings.Add(StockMistakes.UnknownBoard(line.From.Place, line.From.Value!, [.. stock.Select(one => one.Name.Value!)]));
        }

        if (!line.Name.IsRead || SpeciesOf(line, from) is not { } species || !line.Size.IsRead)
        {
            return null;
        }

        if (from is not null && from.Board.Species != species)
        {
            reading.Findings.Add(StockMistakes.BoardOfAnotherSpecies(line.From.Place, from.Name.Value!, from.Board.Species.Name, species.Name));
            return null;
        }

        CompareWithStock(line, species, from);
        var size = line.Size.Value;
        return new Part
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
            Surfaces = line.Rest.Surfaces,
            Spare = line.Rest.Spare,
            Matched = line.Rest.Matched,
            From = line.From.Value,
        };
    }

    private StockLine? FindBoard(PartLine line) => line.From.IsRead
        ? stock.FirstOrDefault(one => one.Name.Value == line.From.Value)
        : null;

    private Species? SpeciesOf(PartLine line, StockLine? from)
    {
        if (line.Species.IsWritten)
        {
            return line.Species.Value;
        }

        if (from is not null)
        {
            return from.Board.Species;
        }

        if (there.Count > 1)
        {
            reading.Findings.Add(StockMistakes.SpeciesUnsaid(line.Place, line.Name.Or(""), [.. there.Select(one => one.Name)]));
            return null;
        }

        return there.SingleOrDefault();
    }

    private void CompareWithStock(PartLine line, Species species, StockLine? from)
    {
        if (!isWhole || stock.Count == 0)
        {
            return;
        }

        List<StockLine> boards = from is null ? [.. stock.Where(one => one.Board.Species == species)] : [from];
        if (boards.Count == 0)
        {
            reading.Findings.Add(StockMistakes.NoStockOfSpecies(line.Species.Place, line.Name.Value!, species.Name, [.. there.Select(one => one.Name)]));
            return;
        }

        var size = line.Size.Value;
        Compare(size.Length, boards.Max(one => one.ClearLength), StockMistakes.LongerThanAnyBoard);
        Compare(size.Thickness, boards.Max(one => one.Board.Thickness), StockMistakes.ThickerThanAnyBoard);
        if (!line.Rest.IsPanel)
        {
            Compare(size.Width, boards.Max(one => one.Board.Width), StockMistakes.WiderThanAnyBoard);
        }

        void Compare(Length needs, Length gives, Func<Place, string, string, string, string, Finding> mistake)
        {
            if (needs > gives)
            {
                reading.Findings.Add(mistake(line.Size.Place, line.Name.Value!, reading.Format.Write(needs), reading.Format.Write(gives), species.Name));
            }
        }
    }
}
