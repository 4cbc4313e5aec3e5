using ShopDays.Measures;

namespace ShopDays.Layouts;

/// <summary>A rectangle in a board's own frame: x along the grain from the reference end, y across from the reference edge.</summary>
/// <param name="X">Its nearer end.</param>
/// <param name="Y">Its nearer edge.</param>
/// <param name="Length">How far it goes along the grain.</param>
/// <param name="Width">How far it goes across the grain.</param>
public readonly record struct Region(Length X, Length Y, Length Length, Length Width)
{
    /// <summary>Its farther end.</summary>
    public Length Right => X + Length;

    /// <summary>Its farther edge.</summary>
    public Length Top => Y + Width;

    /// <summary>Its area.</summary>
    public Area Area => Length * Width;

    /// <summary>Whether two share more than an edge.</summary>
    public bool Overlaps(Region other) => X < other.Right && other.X < Right && Y < other.Top && other.Y < Top;

    /// <summary>Whether another lies wholly in it, edges included.</summary>
    public bool Holds(Region other) => other.X >= X && other.Y >= Y && other.Right <= Right && other.Top <= Top;
}
