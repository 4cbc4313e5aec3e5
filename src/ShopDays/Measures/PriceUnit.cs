namespace ShopDays.Measures;

/// <summary>What a price is for.</summary>
public enum PriceUnit
{
    /// <summary>An hour, of work or of the shop standing.</summary>
    Hour,

    /// <summary>A month, of rent and the like.</summary>
    Month,

    /// <summary>A year, of wages and the like.</summary>
    Year,

    /// <summary>A board foot of timber, 144 cubic inches.</summary>
    BoardFoot,

    /// <summary>A cubic metre of timber.</summary>
    CubicMetre,

    /// <summary>One board or piece.</summary>
    Each,

    /// <summary>A kilometre driven.</summary>
    Kilometre,

    /// <summary>A mile driven.</summary>
    Mile,
}
