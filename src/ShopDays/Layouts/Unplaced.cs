using ShopDays.Measures;
using ShopDays.Parts;

namespace ShopDays.Layouts;

/// <summary>A part that no board yields.</summary>
/// <param name="Part">The part.</param>
/// <param name="Number">Which of it, from 1; beyond the part's count it is a spare.</param>
/// <param name="Reason">Why.</param>
public sealed record Unplaced(Part Part, int Number, UnplacedReason Reason)
{
    /// <summary>Whether more stock helps it.</summary>
    public StockHelp MoreStock { get; init; }
}

/// <summary>Whether more stock helps a part that no board yields.</summary>
public enum StockHelp
{
    /// <summary>With the stock wanted it has a place.</summary>
    Helps,

    /// <summary>It must come from one board, and that does not yield it.</summary>
    PinnedToABoard,

    /// <summary>No yard sells a board that would do: the part is too thick, too long, or too wide for one that is no panel.</summary>
    NotSold,
}

/// <summary>Why a part comes out of no board. Lengths are given as they are: the caller prints them in the shop's units.</summary>
public abstract record UnplacedReason
{
    private UnplacedReason()
    {
    }

    /// <summary>No board is of its timber.</summary>
    /// <param name="Species">The timber.</param>
    public sealed record NoSpecies(Species Species) : UnplacedReason;

    /// <summary>It is pinned to stock of its timber that is not there.</summary>
    /// <param name="Line">The stock line or board named.</param>
    public sealed record NoSuchStock(string Line) : UnplacedReason;

    /// <summary>Only boards that it must not come from would do.</summary>
    /// <param name="Boards">Their names.</param>
    public sealed record OnlyForbidden(IReadOnlyList<string> Boards) : UnplacedReason;

    /// <summary>No board is thick enough once its faces are flat.</summary>
    /// <param name="Needed">The rough thickness that would do with faces such as the best board's.</param>
    /// <param name="Best">The rough thickness of the board that comes nearest.</param>
    public sealed record TooThin(Length Needed, Length Best) : UnplacedReason;

    /// <summary>No board that is thick enough is long enough.</summary>
    /// <param name="Needed">Length of the blank.</param>
    /// <param name="Longest">The greatest length left after end trim.</param>
    public sealed record TooShort(Length Needed, Length Longest) : UnplacedReason;

    /// <summary>No board that is thick and long enough is wide enough.</summary>
    /// <param name="Needed">Width of the blank; of a panel that of its narrowest strip.</param>
    /// <param name="Widest">The greatest width between straight edges.</param>
    public sealed record TooNarrow(Length Needed, Length Widest) : UnplacedReason;

    /// <summary>Boards are large enough, but no clear place in them is, between the flaws.</summary>
    /// <param name="Length">Length of the blank.</param>
    /// <param name="Width">Width of the blank.</param>
    public sealed record NoClearPlace(Length Length, Length Width) : UnplacedReason;

    /// <summary>It would fit, but other parts take the place.</summary>
    public sealed record NoRoom : UnplacedReason;
}
