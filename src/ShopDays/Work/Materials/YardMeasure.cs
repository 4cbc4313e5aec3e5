using ShopDays.Measures;

namespace ShopDays.Work.Materials;

/// <summary>Timber as a yard measures it.</summary>
public static class YardMeasure
{
    /// <summary>Boards thinner than this are counted as if they were so thick where timber is sold by the board foot (common practice, no source).</summary>
    public static Length LeastThickness { get; } = Length.FromInches(1m);

    /// <summary>What is paid for: by the board foot thickness counts as rough and at least an inch, by the cubic metre as it is.</summary>
    /// <param name="length">Along the grain.</param>
    /// <param name="width">Across it.</param>
    /// <param name="thickness">Rough.</param>
    /// <param name="byBoardFeet">Whether it is sold by the board foot.</param>
    public static Volume Of(Length length, Length width, Length thickness, bool byBoardFeet) =>
        length * width * (byBoardFeet ? Length.Max(thickness, LeastThickness) : thickness);
}
