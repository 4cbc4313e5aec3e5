using System.Globalization;
using System.Text;
using NodaTime.Text;
using ShopDays.Cli.Files;
using ShopDays.Measures;

namespace ShopDays.Cli.Calendars;

/// <summary>Reads a calendar that this program wrote before, so that a new one goes on from it.</summary>
/// <param name="file">The file.</param>
/// <param name="of">What the calendar is of.</param>
/// <param name="findings">Where mistakes are told.</param>
internal sealed class CalendarReader(SourceFile file, string of, Findings findings)
{
    private static readonly InstantPattern Stamp = InstantPattern.CreateWithInvariantCulture("uuuuMMdd'T'HHmmss'Z'");
    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    private readonly Dictionary<string, CalendarEvent> events = new(StringComparer.Ordinal);
    private readonly Stack<string> open = new();
    private List<string> lines = [];
    private List<string> alarm = [];
    private int begun;

    /// <summary>Its events by their names; those read so far where there is a mistake.</summary>
    public IReadOnlyDictionary<string, CalendarEvent> Read()
    {
        var all = ContentLine.Unfolded(Text());
        if (all.Count == 0 || all[0].Line != "BEGIN:VCALENDAR")
        {
            findings.Add(CalendarMistakes.NotACalendar(At(1)));
            return events;
        }

        if (!IsOurs(all))
        {
            return events;
        }

        foreach (var (number, line) in all)
        {
            Read(number, line);
            if (!findings.AreNone)
            {
                return events;
            }
        }

        if (open.TryPeek(out var left))
        {
            findings.Add(CalendarMistakes.CalendarEndsEarly(At(all[^1].Number), left));
        }

        return events;
    }

    private string Text()
    {
        try
        {
            return Strict.GetString(file.Bytes);
        }
        catch (DecoderFallbackException)
        {
            // What is no text is no calendar.
            return "";
        }
    }

    private bool IsOurs(IReadOnlyList<(int Number, string Line)> all)
    {
        var made = all.FirstOrDefault(one => one.Line.StartsWith("PRODID:", StringComparison.Ordinal));
        if (made.Line != CalendarText.MadeBy)
        {
            findings.Add(CalendarMistakes.CalendarOfOthers(At(Math.Max(1, made.Number)), made.Line?["PRODID:".Length..] ?? "somebody else"));
            return false;
        }

        var name = all.FirstOrDefault(one => one.Line.StartsWith(CalendarText.OfName, StringComparison.Ordinal));
        if (name.Line != CalendarText.OfLine(of))
        {
            findings.Add(CalendarMistakes.CalendarOfOtherWork(At(Math.Max(1, name.Number)), name.Line?[CalendarText.OfName.Length..] ?? "something else", of));
            return false;
        }

        return true;
    }

    private void Read(int number, string line)
    {
        var value = line[(line.IndexOf(':', StringComparison.Ordinal) + 1)..];
        switch (ContentLine.NameOf(line))
        {
            case "BEGIN":
                open.Push(value);
                (lines, alarm, begun) = value == "VEVENT" ? ([], [], number) : (lines, alarm, begun);
                break;

            case "END" when open.Count == 0 || open.Peek() != value:
                NotUnderstood(number, $"END:{value} ends nothing", open.TryPeek(out var left) ? $"END:{left}" : "nothing more");
                return;

            case "END":
                open.Pop();
                if (value == "VEVENT")
                {
                    Keep();
                }

                break;

            case var name when name.Length == line.Length:
                NotUnderstood(number, $"{QuotedText.Of(line)} has no value", "a property, a colon and its value");
                return;
        }

        if (open.Contains("VALARM") || line == "END:VALARM")
        {
            alarm.Add(line);
        }
        else if (open.TryPeek(out var at) && at == "VEVENT" && line != "BEGIN:VEVENT")
        {
            lines.Add(line);
        }
    }

    private void Keep()
    {
        var version = lines.Where(line => ContentLine.NameOf(line) is "UID" or "DTSTAMP" or "SEQUENCE" or "STATUS").ToLookup(ContentLine.NameOf, line => line[(line.IndexOf(':', StringComparison.Ordinal) + 1)..], StringComparer.Ordinal);
        if (version["UID"].FirstOrDefault() is not { Length: > 0 } uid || events.ContainsKey(uid))
        {
            NotUnderstood(begun, "an event has no UID of its own", "one UID for each event");
            return;
        }

        if (!int.TryParse(version["SEQUENCE"].FirstOrDefault(), NumberStyles.None, CultureInfo.InvariantCulture, out var sequence) || sequence == int.MaxValue
            || Stamp.Parse(version["DTSTAMP"].FirstOrDefault() ?? "") is not { Success: true } stamp)
        {
            NotUnderstood(begun, "an event does not say which version of it this is", "a SEQUENCE and a DTSTAMP");
            return;
        }

        string[] said = [.. lines.Where(line => ContentLine.NameOf(line) is not ("UID" or "DTSTAMP" or "SEQUENCE" or "STATUS"))];
        if (said.Where(line => ContentLine.NameOf(line) is "DTSTART" or "DTEND").Select(CalendarTime.Of).ToList() is not { Count: > 0 } times || times.Contains(null) || !said.Any(line => ContentLine.NameOf(line) == "DTSTART"))
        {
            NotUnderstood(begun, "an event has no time that can be understood", "a DTSTART such as DTSTART;VALUE=DATE:20270412");
            return;
        }

        events.Add(uid, new() { Uid = uid, Lines = said, Alarm = alarm, Sequence = sequence, Stamp = stamp.Value, IsCancelled = version["STATUS"].Contains("CANCELLED") });
    }

    private void NotUnderstood(int number, string what, string expected) => findings.Add(CalendarMistakes.CalendarNotUnderstood(At(number), what, expected));

    private Place At(int number) => new(file.Name, number, 1);
}
