using System.Globalization;
using NodaTime;
using ShopDays.Cli.Files;
using ShopDays.Logbook;
using ShopDays.Measures;
using ShopDays.Work;

namespace ShopDays.Cli.Store;

/// <summary>Reads rows of an export: every figure exactly as it was.</summary>
/// <remarks>
/// What the log does not take from a maker's hand it does not take from a file either. A worker whom the shop does not know
/// is right here: an export may be of a time when there was one.
/// </remarks>
internal sealed class ExportedRow(Findings findings, LocalDate today)
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
        if (findings.Has(cells.PlaceOf("record")))
        {
            return null;
        }

        var at = Moment(cells, "at") ?? Missed(cells, "at", default(Instant), "the moment of the change");
        return findings.Count == before ? new SheetRow.ExportedTrace(new(what, at, cells.Text("why"), key, entry)) : null;
    }

    private LogEntry ReadEntry(SheetCells cells)
    {
        var took = AboveZero(cells, "took", EntryLimits.LongestMinutes, "minutes") ?? Missed(cells, "took", 1d, "minutes, above zero");
        return new()
        {
            Id = new((long)(Number(cells, "number") is { } number and >= 1 and < long.MaxValue && number == Math.Floor(number) ? number : Missed(cells, "number", 1d, "a whole number, 1 or more"))),
            Job = cells.Text("job") is { Length: > 0 } job ? job : null,
            Task = cells.Text("task") is { Length: > 0 } task ? FormerNames.Today(task) : Missed(cells, "task", "", "the name of the task"),
            Work = cells.Text("operation").Length > 0 ? ReadWork(cells) : null,
            Took = WorkTime.FromMinutes(took),
            On = new(DateOf(cells), Moment(cells, "ended")),
            Worker = cells.Text("worker") is { Length: > 0 } worker ? worker : Missed(cells, "worker", "", "a name"),
            Finished = Word(cells, "done", [("yes", true), ("no", false)], whenEmpty: true),
            Setback = Word(cells, "setback", LogWords.Setbacks, Setback.None),
            Note = cells.Text("note"),
            Standing = Word(cells, "standing", LogWords.Standings, Standing.AsLogged),
            Stopped = cells.Stopped(findings),
        };
    }

    private LoggedWork ReadWork(SheetCells cells)
    {
        var properties = new Dictionary<Covariate, double>();
        foreach (var (covariate, heading) in new[] { (Covariate.Thickness, "thickness"), (Covariate.Hardness, "hardness"), (Covariate.Depth, "depth"), (Covariate.Width, "width") })
        {
            if (AboveZero(cells, heading, EntryLimits.Most(covariate), EntryLimits.UnitOf(covariate)) is { } value)
            {
                properties[covariate] = value;
            }
        }

        var (run, batch) = (Count(cells, "run"), Count(cells, "batch"));
        if (run > batch && cells["run"] is { } typed && !findings.Has(typed.Place) && !findings.Has(cells.PlaceOf("batch")))
        {
            findings.Add(ValueMistakes.NotInRange(typed.Place, typed.Value, "a run", FormattableString.Invariant($"at most the batch, {batch}")));
        }

        return new()
        {
            Operation = cells.Text("operation"),
            Method = cells.Text("method") is { Length: > 0 } method ? method : Missed(cells, "method", "", "the name of a method, beside an operation"),
            Unit = cells.Text("unit") is { Length: > 0 } unit ? unit : Missed(cells, "unit", "", "the unit that the quantity counts"),
            Quantity = AboveZero(cells, "quantity", EntryLimits.MostOfAUnit, "of the unit") ?? Missed(cells, "quantity", 1d, "a number above zero"),
            Setups = FromZero(cells, "setups", EntryLimits.MostSetups),
            Besides = WorkTime.FromMinutes(FromZero(cells, "besides", EntryLimits.LongestMinutes)),
            Run = run,
            Batch = batch,
            Factor = AboveZero(cells, "factor", EntryLimits.LargestFactor, "times") ?? 1,
            Covariates = properties,
        };
    }

    private LocalDate DateOf(SheetCells cells)
    {
        if (!LogWords.Date.Parse(cells.Text("date")).TryGetValue(default, out var date) || date < EntryLimits.FirstDate)
        {
            return Missed(cells, "date", default(LocalDate), "year, month and day, such as 2027-03-14");
        }

        if (date > today)
        {
            findings.Add(LogMistakes.StillToCome(cells.PlaceOf("date"), cells.Text("date"), LogWords.Date.Format(today)));
        }

        return date;
    }

    private double? AboveZero(SheetCells cells, string heading, double most, string unit) =>
        Within(cells, heading, number => number > 0 && number <= most, FormattableString.Invariant($"more than zero and at most {most:#,0.###} {unit}"));

    private double FromZero(SheetCells cells, string heading, double most) =>
        Within(cells, heading, number => number >= 0 && number <= most, FormattableString.Invariant($"from zero to {most:#,0}")) ?? 0;

    private int Count(SheetCells cells, string heading) => (int)(Within(
        cells,
        heading,
        number => number is >= 1 and <= EntryLimits.MostPieces && number == Math.Floor(number),
        FormattableString.Invariant($"a whole number from 1 to {EntryLimits.MostPieces:#,0}")) ?? 1);

    private double? Within(SheetCells cells, string heading, Func<double, bool> isRight, string expected)
    {
        if (Number(cells, heading) is not { } number || isRight(number))
        {
            return Number(cells, heading);
        }

        findings.Add(ValueMistakes.NotInRange(cells.PlaceOf(heading), cells.Text(heading), $"the '{heading}' of an entry", expected));
        return null;
    }

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
        return at >= 0 ? words[at].Value : Missed(cells, heading, whenEmpty, ValueMistakes.AnyOf([.. words.Select(one => one.Word).Concat(heading == "record" ? [LogCsv.EntryRecord] : [])], "words"));
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
