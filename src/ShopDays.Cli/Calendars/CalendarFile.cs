using NodaTime;
using ShopDays.Cli.Files;

namespace ShopDays.Cli.Calendars;

/// <summary>A calendar file that is to be written: what is there already is read before the work, so that a file of others is refused at once.</summary>
internal sealed class CalendarFile
{
    // Some thousand sessions; no plan has as many.
    private const int LargestBytes = 10_000_000;

    private readonly IReadOnlyDictionary<string, CalendarEvent> before;

    private CalendarFile(string path, string of, IReadOnlyDictionary<string, CalendarEvent> before) => (Path, Of, this.before) = (path, of, before);

    /// <summary>Where it is.</summary>
    public string Path { get; }

    /// <summary>What it is of.</summary>
    public string Of { get; }

    /// <summary>Looks at the place where a calendar is to be written.</summary>
    /// <param name="path">Where.</param>
    /// <param name="of">What it is to be of.</param>
    /// <param name="findings">Told why what is there is not written over.</param>
    /// <exception cref="FileTroubleException">What is there cannot be read.</exception>
    public static CalendarFile Open(string path, string of, Findings findings) =>
        new(path, of, File.Exists(path) ? new CalendarReader(SourceFile.Read(path, System.IO.Path.GetFileName(path), LargestBytes), of, findings).Read() : new Dictionary<string, CalendarEvent>());

    /// <summary>Writes it.</summary>
    /// <param name="planned">The events of the plan.</param>
    /// <param name="now">The moment.</param>
    /// <exception cref="FileTroubleException">It cannot be written.</exception>
    public void Save(IReadOnlyList<CalendarEvent> planned, Instant now) =>
        WholeFile.Save(Path, CalendarText.Write(Of, CalendarUpdate.Of(before, planned, Instant.FromUnixTimeSeconds(now.ToUnixTimeSeconds()))));
}
