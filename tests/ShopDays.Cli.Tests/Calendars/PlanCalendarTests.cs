using System.Text;
using NodaTime;
using ShopDays.Cli.Tests.Commands;
using ShopDays.Cli.Tests.Running;
using Xunit;

namespace ShopDays.Cli.Tests.Calendars;

[Trait("Source", "RFC 5545 (B. Desruisseaux, 2009), the sections named beside the checks; read back by Ical.Net")]
public sealed class PlanCalendarTests
{
    private static readonly Instant Before = Instant.FromUtc(2027, 3, 1, 9, 0);
    private static readonly Instant Later = Instant.FromUtc(2027, 3, 2, 9, 0);

    public static TheoryData<string> Zones => ["Europe/London", "Pacific/Auckland"];

    [Theory]
    [MemberData(nameof(Zones))]
    public void Every_session_stands_at_its_moment_on_both_sides_of_a_clock_change(string zone)
    {
        using var job = AnOldCalendar.In(zone);
        var sessions = job.Plan(Before).List("sessions");
        var events = job.Events().Where(one => one.DtEnd is { HasTime: true }).ToList();
        Assert.Equal(sessions.Select(one => (one.Instant("start"), one.Instant("end"))).Order(), events.Select(one => (Moment(one.DtStart), Moment(one.DtEnd))).Order());
        Assert.Equal(2, sessions.Select(one => job.Zone.GetUtcOffset(one.Instant("start"))).Distinct().Count());

        // 3.3.5: the clock of the shop, with its zone, which 3.2.19 wants described in the same file.
        Assert.All(events, one => Assert.Equal(zone, one.DtStart!.TzId));
        Assert.Single(job.Lines(), $"TZID:{zone}");
    }

    [Theory]
    [MemberData(nameof(Zones))]
    public void A_session_says_what_is_done_in_it_with_marks_and_minutes(string zone)
    {
        using var job = AnOldCalendar.In(zone);
        foreach (var session in job.Plan(Before).List("sessions"))
        {
            var one = job.Events().Single(one => one.DtEnd is { HasTime: true } && Moment(one.DtStart) == session.Instant("start"));
            var tasks = session.List("tasks").OrderBy(task => task.Instant("start")).ToList();
            var lines = one.Description!.Split('\n');
            Assert.Equal(tasks.Count, lines.Length);
            Assert.All(tasks.Zip(lines), pair => Assert.StartsWith($"{pair.First.Time("start").ToString("HH:mm", null)} {pair.First.Text("mark")} {pair.First.Text("task")}, ", pair.Second, StringComparison.Ordinal));
            Assert.InRange(one.Summary!.Length, 5, 90);
        }
    }

    /// <summary>3.6 and 3.6.1: what an object and an event must have, and once; 3.8.4.7: one UID for each; 3.7.2: no METHOD.</summary>
    [Theory]
    [MemberData(nameof(Zones))]
    public void The_file_has_what_a_calendar_must_have(string zone)
    {
        using var job = AnOldCalendar.In(zone);
        job.Plan(Before);
        var lines = job.Lines();
        Assert.Equal(("BEGIN:VCALENDAR", "END:VCALENDAR"), (lines[0], lines[^1]));
        Assert.Single(lines, "VERSION:2.0");
        Assert.Single(lines, line => line.StartsWith("PRODID:", StringComparison.Ordinal));
        Assert.DoesNotContain(lines, line => line.StartsWith("METHOD", StringComparison.Ordinal));
        Assert.Equal(lines.Count(line => line == "BEGIN:VEVENT"), lines.Where(line => line.StartsWith("UID:", StringComparison.Ordinal)).Distinct().Count());
        foreach (var one in Components(lines, "VEVENT"))
        {
            foreach (var name in (string[])["UID", "DTSTAMP", "DTSTART", "SUMMARY", "SEQUENCE", "STATUS"])
            {
                Assert.Single(one, line => line.Split(':', ';')[0] == name);
            }

            // 3.8.7.2: the stamp is in universal time.
            Assert.Contains("DTSTAMP:20270301T090000Z", one);
        }
    }

    /// <summary>3.6.6: an alarm that is shown has an action, a trigger and a description, each once.</summary>
    [Theory]
    [MemberData(nameof(Zones))]
    public void Clamps_and_coats_have_a_reminder_when_their_wait_is_over(string zone)
    {
        using var job = AnOldCalendar.In(zone);
        var waits = job.Plan(Before).List("waits").Select(wait => wait.Instant("end")).ToList();
        var reminders = job.Events().Where(one => one.Alarms.Count > 0).ToList();
        Assert.Contains(reminders, one => one.Summary!.Contains("take the clamps off", StringComparison.Ordinal));
        Assert.Contains(reminders, one => one.Summary!.Contains("dry, ready for what comes next", StringComparison.Ordinal));
        Assert.Contains(reminders, one => one.Summary!.Contains("hard enough for light use", StringComparison.Ordinal));
        foreach (var one in reminders)
        {
            // At the end of a wait, or at seven in the morning after one that ends at night.
            var at = Moment(one.DtStart);
            Assert.True(waits.Contains(at) || (at.InZone(job.Zone).TimeOfDay == new LocalTime(7, 0) && waits.Exists(wait => wait < at && at - wait <= Duration.FromHours(10))), one.Summary);
            Assert.Equal("TRANSPARENT", one.Transparency);
        }

        Assert.All(Components(job.Lines(), "VALARM"), alarm => Assert.Equal(["ACTION", "DESCRIPTION", "TRIGGER"], alarm.Select(line => line.Split(':', ';')[0]).Order(StringComparer.Ordinal)));
    }

    /// <summary>3.6.1: an event of whole days ends with the date after its last, which is not part of it (3.8.2.2).</summary>
    [Fact]
    public void The_dates_of_the_job_are_whole_days()
    {
        using var job = AnOldCalendar.In("Europe/London");
        var p80 = job.Plan(Before).Field("finish").Time("p80").Date;
        var days = job.Events().Where(one => one.IsAllDay).ToDictionary(one => one.Summary!, one => (one.DtStart!.Value, one.DtEnd!.Value));
        Assert.Equal((p80.ToDateTimeUnspecified(), p80.PlusDays(1).ToDateTimeUnspecified()), days["Tray: could be promised (four courses in five keep it)"]);
        Assert.Equal((new DateTime(2027, 4, 30), new DateTime(2027, 5, 1)), days["Tray: due"]);
    }

    [Theory]
    [MemberData(nameof(Zones))]
    public void The_same_plan_a_day_later_leaves_the_file_as_it_is(string zone)
    {
        using var job = AnOldCalendar.In(zone);
        job.Plan(Before);
        var first = job.Bytes();
        job.Plan(Later);
        Assert.Equal(first, job.Bytes());
    }

    /// <summary>3.8.4.7 and 3.8.7.4: an event is known by its UID, and the greater sequence goes before the lesser.</summary>
    [Fact]
    public void A_new_plan_moves_the_old_events_of_a_calendar_that_imports_both()
    {
        using var job = AnOldCalendar.In("Europe/London");
        job.Plan(Before);
        var calendar = job.Events().ToDictionary(one => one.Uid!);
        job.Change("start: 2027-03-22", "start: 2027-03-29");
        var sessions = job.Plan(Later).List("sessions").Select(one => one.Instant("start")).ToList();
        foreach (var one in job.Events())
        {
            if (!calendar.TryGetValue(one.Uid!, out var old) || one.Sequence > old.Sequence)
            {
                calendar[one.Uid!] = one;
            }
        }

        var held = calendar.Values.Where(one => one.Status != "CANCELLED").ToList();
        Assert.Equal(sessions.Order(), held.Where(one => one.DtEnd is { HasTime: true }).Select(one => Moment(one.DtStart)).Order());
        Assert.Contains(calendar.Values, one => one.Status == "CANCELLED" && one.DtStart!.Value.Date == new DateTime(2027, 3, 22));
        Assert.Single(held, one => one.Summary == "Tray: could be promised (four courses in five keep it)" && one.Sequence == 1);
        Assert.Single(held, one => one.Summary == "Tray: due" && one.Sequence == 0);
        Assert.Equal("20270302T090000Z", held.Single(one => one.Sequence == 1 && one.IsAllDay).DtStamp!.AsUtc.ToString("yyyyMMdd'T'HHmmss'Z'", System.Globalization.CultureInfo.InvariantCulture));
    }

    [Fact]
    public void A_promise_on_record_stands_there_as_promised()
    {
        using var job = AnOldCalendar.In("Europe/London");
        job.Plan(Before, "--promise");
        Assert.Single(job.Events(), one => one.Summary == "Tray: promised" && one.IsAllDay);
        Assert.DoesNotContain(job.Events(), one => one.Summary!.Contains("could be", StringComparison.Ordinal));
    }

    [Fact]
    public void Nothing_of_money_is_in_it()
    {
        using var job = AnOldCalendar.In("Europe/London");
        job.Change("faces: rough, ", "faces: rough, price: 77.31 per board-foot, ");
        job.Plan(Before);
        Assert.DoesNotContain("77", Encoding.UTF8.GetString(job.Bytes()).Replace("\r\n ", "", StringComparison.Ordinal).Split("BEGIN:VEVENT").SelectMany(one => one.Split("\r\n")).Where(line => line.StartsWith("SUMMARY", StringComparison.Ordinal) || line.StartsWith("DESCRIPTION", StringComparison.Ordinal)));
        Assert.DoesNotContain("GBP", Encoding.UTF8.GetString(job.Bytes()), StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_of_others_is_refused_before_the_work_and_left_alone()
    {
        using var job = AnOldCalendar.In("Europe/London");
        File.WriteAllText(job.File, "BEGIN:VCALENDAR\r\nPRODID:-//Tide Tables//EN\r\nEND:VCALENDAR\r\n");
        var bytes = job.Bytes();
        var ran = Typed.At(Before, "plan", job.Folder.File("jobs", "tray.yaml"), "--ical", job.File, "--pdf", job.Folder.File("plan.pdf"));
        Assert.Equal((1, ""), (ran.ExitCode, ran.Out));
        Assert.StartsWith("plan.ics:2:1: this calendar was not written by shopdays", ran.Error, StringComparison.Ordinal);
        Assert.Equal(bytes, job.Bytes());
        Assert.False(File.Exists(job.Folder.File("plan.pdf")));
    }

    [Fact]
    public void The_orders_in_hand_have_a_calendar_of_their_own()
    {
        using var job = AnOldCalendar.In("Europe/London");
        job.Folder.WithJob("box", ATrayShop.Job.Replace("job: Tray", "job: Box", StringComparison.Ordinal).Replace("2027-03-01", "2027-03-22", StringComparison.Ordinal));
        var ran = Typed.At(Before, "orders", "--shop", job.Folder.Path, "--json", "--effort", "quick", "--ical", job.File).ReadJson();
        var sessions = ran.Field("plan").List("sessions");
        var events = job.Events();
        Assert.Equal(sessions.Select(one => one.Instant("start")).Order(), events.Where(one => one.DtEnd is { HasTime: true }).Select(one => Moment(one.DtStart)).Order());
        Assert.Contains(events, one => one.Summary!.StartsWith("Box: ", StringComparison.Ordinal) && one.Alarms.Count > 0);
        Assert.Equal(["Box: due", "Tray: due"], events.Select(one => one.Summary!).Where(one => one.EndsWith(": due", StringComparison.Ordinal)).Order(StringComparer.Ordinal));

        // A plan of one job does not go on from it.
        var refused = Typed.At(Before, "plan", job.Folder.File("jobs", "tray.yaml"), "--ical", job.File);
        Assert.Equal(1, refused.ExitCode);
        Assert.Contains("this calendar is of 'orders in hand', and its events would all be called off; expected one of 'tray'", refused.Error, StringComparison.Ordinal);
    }

    private static Instant Moment(Ical.Net.DataTypes.CalDateTime? time) => Instant.FromDateTimeUtc(DateTime.SpecifyKind(time!.AsUtc, DateTimeKind.Utc));

    private static IEnumerable<IReadOnlyList<string>> Components(IReadOnlyList<string> lines, string name) => lines
        .Index()
        .Where(one => one.Item == $"BEGIN:{name}")
        .Select(one => (IReadOnlyList<string>)[.. lines.Skip(one.Index + 1).TakeWhile(line => line != $"END:{name}" && !line.StartsWith("BEGIN:", StringComparison.Ordinal))]);
}
