using NodaTime;
using NodaTime.Text;
using ShopDays.Days;

namespace ShopDays.Plans;

/// <summary>Hours of a date that the shop has promised to something else, and that are in the way.</summary>
internal sealed class PromisedHours(PlanRequest request)
{
    /// <summary>The first appointment of a date without which something can be done; else all of them, when that does; none when they are not in the way.</summary>
    /// <param name="date">The date.</param>
    /// <param name="canBeDone">Whether it can be done in a shop that is otherwise the same.</param>
    public IReadOnlyList<Appointment> InTheWay(LocalDate date, Func<PlanRequest, bool> canBeDone)
    {
        List<Appointment> all = [.. request.Calendars.SelectMany(calendar => calendar.Appointments).Where(one => one.On == date).Distinct()];
        if (all.Count == 0 || !canBeDone(Without(all)))
        {
            return [];
        }

        // One after the other is put back: what can stay is not in the way.
        foreach (var one in all.ToList())
        {
            List<Appointment> others = [.. all.Where(other => other != one)];
            all = canBeDone(Without(others)) ? others : all;
        }

        return all;
    }

    /// <summary>What they do.</summary>
    public static string Take(IReadOnlyList<Appointment> promised) => promised.Count == 1
        ? $"the appointment {Words(promised[0])} takes that time"
        : $"the appointments {string.Join(" and ", promised.Select(Words))} take that time";

    /// <summary>What can be done about them.</summary>
    public static string Move(IReadOnlyList<Appointment> promised) => $"move {string.Join(" and ", promised.Select(one => $"'{one.Name}' of {LocalDatePattern.Iso.Format(one.On)}"))} to another date";

    private static string Words(Appointment one) => $"'{one.Name}' on {LocalDatePattern.Iso.Format(one.On)}, {one.Hours},";

    /// <summary>The shop without some of its appointments.</summary>
    public PlanRequest Without(IReadOnlyList<Appointment> some) => request with
    {
        Calendars = [.. request.Calendars.Select(calendar => calendar with { Appointments = [.. calendar.Appointments.Where(one => !some.Contains(one))] })],
    };
}
