using ShopDays.Measures;

namespace ShopDays.Layouts.Search;

/// <summary>
/// A piece of the usable part of a board: whole and free, a blank, or cut right across into two. The tree of pieces is
/// the tree of cuts.
/// </summary>
internal sealed class Piece(Region region)
{
    public Region Region { get; } = region;

    /// <summary>How it is cut; null when it is not.</summary>
    public CutKind? Split { get; private set; }

    /// <summary>Where the near side of the kerf lies.</summary>
    public Length At { get; private set; }

    /// <summary>What lies before the kerf; null when nothing does.</summary>
    public Piece? Near { get; private set; }

    /// <summary>What lies behind the kerf; null when the saw leaves nothing.</summary>
    public Piece? Far { get; private set; }

    /// <summary>The blank that it is; null when it is none.</summary>
    public WantedBlank? Blank { get; set; }

    public bool IsFree => Split is null && Blank is null;

    public bool HoldsBlank => Blank is not null || Near is { HoldsBlank: true } || Far is { HoldsBlank: true };

    /// <summary>Crosscuts a free piece.</summary>
    public void Crosscut(Length at, Length kerf) => Cut(
        CutKind.Crosscut, at, Region.Between(Region.X, Region.Y, at, Region.Top), Region.Between(at + kerf, Region.Y, Region.Right, Region.Top));

    /// <summary>Rips a free piece.</summary>
    public void Rip(Length at, Length kerf) => Cut(
        CutKind.Rip, at, Region.Between(Region.X, Region.Y, Region.Right, at), Region.Between(Region.X, at + kerf, Region.Right, Region.Top));

    /// <summary>Makes the cuts that free a place in a free piece, and gives the piece that is exactly that place.</summary>
    public Piece Carve(Region place, Length kerf, bool crosscutFirst)
    {
        var piece = this;
        foreach (var along in crosscutFirst ? (ReadOnlySpan<bool>)[true, false] : [false, true])
        {
            piece = along ? piece.ToLength(place, kerf) : piece.ToWidth(place, kerf);
        }

        return piece;
    }

    /// <summary>Takes blanks away; what then holds none is whole again.</summary>
    public void Release(Predicate<WantedBlank> goes)
    {
        if (Blank is { } blank && goes(blank))
        {
            Blank = null;
        }

        Near?.Release(goes);
        Far?.Release(goes);
        if (!HoldsBlank)
        {
            (Split, Near, Far) = (null, null, null);
        }
    }

    /// <summary>A copy that shares nothing that changes.</summary>
    public Piece Copy() => new(Region) { Split = Split, At = At, Near = Near?.Copy(), Far = Far?.Copy(), Blank = Blank };

    /// <summary>Lists the free pieces and the blanks in it, nearer ones first.</summary>
    public void List(List<Piece> free, List<(WantedBlank Blank, Region Region)> blanks)
    {
        if (Blank is { } blank)
        {
            blanks.Add((blank, Region));
        }
        else if (Split is null)
        {
            free.Add(this);
        }
        else
        {
            Near?.List(free, blanks);
            Far?.List(free, blanks);
        }
    }

    private Piece ToLength(Region place, Length kerf)
    {
        var piece = this;
        if (place.X > piece.Region.X)
        {
            piece.Crosscut(place.X - kerf, kerf);
            piece = piece.Far!;
        }

        if (place.Right < piece.Region.Right)
        {
            piece.Crosscut(place.Right, kerf);
            piece = piece.Near!;
        }

        return piece;
    }

    private Piece ToWidth(Region place, Length kerf)
    {
        var piece = this;
        if (place.Y > piece.Region.Y)
        {
            piece.Rip(place.Y - kerf, kerf);
            piece = piece.Far!;
        }

        if (place.Top < piece.Region.Top)
        {
            piece.Rip(place.Top, kerf);
            piece = piece.Near!;
        }

        return piece;
    }

    private void Cut(CutKind kind, Length at, Region near, Region far)
    {
        Split = kind;
        At = at;
        Near = near.IsEmpty ? null : new Piece(near);
        Far = far.IsEmpty ? null : new Piece(far);
    }
}
