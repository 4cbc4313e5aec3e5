using ShopDays.Measures;
using ShopDays.Parts;

namespace ShopDays.Layouts;

/// <summary>How long one kind of cut takes: a time for each cut and a time for each length or area of it.</summary>
/// <param name="Setup">Lining up, lifting, holding: once a cut.</param>
/// <param name="PerMetre">Cutting time for a metre of cut 25.4 mm thick in timber of 1,000 lbf, rest included.</param>
/// <param name="ThicknessExponent">How the time grows with thickness, about 1.1 for ripping.</param>
/// <param name="HardnessExponent">How the time grows with hardness, about 0.5.</param>
public sealed record CutRate(WorkTime Setup, WorkTime PerMetre, double ThicknessExponent, double HardnessExponent)
{
    /// <summary>The hands-on time of one cut.</summary>
    /// <param name="length">How long the cut is.</param>
    /// <param name="thickness">How thick the stock is; for resawing, how wide the piece.</param>
    /// <param name="species">The timber.</param>
    public WorkTime TimeFor(Length length, Length thickness, Species species) =>
        Setup + (PerMetre * (length.Millimetres / 1000 * Math.Pow(thickness.Inches, ThicknessExponent)
            * Math.Pow(species.HardnessPoundsForce / 1000, HardnessExponent)));
}

/// <summary>How long one way of planing takes.</summary>
/// <param name="PerSquareMetre">Time for a square metre, 1/8 in off, in timber of 1,000 lbf.</param>
/// <param name="DepthExponent">How the time grows with the depth taken off.</param>
/// <param name="HardnessExponent">How the time grows with hardness.</param>
public sealed record PlaneRate(WorkTime PerSquareMetre, double DepthExponent, double HardnessExponent)
{
    /// <summary>The hands-on time of one face; none when nothing comes off.</summary>
    public WorkTime TimeFor(Area face, Length depth, Species species) => depth <= Length.Zero
        ? WorkTime.Zero
        : PerSquareMetre * (face.SquareMillimetres / 1e6 * Math.Pow(depth.Inches / 0.125, DepthExponent)
            * Math.Pow(species.HardnessPoundsForce / 1000, HardnessExponent));
}

/// <summary>
/// The shop's own rates for what a layout decides, handed in by the caller: rates are learned later in the chain.
/// </summary>
public sealed record SawingRates
{
    /// <summary>Straightening a live or rough edge.</summary>
    public required CutRate Straighten { get; init; }

    /// <summary>Ripping.</summary>
    public required CutRate Rip { get; init; }

    /// <summary>Crosscutting to rough length.</summary>
    public required CutRate Crosscut { get; init; }

    /// <summary>Resawing, where the thickness is the width of the piece.</summary>
    public required CutRate Resaw { get; init; }

    /// <summary>Bringing the second face to thickness: what planing down costs instead of resawing.</summary>
    public required PlaneRate PlaneDown { get; init; }

    /// <summary>What an hour of the shop is worth, in the currency of the boards' prices; null when the shop does not say.</summary>
    public required Money? HourlyRate { get; init; }

    /// <summary>The rate of a kind of cut.</summary>
    public CutRate For(CutKind kind) => kind switch
    {
        CutKind.Straighten => Straighten,
        CutKind.Rip => Rip,
        CutKind.Crosscut => Crosscut,
        CutKind.Resaw => Resaw,
        _ => throw new System.Diagnostics.UnreachableException(),
    };
}
