namespace ShopDays.Layouts;

/// <summary>How hard a layout is searched for, by counts and never by the clock, so that a seed gives one answer.</summary>
public enum LayoutEffort
{
    /// <summary>A decent answer at once.</summary>
    Quick,

    /// <summary>The usual.</summary>
    Normal,

    /// <summary>Many times the usual, for costly timber.</summary>
    Thorough,
}
