using NodaTime;
using NodaTime.Text;
using ShopDays.Cli.Files;
using ShopDays.Cli.Files.Yaml;
using ShopDays.Logbook;
using ShopDays.Measures;

namespace ShopDays.Cli.Store;

/// <summary>Reads the rows that a maker typed back from a pencilled sheet.</summary>
internal sealed class OwnRow(SheetSettings settings)
{
    private static readonly LocalTimePattern TimeOfDay = LocalTimePattern.CreateWithInvariantCulture("H:mm");
    private static readonly string[] Ticks = ["x", "yes", "y", "v", "✓", "✔", "1", "true", "done"];
    private static readonly string[] NoTicks = ["no", "n", "-", "0", "false", "half", "half done"];

    private readonly Findings findings = settings.Reading.Findings;
    private readonly OwnWork work = new(settings);

    /// <summary>Whether nothing was pencilled into a row: its task is there, its time is not.</summary>
    public static bool IsEmpty(SheetCells cells) =>
        cells["took"] is null && cells["start"] is null && cells["stop"] is null && cells["done"] is null && cells["note"] is null && cells["quantity"] is null;

    /// <summary>Reads one; null when something of it is wrong, which has been reported.</summary>
    public SheetRow? Read(SheetCells cells)
    {
        var before = findings.Count;
        var date = DateOf(cells);
        var (took, stopped) = TimeOf(cells);
        var finished = FinishedIn(cells);
        var worker = WorkerIn(cells);
        var setback = cells.Read("setback", Spaced("a setback", LogWords.Setbacks), settings.Reading).Or(Setback.None);
        var standing = cells.Read("standing", Spaced("a standing", LogWords.Standings), settings.Reading).Or(Standing.AsLogged);
        var (job, task, done) = work.Read(cells, finished);
        var note = cells.Stopped(findings).Trim();
        if (note.Length > 0 && job is null && findings.Count == before)
        {
            findings.Add(LogMistakes.StoppedInNoJob(cells.PlaceOf("stopped")));
        }

        return findings.Count > before
            ? null
            : new SheetRow.Own(new()
            {
                Job = job,
                Task = task,
                Work = done,
                Took = took,
                On = stopped is { } stop ? new(date, date.At(stop).InZoneLeniently(settings.Zone).ToInstant()) : new(date),
                Worker = worker,
                Finished = finished || job is null,
                Setback = setback,
                Note = cells.Text("note").Trim(),
                Standing = standing,
                Stopped = note,
            });
    }

    /// <summary>Words with spaces or capitals mean the same as with hyphens: <c>First of its kind</c>.</summary>
    private static ValueReader<T> Spaced<T>(string noun, (string Word, T Value)[] words) => (node, reading) =>
        Values.Choice(noun, words)(node is YamlText text && words.Any(one => one.Word == LogWords.Hyphened(text.Value)) ? text with { Value = LogWords.Hyphened(text.Value) } : node, reading);

    private LocalDate DateOf(SheetCells cells)
    {
        var date = cells.Read("date", Values.Date, settings.Reading)
            .Unless(findings, on => on > settings.Today ? LogMistakes.StillToCome(cells.PlaceOf("date"), cells.Text("date"), LogWords.Date.Format(settings.Today)) : null);
        if (!date.IsWritten && settings.Date is null)
        {
            findings.Add(LogMistakes.NoDate(cells.PlaceOf("date")));
        }

        return date.Or(settings.Date ?? settings.Today);
    }

    private (WorkTime Took, LocalTime? Stop) TimeOf(SheetCells cells)
    {
        var before = findings.Count;
        var took = cells.Read("took", Values.Time, settings.Reading).Unless(findings, time => time == WorkTime.Zero ? LogMistakes.ZeroTime(cells.PlaceOf("took")) : null);
        var (start, stop) = (ClockIn(cells, "start"), ClockIn(cells, "stop"));
        if (findings.Count > before)
        {
            return default;
        }

        if (start is null || stop is null)
        {
            if (!took.IsRead)
            {
                findings.Add(start is null && stop is null ? LogMistakes.NoTime(cells.PlaceOf("took")) : LogMistakes.StartWithoutStop(cells.PlaceOf(start is null ? "stop" : "start")));
            }

            return (took.Value, stop);
        }

        var between = WorkTime.FromMinutes((stop.Value - start.Value).ToDuration().TotalMinutes);
        if (between <= WorkTime.Zero)
        {
            findings.Add(LogMistakes.StopBeforeStart(cells.PlaceOf("stop"), cells.Text("start"), cells.Text("stop")));
        }
        else if (took.IsRead && took.Value > between)
        {
            findings.Add(LogMistakes.TookTooLong(cells.PlaceOf("took"), WorkTimeText.Write(took.Value), WorkTimeText.Write(between)));
        }

        return (took.Or(between), stop);
    }

    private LocalTime? ClockIn(SheetCells cells, string heading)
    {
        if (cells[heading] is not { } cell)
        {
            return null;
        }

        if (TimeOfDay.Parse(cell.Value.Trim()).TryGetValue(default, out var time))
        {
            return time;
        }

        findings.Add(LogMistakes.NotATimeOfDay(cell.Place, cell.Value));
        return null;
    }

    /// <summary>A sheet without the column speaks of finished tasks; where the column stands, a tick is needed.</summary>
    private bool FinishedIn(SheetCells cells)
    {
        if (!cells.HasColumn("done"))
        {
            return true;
        }

        if (cells["done"] is not { } cell)
        {
            return false;
        }

        var word = cell.Value.Trim();
        var isTick = Ticks.Contains(word, StringComparer.OrdinalIgnoreCase);
        if (!isTick && !NoTicks.Contains(word, StringComparer.OrdinalIgnoreCase))
        {
            findings.Add(LogMistakes.NotDoneOrNot(cell.Place, word));
        }

        return isTick;
    }

    private string WorkerIn(SheetCells cells)
    {
        if (cells["worker"] is not { } cell)
        {
            return settings.Workers[0];
        }

        if (settings.Workers.FirstOrDefault(name => string.Equals(name, cell.Value.Trim(), StringComparison.OrdinalIgnoreCase)) is { } known)
        {
            return known;
        }

        findings.Add(LogMistakes.UnknownWorker(cell.Place, cell.Value, settings.Workers));
        return settings.Workers[0];
    }
}
