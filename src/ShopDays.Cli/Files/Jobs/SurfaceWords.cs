using ShopDays.Parts;

namespace ShopDays.Cli.Files.Jobs;

/// <summary>The surfaces of a part and how far they are taken, by their words in a job file.</summary>
internal static class SurfaceWords
{
    /// <summary>The surfaces.</summary>
    public static (string Word, PartSurface Surface)[] Surfaces { get; } =
        [("face", PartSurface.Face), ("inside", PartSurface.Inside), ("under", PartSurface.Under), ("edge", PartSurface.Edge)];

    /// <summary>The standards, the roughest first.</summary>
    public static (string Word, SurfaceStandard Standard)[] Standards { get; } =
    [
        ("rough", SurfaceStandard.Rough),
        ("scrub", SurfaceStandard.Scrub),
        ("jack", SurfaceStandard.Jack),
        ("tried", SurfaceStandard.Tried),
        ("smoothed", SurfaceStandard.Smoothed),
    ];

    /// <summary>The word of a surface.</summary>
    public static string Of(PartSurface surface) => Surfaces.First(one => one.Surface == surface).Word;

    /// <summary>The word of a standard.</summary>
    public static string Of(SurfaceStandard standard) => Standards.First(one => one.Standard == standard).Word;
}
