namespace ShopDays.Logbook;

/// <summary>What made a time longer than it should have been, in the maker's own judgement.</summary>
public enum Setback
{
    /// <summary>Nothing out of the way.</summary>
    None,

    /// <summary>The edge or the saw was dull.</summary>
    DullEdge,

    /// <summary>The grain tore out.</summary>
    TearOut,

    /// <summary>Somebody or something interrupted.</summary>
    Interrupted,

    /// <summary>The shop was too cold.</summary>
    Cold,

    /// <summary>It was the first of its kind.</summary>
    FirstOfItsKind,

    /// <summary>A piece was spoiled.</summary>
    Spoiled,
}
