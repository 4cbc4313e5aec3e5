using System.Collections.Immutable;
using NodaTime;

namespace ShopDays.Days;

/// <summary>One date of one worker's calendar.</summary>
/// <param name="Date">The date.</param>
/// <param name="Sessions">Its sessions, in order, apart from each other.</param>
/// <param name="Unused">Its hours that gave no session, in order.</param>
public sealed record ShopDay(LocalDate Date, ImmutableArray<Session> Sessions, ImmutableArray<UnusedHours> Unused);
