using ShopDays.Cli.Terminal;
using ShopDays.Layouts;
using ShopDays.Measures;
using ShopDays.Parts;
using Xunit;

namespace ShopDays.Cli.Tests.Terminal;

public sealed class BoardSketchTests
{
    [Theory]
    [InlineData(24, 6)]
    [InlineData(10, 20)]
    public void Every_piece_named_in_the_key_is_in_the_sketch(int pieceWidth, int pieces)
    {
        var board = Board(pieceWidth, pieces);
        var sketch = string.Concat(BoardSketch.Lines(board, 80));
        Assert.All(Enumerable.Range(0, pieces), piece => Assert.Contains(BoardSketch.LetterOf(piece), sketch));
    }

    /// <summary>A long narrow-drawn board ripped into slips side by side.</summary>
    private static BoardLayout Board(int pieceWidth, int pieces)
    {
        var species = new Species
        {
            Name = "oak",
            BotanicalName = "oak",
            Kind = SpeciesKind.Hardwood,
            GreenSpecificGravity = 0.6,
            SpecificGravityAt12 = 0.65,
            DensityAt12 = 720,
            HardnessPoundsForce = 1360,
            RadialShrinkage = 5,
            TangentialShrinkage = 10,
            VolumetricShrinkage = 15,
            GravitySource = "invented for tests",
            HardnessSource = "invented for tests",
            ShrinkageSource = "invented for tests",
        };
        var slip = new Part { Name = "slip", Count = pieces, Species = species, Length = Mm(600), Width = Mm(pieceWidth), Thickness = Mm(20) };
        var board = new Board
        {
            Name = "A",
            Species = species,
            Length = Mm(3000),
            Width = Mm((pieceWidth + 2) * pieces),
            Thickness = Mm(27),
            Edges = BoardEdges.Straight,
            Faces = BoardFaces.Planed,
        };
        return new BoardLayout
        {
            Board = board,
            Usable = Region.Whole(board),
            Blanks =
            [
                .. Enumerable.Range(0, pieces).Select(piece => new PlacedBlank(
                    new Blank { Part = slip, Numbers = [piece + 1], Length = Mm(600), Width = Mm(pieceWidth) },
                    new Region(Mm(0), Mm(piece * (pieceWidth + 2)), Mm(600), Mm(pieceWidth)))),
            ],
            Cuts = [],
            Offcuts = [],
        };
    }

    private static Length Mm(int millimetres) => Length.FromMillimetres((decimal)millimetres);
}
