using NodaTime;
using ShopDays.Cli.Calendars;
using Xunit;

namespace ShopDays.Cli.Tests.Calendars;

[Trait("Source", "RFC 5545 (B. Desruisseaux, 2009), sections 3.3.4, 3.3.5, 3.3.14 and 3.6.5; offsets as the operating system's zone tables have them")]
public sealed class CalendarTimeTests
{
    /// <summary>3.3.5, form 3: a local time with the zone it is in.</summary>
    [Fact]
    public void A_time_is_the_clocks_time_with_its_zone() =>
        Assert.Equal("DTSTART;TZID=Europe/London:20270329T090000", CalendarTime.Line("DTSTART", At("Europe/London", 2027, 3, 29, 8, 0)));

    /// <summary>3.3.5: a time that occurs twice "refers to the first occurrence": the second one can only be said in universal time.</summary>
    [Theory]
    [InlineData("Europe/London", 2027, 10, 31, 0, 30, "DTSTART;TZID=Europe/London:20271031T013000")]
    [InlineData("Europe/London", 2027, 10, 31, 1, 30, "DTSTART:20271031T013000Z")]
    [InlineData("Pacific/Auckland", 2027, 4, 3, 13, 30, "DTSTART;TZID=Pacific/Auckland:20270404T023000")]
    [InlineData("Pacific/Auckland", 2027, 4, 3, 14, 30, "DTSTART:20270403T143000Z")]
    public void The_second_of_two_like_times_is_in_universal_time(string zone, int year, int month, int day, int hour, int minute, string line)
    {
        var time = At(zone, year, month, day, hour, minute);
        Assert.Equal(line, CalendarTime.Line("DTSTART", time));
        Assert.Equal(time.ToInstant(), CalendarTime.Of(line));
    }

    /// <summary>3.3.4: a date by itself has to say that it is one.</summary>
    [Fact]
    public void A_whole_day_is_a_date() => Assert.Equal("DTSTART;VALUE=DATE:20270724", CalendarTime.Line("DTSTART", new LocalDate(2027, 7, 24)));

    /// <summary>3.6.5: the observance with the latest onset not after a moment says its offset; onsets are local times by the offset before them.</summary>
    [Theory]
    [InlineData("Europe/London")]
    [InlineData("Pacific/Auckland")]
    [InlineData("America/New_York")]
    [InlineData("Australia/Lord_Howe")]
    [InlineData("America/Phoenix")]
    [InlineData("Asia/Kathmandu")]
    [InlineData("Europe/Dublin")]
    public void A_zones_rules_give_the_offsets_of_every_hour_in_their_time(string zone)
    {
        if (!TimeZoneInfo.TryFindSystemTimeZoneById(zone, out var known))
        {
            Assert.Skip("this machine has no zone tables");
        }

        var (from, until) = (Instant.FromUtc(2027, 1, 15, 0, 0), Instant.FromUtc(2028, 5, 15, 0, 0));
        var onsets = Observances([.. ZoneRules.Lines(DateTimeZoneProviders.Tzdb[zone], from, until)]);
        for (var moment = from; moment < until; moment += Duration.FromHours(1))
        {
            var offset = onsets.Where(one => one.Onset <= moment.ToDateTimeUtc()).MaxBy(one => one.Onset).Offset;
            Assert.Equal(known.GetUtcOffset(moment.ToDateTimeUtc()), offset);
        }
    }

    /// <summary>3.6.5: a zone has at least one STANDARD or DAYLIGHT, each with DTSTART, TZOFFSETFROM and TZOFFSETTO once.</summary>
    private static List<(DateTime Onset, TimeSpan Offset)> Observances(string[] lines)
    {
        Assert.StartsWith("TZID:", lines[1], StringComparison.Ordinal);
        List<(DateTime Onset, TimeSpan Offset)> all = [];
        for (var at = Array.FindIndex(lines, line => line is "BEGIN:STANDARD" or "BEGIN:DAYLIGHT"); lines[at] != "END:VTIMEZONE";)
        {
            var kind = lines[at]["BEGIN:".Length..];
            var one = lines.Skip(at + 1).TakeWhile(line => line != $"END:{kind}").Select(line => line.Split(':', 2)).ToDictionary(pair => pair[0], pair => pair[1]);
            var begins = DateTime.ParseExact(one["DTSTART"], "yyyyMMdd'T'HHmmss", System.Globalization.CultureInfo.InvariantCulture);
            all.Add((begins - OffsetOf(one["TZOFFSETFROM"]), OffsetOf(one["TZOFFSETTO"])));
            at += one.Count + 2;
        }

        Assert.NotEmpty(all);
        return all;
    }

    /// <summary>3.3.14: a sign, hours, minutes, and seconds where there are some.</summary>
    private static TimeSpan OffsetOf(string text)
    {
        Assert.Matches("^[+-][0-9]{4}([0-9]{2})?$", text);
        var size = TimeSpan.ParseExact(text[1..], text.Length == 5 ? "hhmm" : "hhmmss", System.Globalization.CultureInfo.InvariantCulture);
        return text[0] == '-' ? -size : size;
    }

    private static ZonedDateTime At(string zone, int year, int month, int day, int hour, int minute) => Instant.FromUtc(year, month, day, hour, minute).InZone(DateTimeZoneProviders.Tzdb[zone]);
}
