using System.Collections.Immutable;
using ShopDays.Plans.Scheduling;

namespace ShopDays.Plans.Bounds;

/// <summary>Why no plan can finish before a minute.</summary>
/// <param name="Kind">What binds.</param>
/// <param name="Tasks">The row of tasks, or all those that share what there is too little of.</param>
/// <param name="From">The first minute in which any of them can begin.</param>
/// <param name="To">The minute by which they would have to be done to finish sooner.</param>
/// <param name="Needed">What they take: minutes of work, or of things in use; for a row of tasks its clock time.</param>
/// <param name="There">What there is between the two, in the same.</param>
/// <param name="IsBehind">Whether they come after other work, and the minutes are the last that will do; otherwise the first.</param>
internal sealed record BoundCause(BoundKind Kind, ImmutableArray<int> Tasks, int From, int To, long Needed, long There, bool IsBehind = false);

/// <summary>A minute before which no plan can finish.</summary>
/// <param name="Minute">The minute, or <see cref="CompiledCalendar.Never"/> when the calendars end before.</param>
/// <param name="Cause">What binds.</param>
internal readonly record struct Bound(int Minute, BoundCause Cause)
{
    /// <summary>What kind of thing binds.</summary>
    public BoundKind Kind => Cause.Kind;
}
