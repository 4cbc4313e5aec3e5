using ShopDays.Layouts;
using ShopDays.Measures;
using ShopDays.Parts;

namespace ShopDays.Work;

/// <summary>A piece as it came from the saw, with what the planes have to take off.</summary>
internal sealed record RoughPiece
{
    /// <summary>Strips go into a panel thicker than it will be, so that it can be flattened: 1/16 in (common practice, no source).</summary>
    public static Length PanelSpare { get; } = Length.FromInches(0.0625m);

    /// <summary>Which piece.</summary>
    public required Piece Piece { get; init; }

    /// <summary>The part that comes of it.</summary>
    public required Part Part { get; init; }

    /// <summary>The board it was sawn from.</summary>
    public required Board Board { get; init; }

    /// <summary>Length, allowance included.</summary>
    public required Length Length { get; init; }

    /// <summary>Width, allowance included.</summary>
    public required Length Width { get; init; }

    /// <summary>Thickness from the saw.</summary>
    public required Length Thickness { get; init; }

    /// <summary>Whether one face is fresh from resawing.</summary>
    public required bool IsResawn { get; init; }

    /// <summary>Thickness that the planes leave.</summary>
    public Length Target => Piece.Strip > 0 ? Part.Thickness + PanelSpare : Part.Thickness;

    /// <summary>What it weighs.</summary>
    public Mass Weight => Board.Species.Weigh(Length * Width * Thickness, Board.Moisture);

    /// <summary>
    /// What the first face loses: its cup and half of what rough faces lose together, and never more than there is to
    /// lose; nothing when the stock comes planed flat.
    /// </summary>
    public Length FaceOneDepth(Allowances allowances)
    {
        var cup = IsResawn ? Length.Zero : Board.Cup;
        var least = IsResawn ? allowances.RoughFaces : allowances.PlaningDepth(Board);
        return Length.Max(Length.Zero, Length.Min(Thickness - Target, ((least - cup) / 2) + cup));
    }

    /// <summary>What the second face loses: all that is left above the thickness wanted.</summary>
    public Length FaceTwoDepth(Allowances allowances) =>
        Length.Max(Length.Zero, Thickness - Target - FaceOneDepth(allowances));

    /// <summary>The pieces of a part, in the order of their numbers.</summary>
    public static IReadOnlyList<RoughPiece> Of(Part part, Layout layout, Allowances allowances) =>
    [
        .. from board in layout.Boards
           from placed in board.Blanks
           where placed.Blank.Part.Name == part.Name
           from number in placed.Blank.Numbers
           orderby number, placed.Blank.Strip
           select new RoughPiece
           {
               Piece = new Piece(part.Name, number, placed.Blank.Strip),
               Part = part,
               Board = board.Board,
               Length = placed.Region.Length,
               Width = placed.Region.Width,
               Thickness = placed.Blank.IsResawn
                   ? (board.Board.Thickness - (allowances.Kerf * (placed.Blank.Numbers.Count - 1))) / placed.Blank.Numbers.Count
                   : board.Board.Thickness,
               IsResawn = placed.Blank.IsResawn,
           },
    ];
}
