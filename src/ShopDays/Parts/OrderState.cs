namespace ShopDays.Parts;

/// <summary>Where a job stands with whoever wants it.</summary>
public enum OrderState
{
    /// <summary>Taken on: it has a claim on the shop's hours.</summary>
    InHand,

    /// <summary>Asked for, not yet taken on.</summary>
    Asked,

    /// <summary>Taken on and put off until further notice.</summary>
    SetAside,

    /// <summary>Out of the shop.</summary>
    Delivered,
}
