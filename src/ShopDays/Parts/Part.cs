using ShopDays.Measures;

namespace ShopDays.Parts;

/// <summary>How the ends of a part are cut.</summary>
public enum PartEnds
{
    /// <summary>Square: sawn to a knife line and shot.</summary>
    Square,

    /// <summary>At an angle; cut last, when the angle is known.</summary>
    Angled,

    /// <summary>Mitred at 45 degrees; cut last.</summary>
    Mitred,

    /// <summary>Left as they come from the saw.</summary>
    Sawn,
}

/// <summary>To what standard a face is worked.</summary>
public enum SurfaceStandard
{
    /// <summary>Left from the saw.</summary>
    Rough,

    /// <summary>Scrubbed near flat.</summary>
    Scrub,

    /// <summary>Flat from the jack plane.</summary>
    Jack,

    /// <summary>Trued with the long plane; what joints need.</summary>
    Tried,

    /// <summary>Smoothed, ready for finish.</summary>
    Smoothed,
}

/// <summary>A surface of a part that is named in a job file.</summary>
public enum PartSurface
{
    /// <summary>The face that shows.</summary>
    Face,

    /// <summary>The face that is turned inward.</summary>
    Inside,

    /// <summary>The face that is turned down.</summary>
    Under,

    /// <summary>The long edges.</summary>
    Edge,
}

/// <summary>A part of the piece, with how many of it there are. Sizes are finished sizes.</summary>
public sealed record Part
{
    /// <summary>Its name on the cut list, one of a kind in its job.</summary>
    public required string Name { get; init; }

    /// <summary>How many are wanted, at least 1.</summary>
    public int Count { get; init; } = 1;

    /// <summary>Finished length along the grain.</summary>
    public required Length Length { get; init; }

    /// <summary>Finished width across the grain.</summary>
    public required Length Width { get; init; }

    /// <summary>Finished thickness.</summary>
    public required Length Thickness { get; init; }

    /// <summary>The timber it is made of.</summary>
    public required Species Species { get; init; }

    /// <summary>Whether it may be made of narrower strips, glued edge to edge.</summary>
    public bool IsPanel { get; init; }

    /// <summary>How its ends are cut.</summary>
    public PartEnds Ends { get; init; }

    /// <summary>The angle of angled ends, in degrees off square, 0 to 60; 0 otherwise.</summary>
    public double EndAngle { get; init; }

    /// <summary>The surfaces that show: they are finished, and smoothed where nothing less is written.</summary>
    public IReadOnlySet<PartSurface> Shows { get; init; } = new HashSet<PartSurface>();

    /// <summary>
    /// How far named surfaces are taken where that is not the usual: tried, and smoothed where they show. Inside and under
    /// are both the second face; where both are named, the finer holds.
    /// </summary>
    public IReadOnlyDictionary<PartSurface, SurfaceStandard> Surfaces { get; init; } = new Dictionary<PartSurface, SurfaceStandard>();

    /// <summary>Extra blanks to saw out for what may be spoiled, 0 or more.</summary>
    public int Spare { get; init; }

    /// <summary>
    /// A name given to parts that should lie in sequence in the same board, as they are written and numbered, so that the
    /// grain runs on from one to the next; null when free.
    /// </summary>
    public string? Matched { get; init; }

    /// <summary>The stock line, or the one board, that it must come from; null when free.</summary>
    public string? From { get; init; }

    /// <summary>The stock lines and boards that it must not come from.</summary>
    public IReadOnlyList<string> NotFrom { get; init; } = [];

    /// <summary>Whether it should come out of a board of the best figure among those that could give it, as far as there is room.</summary>
    public bool IsForBestFace { get; init; }

    /// <summary>Volume of one of it, finished.</summary>
    public Volume Volume => Length * Width * Thickness;

    /// <summary>Whether the maker lets it come from a board; its timber and size are not asked.</summary>
    public bool MayComeFrom(Board board) => (From is not { } from || board.IsCalled(from)) && !NotFrom.Any(board.IsCalled);

    /// <summary>Area of one of its two faces.</summary>
    public Area FaceArea => Length * Width;

    /// <summary>Area of its whole surface: two faces, two edges, two ends.</summary>
    public Area SurfaceArea => ((Length * Width) + (Length * Thickness) + (Width * Thickness)) * 2;
}
