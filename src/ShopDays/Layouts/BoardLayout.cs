using NodaTime;
using ShopDays.Measures;
using ShopDays.Parts;

namespace ShopDays.Layouts;

/// <summary>How one board is cut.</summary>
public sealed record BoardLayout
{
    /// <summary>The board.</summary>
    public required Board Board { get; init; }

    /// <summary>What is left of it when the ends are trimmed and the edges straight.</summary>
    public required Region Usable { get; init; }

    /// <summary>The blanks that come out of it; none overlap.</summary>
    public required IReadOnlyList<PlacedBlank> Blanks { get; init; }

    /// <summary>The cuts; each finds its piece already freed by those before it.</summary>
    public required IReadOnlyList<Cut> Cuts { get; init; }

    /// <summary>Whether a part for the best face comes out of it: its better face is then chosen, and marked, before parts are chalked out on it.</summary>
    public bool IsBestFaceUp => Blanks.Any(placed => placed.Blank.Part.IsForBestFace);

    /// <summary>What is left; of a board already sawn what was kept of it, each a board by its name.</summary>
    public required IReadOnlyList<Offcut> Offcuts { get; init; }

    /// <summary>Whether it is sawn already: its blanks are there, it has no cuts, and it is no longer stock.</summary>
    public bool IsSawn { get; init; }

    /// <summary>The date on which the last of its cuts was made; null where it is not sawn, or nobody wrote that down.</summary>
    public LocalDate? SawnOn { get; init; }

    /// <summary>The same board when its cuts are made: its useful offcuts have names, the others are gone.</summary>
    /// <param name="firstRest">The number of its first offcut, from 1, among all that came of the same board of the stock.</param>
    /// <param name="on">When they were made; null where that is not known.</param>
    public BoardLayout AsSawn(int firstRest, LocalDate? on = null) => this with
    {
        IsSawn = true,
        SawnOn = on,
        Cuts = [],
        Offcuts = [.. Offcuts.Where(offcut => offcut.IsUseful).Select((offcut, index) =>
            offcut with { Name = FormattableString.Invariant($"{Board.Origin} rest {firstRest + index}") })],
    };

    /// <summary>
    /// What was kept of a board as a board of its own: of the same timber and its share of the price by area, with the flaws
    /// that lie in it. Where one of its edges or ends is still the board's own, what is lost there counts as a flaw, and the
    /// sawn one opposite is sound; where both are, they are as the board's.
    /// </summary>
    /// <param name="offcut">One of its offcuts.</param>
    /// <param name="name">Its name as a board.</param>
    public Board AsBoard(Offcut offcut, string name)
    {
        var place = offcut.Region;
        var (hasEdge, hasFarEdge) = (place.Y < Usable.Y, place.Top > Usable.Top);
        var (hasEnd, hasFarEnd) = (place.X < Usable.X, place.Right > Usable.Right);
        var share = (decimal)(place.Area.SquareMillimetres / Region.Whole(Board).Area.SquareMillimetres);
        var spoiled = Board.Flaws.Select(Region.Of).Select(flaw => flaw.Common(place)).ToList();
        if (hasEdge != hasFarEdge)
        {
            spoiled.Add(hasEdge ? Region.Between(place.X, place.Y, place.Right, Usable.Y) : Region.Between(place.X, Usable.Top, place.Right, place.Top));
        }

        if (hasEnd != hasFarEnd)
        {
            spoiled.Add(hasEnd ? Region.Between(place.X, place.Y, Usable.X, place.Top) : Region.Between(Usable.Right, place.Y, place.Right, place.Top));
        }

        return Board with
        {
            Name = name,
            Line = Board.Line,
            CutFrom = Board.Origin,
            Length = place.Length,
            Width = place.Width,
            Edges = hasEdge && hasFarEdge ? Board.Edges : BoardEdges.Straight,
            EndTrim = hasEnd && hasFarEnd ? Board.EndTrim : Length.Zero,
            Flaws = [.. spoiled.Select(flaw => flaw.Common(place)).Where(flaw => !flaw.IsEmpty).Select(flaw =>
                new Flaw(flaw.X - place.X, flaw.Right - place.X, flaw.Y - place.Y, flaw.Top - place.Y))],
            Price = Board.Price is { } price ? price * share : null,
        };
    }
}
