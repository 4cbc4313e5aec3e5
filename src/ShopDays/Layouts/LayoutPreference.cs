namespace ShopDays.Layouts;

/// <summary>What a maker would rather spend, timber or sawing; neither changes what the cost of a layout is said to be.</summary>
public enum LayoutPreference
{
    /// <summary>Each at its price.</summary>
    AsPriced,

    /// <summary>Timber is scarce or dear: an hour of sawing counts a tenth of its price.</summary>
    Timber,

    /// <summary>The arm is tired or timber is plenty: an hour of sawing counts four times its price.</summary>
    Sawing,
}
