using System.Text;
using System.Text.Json;
using Ical.Net.CalendarComponents;
using NodaTime;
using ShopDays.Cli.Tests.Commands;
using ShopDays.Cli.Tests.Running;
using Xunit;

namespace ShopDays.Cli.Tests.Calendars;

/// <summary>A job that goes over a change of clocks, its calendar, and what an independent reader finds in it.</summary>
internal sealed class AnOldCalendar : IDisposable
{
    private readonly FreshFolder folder = new();

    private AnOldCalendar(string zone, string job)
    {
        (Zone, Job) = (DateTimeZoneProviders.Tzdb[zone], job);
    }

    public DateTimeZone Zone { get; }

    /// <summary>The name of the job.</summary>
    public string Job { get; }

    /// <summary>The shop's folder.</summary>
    public FreshFolder Folder => folder;

    /// <summary>Where the calendar is.</summary>
    public string File => folder.File("plan.ics");

    /// <summary>A tray in Scotland, over 28 March 2027; or the sample in New Zealand, over 4 April.</summary>
    public static AnOldCalendar In(string zone)
    {
        if (zone == "Europe/London")
        {
            var tray = new AnOldCalendar(zone, "tray");
            tray.folder.WithShop(ATrayShop.Shop).WithJob("tray", ATrayShop.Job.Replace("2027-03-01", "2027-03-22", StringComparison.Ordinal));
            return tray;
        }

        var cupboard = new AnOldCalendar(zone, "wall-cupboard");
        Sample.Of("evening-cupboard").CopyTo(cupboard.folder);
        cupboard.Change("start: 2027-01-26", "start: 2027-03-14");
        return cupboard;
    }

    /// <summary>Changes the job's file.</summary>
    public void Change(string old, string now)
    {
        var path = folder.File("jobs", Job + ".yaml");
        var text = System.IO.File.ReadAllText(path);
        Assert.Contains(old, text, StringComparison.Ordinal);
        System.IO.File.WriteAllText(path, text.Replace(old, now, StringComparison.Ordinal));
    }

    /// <summary>Plans it and writes the calendar; the plan as JSON.</summary>
    public JsonElement Plan(Instant now, params string[] options) => Typed.At(now, ["plan", folder.File("jobs", Job + ".yaml"), "--ical", File, "--json", "--effort", "quick", .. options]).ReadJson();

    /// <summary>The calendar's bytes.</summary>
    public byte[] Bytes() => System.IO.File.ReadAllBytes(File);

    /// <summary>Its lines, gone over by the letter.</summary>
    public IReadOnlyList<string> Lines() => StrictLines.Of(Bytes());

    /// <summary>Its events as Ical.Net reads them.</summary>
    public IReadOnlyList<CalendarEvent> Events() => [.. Ical.Net.Calendar.Load(Encoding.UTF8.GetString(Bytes()))!.Events];

    public void Dispose() => folder.Dispose();
}
