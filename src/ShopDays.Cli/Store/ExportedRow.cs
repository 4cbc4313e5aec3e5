using System.Globalization;
using NodaTime;
using ShopDays.Cli.Files;
using ShopDays.Logbook;
using ShopDays.Measures;
using ShopDays.Work;

namespace ShopDays.Cli.Store;

/// <summary>Reads rows of an export: every figure exactly as it was.</summary>
internal sealed class ExportedRow(Findings findings)
{
    private const string ANumber = "a number, as an export writes it";

    /// <summary>Reads one; null when something of it is wrong, which has been reported.</summary>
    public SheetRow? Read(SheetCells cells)
    {
        var before = findings.Count;
        if (!Guid.TryParse(cells["key"]!.Value, out var key))
        {
            findings.Add(LogMistakes.NotAKey(cells.PlaceOf("key"), cells.Text("key")));
        }

        var entry = ReadEntry(cells);
        var kind = cells.Text("record");
        if (kind.Length == 0 || kind == LogCsv.EntryRecord)
        {
            return findings.Count == before ? new SheetRow.Exported(new(key, entry)) : null;
        }

        var what = Word(cells, "record", LogWords.Traces, default);
        var at = Moment(cells, "at") ?? Missed(cells, "at", default(Instant), "the moment of the change");
        return findings.Count == before ? new SheetRow.ExportedTrace(new(what, at, cells.Text("why"), key, entry)) : null;
    }

    private LogEntry ReadEntry(SheetCells cells)
    {
        var took = Number(cells, "took") is { } minutes and > 0 ? minutes : Missed(cells, "took", 1d, "minutes, above zero");
        return new()
        {
            Id = new((long)(Number(cells, "number") is { } number and >= 1 and < long.MaxValue && number == Math.Floor(number) ? number : Missed(cells, "number", 1d, "a whole number, 1 or more"))),
            Job = cells.Text("job") is { Length: > 0 } job ? job : null,
            Task = cells.Text("task") is { Length: > 0 } task ? task : Missed(cells, "task", "", "the name of the task"),
            Work = cells.Text("operation").Length > 0 ? ReadWork(cells) : null,
            Took = WorkTime.FromMinutes(took),
            On = new(DateOf(cells), Moment(cells, "ended")),
            Worker = cells.Text("worker") is { Length: > 0 } worker ? worker : Missed(cells, "worker", "", "a name"),
            Finished = Word(cells, "done", [("yes", true), ("no", false)], whenEmpty: true),
            Setback = Word(cells, "setback", LogWords.Setbacks, Setback.None),
            Note = cells.Text("note"),
            Standing = Word(cells, "standing", LogWords.Standings, Standing.AsLogged),
        };
    }

    private LoggedWork ReadWork(SheetCells cells)
    {
        var properties = new Dictionary<Covariate, double>();
        foreach (var (covariate, heading) in new[] { (Covariate.Thickness, "thickness"), (Covariate.Hardness, "hardness"), (Covariate.Depth, "depth"), (Covariate.Width, "width") })
        {
            if (Number(cells, heading) is { } value)
            {
                properties[covariate] = value;
            }
        }

        return new()
        {
            Operation = cells.Text("operation"),
            Method = cells.Text("method"),
            Unit = cells.Text("unit"),
            Quantity = Number(cells, "quantity") is { } quantity and > 0 ? quantity : Missed(cells, "quantity", 1d, "a number above zero"),
            Setups = FromZero(cells, "setups"),
            Besides = WorkTime.FromMinutes(FromZero(cells, "besides")),
            Run = Count(cells, "run"),
            Batch = Count(cells, "batch"),
            Factor = Number(cells, "factor") ?? 1,
            Covariates = properties,
        };
    }

    private LocalDate DateOf(SheetCells cells) => LogWords.Date.Parse(cells.Text("date")).TryGetValue(default, out var date)
        ? date
        : Missed(cells, "date", default(LocalDate), "year, month and day, such as 2027-03-14");

    private double FromZero(SheetCells cells, string heading) => Number(cells, heading) switch
    {
        null => 0,
        >= 0 and { } number => number,
        _ => Missed(cells, heading, 0d, "a number of zero or more"),
    };

    private int Count(SheetCells cells, string heading) => Number(cells, heading) switch
    {
        null => 1,
        >= 1 and <= int.MaxValue and { } number when number == Math.Floor(number) => (int)number,
        _ => Missed(cells, heading, 1, "a whole number, 1 or more"),
    };

    private double? Number(SheetCells cells, string heading)
    {
        if (cells[heading] is not { } cell)
        {
            return null;
        }

        if (double.TryParse(cell.Value, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) && double.IsFinite(number))
        {
            return number;
        }

        findings.Add(ValueMistakes.NotANumber(cell.Place, cell.Value, ANumber));
        return null;
    }

    private Instant? Moment(SheetCells cells, string heading)
    {
        if (cells[heading] is not { } cell)
        {
            return null;
        }

        if (LogWords.Moment.Parse(cell.Value).TryGetValue(default, out var moment))
        {
            return moment;
        }

        findings.Add(LogMistakes.NotAMoment(cell.Place, cell.Value));
        return null;
    }

    private T Word<T>(SheetCells cells, string heading, (string Word, T Value)[] words, T whenEmpty)
    {
        if (cells[heading] is not { } cell)
        {
            return whenEmpty;
        }

        var at = Array.FindIndex(words, one => one.Word == cell.Value);
        return at >= 0 ? words[at].Value : Missed(cells, heading, whenEmpty, ValueMistakes.AnyOf([.. words.Select(one => one.Word)], "words"));
    }

    private T Missed<T>(SheetCells cells, string heading, T instead, string expected)
    {
        // A figure that could not be read has been reported at this place already.
        if (!findings.Has(cells.PlaceOf(heading)))
        {
            findings.Add(LogMistakes.NotExact(cells.PlaceOf(heading), heading, expected));
        }

        return instead;
    }
}
