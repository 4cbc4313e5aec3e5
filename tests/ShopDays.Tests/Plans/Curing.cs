using System.Globalization;
using System.Text.RegularExpressions;
using NodaTime;
using ShopDays.Days;
using ShopDays.Measures;
using ShopDays.Parts;
using ShopDays.Plans;

namespace ShopDays.Tests.Plans;

/// <summary>Does what a cure says, by the very figures in its words, as a maker would write them into the shop's file.</summary>
internal static partial class Curing
{
    /// <summary>The shop with the cure, or with one step less of it: a minute, a clamp.</summary>
    /// <param name="request">What could not be planned.</param>
    /// <param name="cure">The words.</param>
    /// <param name="less">How many steps less.</param>
    public static PlanRequest Cured(this PlanRequest request, string cure, int less = 0)
    {
        var done = 0;
        foreach (Match one in Hours().Matches(cure))
        {
            done++;
            request = WithHours(request, one, less);
        }

        foreach (Match one in Heavy().Matches(cure))
        {
            done++;
            var cap = Time(one.Groups["time"].Value, less);
            request = request with { Limits = one.Groups["place"].Value.Split(" and as ").Aggregate(request.Limits, (limits, place) => WithCap(limits, place, cap)) };
        }

        foreach (Match one in Clamps().Matches(cure))
        {
            done++;
            var more = Number(one, "count") - less;
            request = request with { Limits = request.Limits with { Clamps = [.. request.Limits.Clamps!, .. Enumerable.Repeat(new ClampsHeld(Length.FromMillimetres((decimal)Number(one, "reach")), more), more > 0 ? 1 : 0)] } };
        }

        foreach (Match one in Moves().Matches(cure))
        {
            done++;
            request = less > 0 ? request : ForAll(request, calendar => calendar with { Appointments = [.. calendar.Appointments.Where(other => other.Name != one.Groups["name"].Value || other.On != Shops(one.Groups["date"].Value))] });
        }

        foreach (Match one in Least().Matches(cure))
        {
            done++;
            request = ForAll(request, calendar => calendar with { LeastUseful = WorkTime.FromMinutes(Time(one.Groups["time"].Value, -less).Minutes) });
        }

        foreach (Match one in ShorterQuiet().Matches(cure))
        {
            done++;
            request = ForAll(request, calendar => calendar with { Quiet = Shortened(calendar.Quiet, one, less) });
        }

        return done > 0 ? request : throw new InvalidOperationException($"there is nothing to do in: {cure}");
    }

    /// <summary>Hours as said; one step less is five minutes less at an end that is not there yet.</summary>
    private static PlanRequest WithHours(PlanRequest request, Match said, int steps)
    {
        var less = 5 * steps;
        var (from, to) = (Minute(said.Groups["from"].Value), Minute(said.Groups["to"].Value));
        var who = said.Groups["all"] is { Success: true, Value: var all } ? all.Split([", and ", ", ", " and "], StringSplitOptions.None)
            : said.Groups["one"] is { Success: true, Value: var one } ? new[] { one }
            : new[] { request.Calendars[0].Worker };
        var day = said.Groups["day"].Value;
        var team = request.Calendars.Where(calendar => who.Contains(calendar.Worker)).ToList();
        var isThere = team.TrueForAll(calendar => HoursOf(calendar, day).Items.Any(hours => Covers(hours, to - 1)));
        var wasThere = team.TrueForAll(calendar => HoursOf(calendar, day).Items.Any(hours => Covers(hours, from)));
        if (isThere && wasThere && less > 0)
        {
            // They begin and end with hours that there are: it is what lies between that is a minute less.
            to = team.Max(calendar => Enumerable.Range(from, to - from).Last(minute => !HoursOf(calendar, day).Items.Any(hours => Covers(hours, minute))));
        }
        else
        {
            (from, to) = isThere ? (from + less, to) : (from, to - less);
        }

        return ForAll(request, calendar => !who.Contains(calendar.Worker) || from >= to ? calendar
            : calendar with
            {
                Week = DayOfWeek(day) is { } weekday ? new(Enum.GetValues<IsoDayOfWeek>().Skip(1).ToDictionary(one => one, one => one == weekday ? With(calendar.Week[one], from, to) : calendar.Week[one])) : calendar.Week,
                Extra = DayOfWeek(day) is null ? calendar.Extra.With(new(new Dictionary<LocalDate, ShopHours> { [Shops(day)] = With(HoursOf(calendar, day), from, to) })) : calendar.Extra,
            });
    }

    /// <summary>Quiet without the minutes that are said to be loud, found one by one; one step less leaves the one of them quiet that touches the rest.</summary>
    private static QuietHours Shortened(QuietHours quiet, Match said, int less)
    {
        var (from, to, oldFrom, oldTo) = (Minute(said.Groups["from"].Value), Minute(said.Groups["to"].Value), Minute(said.Groups["oldfrom"].Value), Minute(said.Groups["oldto"].Value));
        var (first, end) = from == oldFrom ? (to + less, oldTo) : (oldFrom, from - less);
        var loud = Enumerable.Range(first, (end - first + 1440) % 1440).Select(minute => minute % 1440).ToHashSet();
        var still = Enumerable.Range(0, 1440).Where(minute => !loud.Contains(minute) && quiet.Hours.Any(one => IsIn(one, minute))).ToHashSet();
        return new(still.Where(minute => !still.Contains(minute - 1)).Order().Select(begin => DayHours.Read($"{Clock(begin)}-{Clock(Enumerable.Range(begin, 1441).First(minute => !still.Contains(minute)))}").Value));
    }

    private static bool IsIn(DayHours hours, int minute) => Minute(hours.ToString()[..5]) is var from && Minute(hours.ToString()[6..]) is var to && from < to
        ? from <= minute && minute < to
        : from <= minute || minute < to;

    private static ShopHours HoursOf(WorkingCalendar calendar, string day) => DayOfWeek(day) is { } weekday
        ? calendar.Week[weekday]
        : calendar.Extra.On(Shops(day)) ?? (calendar.Closed.Contains(Shops(day)) ? ShopHours.None : calendar.Week[Shops(day).DayOfWeek]);

    private static ShopHours With(ShopHours hours, int from, int to)
    {
        // Minute by minute, so that it owes nothing to how the program puts hours together.
        var open = Enumerable.Range(0, 1440).Where(minute => (from <= minute && minute < to) || hours.Items.Any(one => Covers(one, minute))).ToHashSet();
        var begins = open.Where(minute => !open.Contains(minute - 1)).Order();
        return new(begins.Select(begin => DayHours.Read($"{Clock(begin)}-{Clock(Enumerable.Range(begin, 1441).First(minute => !open.Contains(minute)))}").Value));
    }

    private static bool Covers(DayHours hours, int minute) => Minute(hours.ToString()[..5]) <= minute && minute < Minute(hours.ToString()[6..]);

    private static ShopLimits WithCap(ShopLimits limits, string place, WorkTime cap) => place.StartsWith("'heavy-per-day' of ", StringComparison.Ordinal)
        ? limits with { HeavyOf = new Dictionary<string, WorkTime>(limits.HeavyOf) { [place["'heavy-per-day' of ".Length..place.IndexOf(" under", StringComparison.Ordinal)]] = cap } }
        : limits with { HeavyPerDay = cap };

    private static PlanRequest ForAll(PlanRequest request, Func<WorkingCalendar, WorkingCalendar> change) => request with { Calendars = [.. request.Calendars.Select(change)] };

    private static WorkTime Time(string text, int less) => WorkTime.FromMinutes(WorkTimeText.Read(text).Value.Minutes - less);

    private static int Number(Match match, string group) => int.Parse(match.Groups[group].Value, CultureInfo.InvariantCulture);

    private static int Minute(string time) => (int.Parse(time[..2], CultureInfo.InvariantCulture) * 60) + int.Parse(time[3..], CultureInfo.InvariantCulture);

    private static string Clock(int minute) => FormattableString.Invariant($"{minute / 60:00}:{minute % 60:00}");

    private static LocalDate Shops(string date) => DateText.Read(date).Value;

    private static IsoDayOfWeek? DayOfWeek(string day) => Enum.TryParse<IsoDayOfWeek>(day.TrimEnd('s'), out var weekday) ? weekday : null;

    [GeneratedRegex(@"((?<all>[^;]+?) (both|all) there|hours( of (?<one>\S+))?) from (?<from>\d\d:\d\d) to (?<to>\d\d:\d\d) on (?<day>[A-Z][a-z]+s|\d{4}-\d\d-\d\d)", RegexOptions.ExplicitCapture)]
    private static partial Regex Hours();

    [GeneratedRegex(@"(?<time>(\d+ h )?\d+ (h|min)) as (?<place>'heavy-per-day'( of \S+)? under '\w+'( and as 'heavy-per-day'( of \S+)? under '\w+')*)", RegexOptions.ExplicitCapture)]
    private static partial Regex Heavy();

    [GeneratedRegex(@"(?<count>\d+) more clamps? of (?<reach>\d+) mm", RegexOptions.ExplicitCapture)]
    private static partial Regex Clamps();

    [GeneratedRegex(@"'(?<name>[^']+)' of (?<date>\d{4}-\d\d-\d\d)", RegexOptions.ExplicitCapture)]
    private static partial Regex Moves();

    [GeneratedRegex("'quiet' of \"(?<from>\\d\\d:\\d\\d)-(?<to>\\d\\d:\\d\\d)\" instead of \"(?<oldfrom>\\d\\d:\\d\\d)-(?<oldto>\\d\\d:\\d\\d)\"", RegexOptions.ExplicitCapture)]
    private static partial Regex ShorterQuiet();

    [GeneratedRegex(@"a 'least-session' of (?<time>(\d+ h )?\d+ (h|min))", RegexOptions.ExplicitCapture)]
    private static partial Regex Least();
}
