using NodaTime;
using ShopDays.Measures;
using ShopDays.Parts;

namespace ShopDays.Cli.Files.Jobs;

/// <summary>Reads the <c>stock</c> of a job.</summary>
/// <param name="known">The species that may be named.</param>
/// <param name="places">Where names are kept.</param>
/// <param name="today">The date at the shop; null where it is not known.</param>
internal sealed class StockReader(SpeciesTable known, JobPlaces places, LocalDate? today)
{
    private const int MostAlike = 500;

    private static readonly ValueReader<BoardEdges> Edges = Values.Choice(
        "how edges come", ("live", BoardEdges.Live), ("rough-sawn", BoardEdges.RoughSawn), ("straight", BoardEdges.Straight));

    private static readonly ValueReader<BoardFaces> Faces = Values.Choice(
        "how faces come", ("rough", BoardFaces.Rough), ("skip-planed", BoardFaces.SkipPlaned), ("planed", BoardFaces.Planed));

    private static readonly ValueReader<BoardGrain> Grain = Values.Choice(
        "how grain runs", ("straight", BoardGrain.Straight), ("wavy", BoardGrain.Wavy), ("interlocked", BoardGrain.Interlocked));

    private static readonly ValueReader<BoardFigure> Figure = Values.Choice(
        "the figure of a board", ("plain", BoardFigure.Plain), ("good", BoardFigure.Good), ("best", BoardFigure.Best));

    private static readonly ValueReader<BoardSawing> Sawing = Values.Choice(
        "how a board is sawn out of the log", ("plain", BoardSawing.Plain), ("quarter", BoardSawing.Quarter));

    private readonly DryingReader drying = new(today);
    private readonly Dictionary<string, Place> marks = new(StringComparer.Ordinal);

    /// <summary>Whether every line so far could be read; otherwise what the stock gives is not known.</summary>
    public bool IsWhole { get; private set; } = true;

    /// <summary>Reads one line; null when it says too little to be a board.</summary>
    public StockLine? Read(Section line)
    {
        var name = line.Required("board", Values.Name("the letter chalked on it, such as A"), "the letter chalked on it, such as A");
        var species = line.Required("species", SpeciesOf(known), "the timber, such as white oak");
        var size = line.Required("size", LengthValues.RoughSize, "length x width x thickness, such as 8' x 9 1/2\" x 5/4");
        var count = line.Optional("count", Values.Whole("a count of boards", 1, MostAlike), 1);
        var dried = drying.Read(line);
        var board = new Board
        {
            Name = name.Or(""),
            Species = species.Value!,
            Length = size.Value.Length,
            Width = size.Value.Width,
            Thickness = size.Value.Thickness,
            Edges = line.Optional("edges", Edges, BoardEdges.RoughSawn),
            Faces = line.Optional("faces", Faces, BoardFaces.Rough),
            Grain = line.Optional("grain", Grain, BoardGrain.Straight),
            Sawing = line.Optional("sawn", Sawing, BoardSawing.Plain),
            Figure = line.Optional("figure", Figure, BoardFigure.Good),
            Cup = ReadCup(line, size),
            EndTrim = ReadEndTrim(line, size),
            Flaws = line.Lines("flaws", "a flaw", flaw => FlawReader.Read(flaw, size)),
            Drying = dried,
            Moisture = dried.Readings is [.., var last] ? last.Moisture : line.Reading.Stacked,
            Price = ReadPrice(line, size),
        };
        var read = new StockLine(name, board, count);
        Mark(read, line.Findings);
        if (name.IsRead && species.IsRead && size.IsRead)
        {
            return read;
        }

        IsWhole = false;
        return null;
    }

    /// <summary>Reads a species by its name.</summary>
    public static ValueReader<Species> SpeciesOf(SpeciesTable known) => (node, reading) => Values.Text("the timber, such as white oak")(node, reading)
        .Unless(reading.Findings, name => known.TryFind(name, out _) ? null : StockMistakes.UnknownSpecies(node.Place, name, [.. known.Names]))
        .Select(name => known.TryFind(name, out var found) ? found : throw new System.Diagnostics.UnreachableException());

    private void Mark(StockLine line, Findings findings)
    {
        if (!line.Name.IsRead)
        {
            return;
        }

        places.AddBoard(line.Name.Value!, line.Name.Place);
        foreach (var board in line.Boards)
        {
            if (!marks.TryAdd(board.Name, line.Name.Place))
            {
                findings.Add(StockMistakes.BoardTwice(line.Name.Place, board.Name, marks[board.Name]));
                return;
            }

            places.AddBoard(board.Name, line.Name.Place);
        }
    }

    private static Length ReadCup(Section line, Field<Size> size)
    {
        var format = line.Reading.Format;
        var cup = line.Optional("cup", LengthValues.FromZero("the cup of a board", LengthValues.Thickest));
        return cup.Unless(line.Findings, depth => !size.IsRead || depth < size.Value.Thickness
            ? null
            : StockMistakes.NothingLeftOfTheThickness(cup.Place, format.Write(depth), format.Write(size.Value.Thickness))).Or(Length.Zero);
    }

    private static Length ReadEndTrim(Section line, Field<Size> size)
    {
        var format = line.Reading.Format;
        var trim = line.Optional("end-trim", LengthValues.FromZero("the loss at an end", LengthValues.Longest));
        return trim.Unless(line.Findings, lost => !size.IsRead || lost * 2 < size.Value.Length
            ? null
            : StockMistakes.NothingLeftOfTheLength(trim.Place, format.Write(lost), format.Write(size.Value.Length))).Or(Length.Zero);
    }

    private static Money? ReadPrice(Section line, Field<Size> size)
    {
        const string Expected = "a price of timber, such as 9.40 per board-foot or 45 each";
        var price = line.Optional("price", MoneyValues.Price([PriceUnit.BoardFoot, PriceUnit.CubicMetre, PriceUnit.Each], Expected)).Value;
        return price is null || !size.IsRead ? null : price.Unit switch
        {
            PriceUnit.BoardFoot => price.Amount * (decimal)size.Value.Volume.BoardFeet,
            PriceUnit.CubicMetre => price.Amount * (decimal)size.Value.Volume.CubicMetres,
            _ => price.Amount,
        };
    }
}
