using System.Globalization;
using ShopDays.Parts;

namespace ShopDays.Cli.Files.Jobs;

/// <summary>Reads the <c>parts</c> of a job.</summary>
/// <param name="known">The species that may be named.</param>
/// <param name="names">Where names are kept.</param>
internal sealed class PartReader(SpeciesTable known, JobNames names)
{
    /// <summary>The most pieces of one part.</summary>
    public const int MostAlike = 1_000;

    private static readonly ValueReader<PartSurface> Surface = Values.Choice("a surface of a part", SurfaceWords.Surfaces);

    private static readonly ValueReader<SurfaceStandard> Standard = Values.Choice("how far a face is taken", SurfaceWords.Standards);

    /// <summary>Reads one line.</summary>
    public PartLine Read(Section line)
    {
        var name = line.Required("part", Values.Name("the part's name"), "the part's name");
        names.Declare(name, NameKind.Part);
        var count = line.Optional("count", Values.Whole("a count of parts", 1, MostAlike), 1);
        var size = line.Required("size", LengthValues.FinishedSize, "length x width x thickness, such as 42\" x 17\" x 7/8\"");
        var species = line.Optional("species", StockReader.SpeciesOf(known));
        var details = new PartDetails
        {
            Count = count,
            IsPanel = line.Optional("panel", Values.YesOrNo, false),
            Ends = line.Optional("ends", Ends, (PartEnds.Square, 0)),
            Shows = line.Optional("show", Values.OneOrMore(Surface)).Or([]).Where(one => one.IsRead).Select(one => one.Value).ToHashSet(),
            Surfaces = line.Inner("surface", "the surfaces", Surfaces) ?? [],
            Spare = line.Optional("spare", Values.Whole("a count of spare parts", 0, MostAlike), 0),
            Matched = line.Optional("matched", Values.Name("a name that the matched parts share")).Value,
            IsForBestFace = line.Optional("best-face", Values.YesOrNo, false),
            NotFrom = line.Optional("not-from", Values.OneOrMore(Values.Text("the letter of a board"))).Or([]),
        };
        var from = line.Optional("from", Values.Text("the letter of a board"));
        return new(name, size, species, from, line.Place, details);
    }

    private static Dictionary<PartSurface, Field<SurfaceStandard>> Surfaces(Section section) => SurfaceWords.Surfaces
        .Select(one => (one.Surface, Standard: StandardOf(section, one.Word, one.Surface)))
        .Where(one => one.Standard.IsRead)
        .ToDictionary(one => one.Surface, one => one.Standard);

    private static Field<SurfaceStandard> StandardOf(Section section, string word, PartSurface surface)
    {
        var standard = section.Optional(word, Standard);
        return standard.Unless(section.Reading.Findings, taken => surface == PartSurface.Edge && (taken is SurfaceStandard.Scrub or SurfaceStandard.Jack)
            ? FaceMistakes.EdgeBetweenStandards(standard.Place, SurfaceWords.Of(taken))
            : null);
    }

    private static ValueReader<(PartEnds Ends, double Angle)> Ends { get; } = (node, reading) =>
    {
        var text = Values.Text("square, sawn, mitred or angled with degrees off square, such as angled 8")(node, reading);
        if (!text.IsRead)
        {
            return Field<(PartEnds, double)>.Wrong(node.Place);
        }

        switch (text.Value!.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            case ["square"]:
                return Field<(PartEnds, double)>.Read(node.Place, (PartEnds.Square, 0));
            case ["sawn"]:
                return Field<(PartEnds, double)>.Read(node.Place, (PartEnds.Sawn, 0));
            case ["mitred"]:
                return Field<(PartEnds, double)>.Read(node.Place, (PartEnds.Mitred, 0));
            case ["angled", var degrees] when double.TryParse(degrees, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var angle):
                return Field<(PartEnds Ends, double Angle)>.Read(node.Place, (PartEnds.Angled, angle))
                    .Unless(reading.Findings, ends => ends.Angle is > 0 and <= 60 ? null : StockMistakes.AngleTooSteep(node.Place, text.Value!));
            default:
                reading.Findings.Add(StockMistakes.EndsWithoutAngle(node.Place, text.Value!));
                return Field<(PartEnds, double)>.Wrong(node.Place);
        }
    };
}
