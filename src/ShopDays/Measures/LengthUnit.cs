namespace ShopDays.Measures;

/// <summary>The units in which a shop writes lengths.</summary>
public enum LengthUnit
{
    /// <summary>Thousandth of a metre.</summary>
    Millimetre,

    /// <summary>Ten millimetres.</summary>
    Centimetre,

    /// <summary>A thousand millimetres.</summary>
    Metre,

    /// <summary>25.4 mm exactly.</summary>
    Inch,

    /// <summary>Twelve inches.</summary>
    Foot,
}
