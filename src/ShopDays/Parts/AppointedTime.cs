using NodaTime;

namespace ShopDays.Parts;

/// <summary>A time that is agreed on with somebody else.</summary>
/// <param name="On">The date.</param>
/// <param name="At">The time of day at which work begins, by the shop's clock; null for any time of that date.</param>
public readonly record struct AppointedTime(LocalDate On, LocalTime? At = null);
