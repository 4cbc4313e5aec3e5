using NodaTime;

namespace ShopDays.Days;

/// <summary>Hours of one date that are promised to something else than the bench: a delivery, a client, the saw doctor.</summary>
/// <param name="Name">What it is.</param>
/// <param name="On">The date.</param>
/// <param name="Hours">When, by the shop's clock, the end not included.</param>
public sealed record Appointment(string Name, LocalDate On, DayHours Hours);
