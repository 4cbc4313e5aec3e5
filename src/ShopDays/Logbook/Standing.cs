namespace ShopDays.Logbook;

/// <summary>What the maker has said about a time that looked odd.</summary>
public enum Standing
{
    /// <summary>Nothing: it is believed unless it is far out, and then it is asked about.</summary>
    AsLogged,

    /// <summary>It is right, however odd it looks, and is learned from.</summary>
    Kept,

    /// <summary>It is right, but such a day should not count: it stays in the log and in its job, and nothing is learned from it.</summary>
    Unusual,
}
