using NodaTime;
using ShopDays.Days;
using ShopDays.Plans.Scheduling;

namespace ShopDays.Plans;

/// <summary>Looks for the least that quiet hours would have to end earlier or begin later for noisy work, and tries it in the very calendars.</summary>
internal sealed class ShorterQuiet(PlanRequest request, OpenHours hours, ScheduleProblem problem)
{
    /// <summary>The least less of quiet with which a noisy task fits into some session.</summary>
    /// <param name="task">The task; its cap on heavy work is not looked at.</param>
    /// <param name="minutes">How long it takes in one go.</param>
    /// <returns>The words of the shop's file, and the problem with them; null where no hours of quiet that are a little shorter are enough.</returns>
    public (string Words, ScheduleProblem Problem)? For(CompiledTask task, int minutes) =>
        For(other => new LongestStretches(other).For(task with { IsHeavy = false }) >= minutes);

    /// <summary>The least less of quiet with which something holds.</summary>
    /// <param name="holds">Whether it holds in a problem with other hours.</param>
    /// <returns>The words of the shop's file, and the problem with them; null where no hours of quiet that are a little shorter are enough.</returns>
    public (string Words, ScheduleProblem Problem)? For(Func<ScheduleProblem, bool> holds)
    {
        (int Less, DayHours Now, DayHours Shorter)? best = null;
        foreach (var now in request.Calendars.SelectMany(calendar => calendar.Quiet.Hours).Distinct())
        {
            foreach (var endsEarlier in new[] { true, false })
            {
                if (Least(LengthOf(now) - 1, less => holds(With(now, Shorter(now, less, endsEarlier)))) is { } least && (best is null || least < best.Value.Less))
                {
                    best = (least, now, Shorter(now, least, endsEarlier));
                }
            }
        }

        return best is var (_, quiet, shorter) ? ($"'quiet' of \"{shorter}\" instead of \"{quiet}\"", With(quiet, shorter)) : null;
    }

    private static int? Least(int most, Func<int, bool> isEnough)
    {
        if (most < 1 || !isEnough(most))
        {
            return null;
        }

        var (tooLittle, enough) = (0, most);
        while (enough - tooLittle > 1)
        {
            var middle = (tooLittle + enough) / 2;
            (tooLittle, enough) = isEnough(middle) ? (tooLittle, middle) : (middle, enough);
        }

        return enough;
    }

    private ScheduleProblem With(DayHours quiet, DayHours shorter) => Changed.Workers(problem, [.. hours.Sessions.Select((sessions, worker) =>
    {
        var other = new QuietHours(request.Calendars[worker].Quiet.Hours.Select(one => one == quiet ? shorter : one));
        return CompiledCalendar.Of([.. sessions.Select(session => session.With(other))], hours.Origin, hours.First, hours.Begin);
    })]);

    private static DayHours Shorter(DayHours quiet, int less, bool endsEarlier) =>
        endsEarlier ? DayHours.Between(quiet.From, quiet.To.PlusMinutes(-less)) : DayHours.Between(quiet.From.PlusMinutes(less), quiet.To);

    private static int LengthOf(DayHours quiet)
    {
        var minutes = (int)Period.Between(quiet.From, quiet.To, PeriodUnits.Minutes).Minutes;
        return minutes > 0 ? minutes : minutes + HoursMinutes.Day;
    }
}
