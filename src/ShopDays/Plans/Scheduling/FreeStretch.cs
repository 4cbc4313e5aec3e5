namespace ShopDays.Plans.Scheduling;

/// <summary>A stretch of one worker's free time, and where it was found.</summary>
/// <param name="From">The first minute.</param>
/// <param name="To">The end.</param>
/// <param name="Session">The session.</param>
/// <param name="Gap">The gap it lies in.</param>
/// <param name="Previous">The gap before that in its session; below 0 none.</param>
internal record struct FreeStretch(int From, int To, int Session, int Gap, int Previous);
