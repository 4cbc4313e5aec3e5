using CsCheck;
using NodaTime;
using ShopDays.Logbook;
using ShopDays.Measures;
using ShopDays.Work;

namespace ShopDays.Cli.Tests.Store;

/// <summary>Entries for tests: a plain one, and any that there can be.</summary>
internal static class AnEntry
{
    public static readonly Instant Noon = Instant.FromUtc(2027, 4, 17, 12, 0);

    // Within the limits of every figure, with some that no short text tells exactly.
    private static readonly Gen<double> Positive = Gen.OneOf(
        Gen.Double[1e-6, 500],
        Constants(double.Epsilon, 1d / 3, 0.1, 1e-300, 7.901234567890123));

    private static readonly Gen<double> Thin = Positive.Select(figure => Math.Max(double.Epsilon, figure / 100));

    private static readonly Gen<double> FromZero = Gen.OneOf(Gen.Const(0d), Positive);

    /// <summary>Text as makers and their enemies write it; neither the sign of code 0 nor half of a pair is text.</summary>
    private static readonly Gen<string> AnyText = Gen.OneOf(
        Gen.String[Gen.Char["abc ,;\t\"'\r\n\u001b[31m=+-@\u00e9\u6728\u202e%"], 0, 30],
        Constants("", "'); drop table entry; --", "\"quoted\", and more", "two\nlines", "=1+1", " led and trailed ", "\ud83e\udeb5", "\ufeff", "null", "NULL"));

    private static readonly Gen<string> Stopped = Gen.OneOf(Gen.Const(""), Gen.String[Gen.Char["abc ,;\"'=+-@\u00e9\u6728%"], 0, 240].Select(text => text.Trim()));

    private static readonly Gen<string> Name = AnyText.Select(text => "n" + text + ".");

    private static readonly Gen<Instant> Moment = Gen.Long[0, 1_800_000_000].SelectMany(
        seconds => Gen.Long[0, 999_999_999].Select(nanoseconds => Instant.FromUnixTimeSeconds(seconds).PlusNanoseconds(nanoseconds)));

    private static readonly Gen<WorkedOn> When = Gen.Select(
        Gen.Int[0, 20_000].Select(days => new LocalDate(1970, 1, 1).PlusDays(days)),
        Gen.Bool,
        Moment,
        (date, isMoment, moment) => isMoment ? WorkedOn.At(moment, DateTimeZone.Utc) : new WorkedOn(date));

    private static readonly Gen<IReadOnlyDictionary<Covariate, double>> Properties = Gen.Select(Gen.Bool.Array[4], Thin.Array[4], (has, values) =>
        (IReadOnlyDictionary<Covariate, double>)Enum.GetValues<Covariate>().Where((_, index) => has[index]).ToDictionary(one => one, one => values[(int)one]));

    private static readonly Gen<LoggedWork> Work = Gen.Select(
        Name,
        Name,
        Name,
        Positive,
        FromZero,
        Gen.Select(FromZero, Gen.Int[1, 500], Gen.Int[1, 500], Positive),
        Properties,
        (operation, method, unit, quantity, setups, rest, properties) => new LoggedWork
        {
            Operation = operation,
            Method = method,
            Unit = unit,
            Quantity = quantity,
            Setups = setups,
            Besides = WorkTime.FromMinutes(rest.Item1),
            Run = Math.Min(rest.Item2, rest.Item3),
            Batch = rest.Item3,
            Factor = rest.Item4,
            Covariates = properties,
        });

    private static Gen<T> Constants<T>(params T[] values) => Gen.Int[0, values.Length - 1].Select(index => values[index]);

    /// <summary>Any entry.</summary>
    public static Gen<LogEntry> Any { get; } = Gen.Select(
        Gen.Select(Gen.Bool, Name, Name, (hasJob, job, task) => (Job: hasJob ? job : null, Task: task)),
        Gen.Select(Gen.Bool, Work, (has, work) => has ? work : null),
        Positive,
        When,
        Gen.Select(Name, Gen.Bool),
        Gen.Select(Gen.Enum<Setback>(), Gen.Enum<Standing>()),
        Gen.Select(AnyText, Stopped),
        (what, work, took, on, who, said, text) => new LogEntry
        {
            Job = what.Job,
            Task = what.Task,
            Work = work,
            Took = WorkTime.FromMinutes(took),
            On = on,
            Worker = who.Item1,
            Finished = who.Item2,
            Setback = said.Item1,
            Standing = said.Item2,
            Note = text.Item1,
            Stopped = text.Item2,
        });

    /// <summary>A plain entry of the job <c>tray</c>.</summary>
    public static LogEntry Of(string task, double minutes = 45, string date = "2027-04-17") => new()
    {
        Job = "tray",
        Task = task,
        Took = WorkTime.FromMinutes(minutes),
        On = new(NodaTime.Text.LocalDatePattern.Iso.Parse(date).Value),
        Worker = "maker",
        Finished = true,
    };
}
