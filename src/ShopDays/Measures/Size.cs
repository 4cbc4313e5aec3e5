namespace ShopDays.Measures;

/// <summary>The size of a board or part: length along the grain, width across it, thickness.</summary>
/// <remarks><c>default</c> is no size at all (zeros); every other one is above zero in all three.</remarks>
public readonly record struct Size
{
    /// <summary>Makes a size.</summary>
    /// <param name="length">Along the grain, above zero.</param>
    /// <param name="width">Across the grain, above zero.</param>
    /// <param name="thickness">Above zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">One of the three is zero or below.</exception>
    public Size(Length length, Length width, Length thickness)
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(length, Length.Zero);
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(width, Length.Zero);
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(thickness, Length.Zero);
        (Length, Width, Thickness) = (length, width, thickness);
    }

    /// <summary>Along the grain.</summary>
    public Length Length { get; }

    /// <summary>Across the grain.</summary>
    public Length Width { get; }

    /// <summary>From face to face.</summary>
    public Length Thickness { get; }

    /// <summary>The area of one face.</summary>
    public Area Face => Length * Width;

    /// <summary>The volume; <see cref="Volume.BoardFeet"/> is how timber is bought.</summary>
    public Volume Volume => Face * Thickness;

    /// <summary>The size in millimetres, for logs and failing tests.</summary>
    public override string ToString() => FormattableString.Invariant($"{Length.Millimetres:0.###} x {Width.Millimetres:0.###} x {Thickness.Millimetres:0.###} mm");
}
