using NodaTime;

namespace ShopDays.Plans;

/// <summary>How far the search for a plan has come.</summary>
/// <param name="Schedules">Schedules looked at so far.</param>
/// <param name="Finish">The finish of the best plan so far; of several orders the mean of their finishes, each counted with its priority.</param>
/// <param name="ShopDays">Its days on which somebody works.</param>
public sealed record SearchStep(int Schedules, ZonedDateTime Finish, int ShopDays);
