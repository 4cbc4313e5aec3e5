namespace ShopDays.Plans.Bounds;

/// <summary>Something that a bound rests on.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Task">The task whose date it is; below 0 for all else.</param>
/// <param name="Without">The bound if it were not for this.</param>
internal readonly record struct BoundTie(BoundKind Kind, int Task, int Without);
