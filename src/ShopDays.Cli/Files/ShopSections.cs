using NodaTime;
using ShopDays.Cli.Files.Yaml;
using ShopDays.Days;
using ShopDays.Measures;
using ShopDays.Parts;
using ShopDays.Work;

namespace ShopDays.Cli.Files;

/// <summary>The sections of a shop file that say what the shop has: workers, limits, clamps.</summary>
internal static class ShopSections
{
    private const int MostClamps = 1_000;

    /// <summary>Reads <c>workers</c>; without it the maker works alone.</summary>
    public static IReadOnlyList<Worker> Workers(Section shop)
    {
        var names = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        var workers = shop.Lines("workers", "a worker", line =>
        {
            var name = line.Required("name", Values.Name("a name, such as maker"), "a name, such as maker");
            if (name.IsRead && !names.Add(name.Value!))
            {
                line.Findings.Add(ShopMistakes.WorkerTwice(name.Place, name.Value!));
            }

            var hours = line.Optional("hours", HoursValues.OfAWeek);
            var heavy = line.Optional("heavy-per-day", SomeTime("heavy work in a day"));
            return new Worker(name.Or(""), hours.IsRead ? new ShopWeek(hours.Value!) : null)
            {
                Extra = new(line.Optional("extra", HoursValues.OfDates).Or(new Dictionary<LocalDate, ShopHours>())),
                Closed = HoursValues.Closed(line),
                HeavyPerDay = heavy.IsRead ? heavy.Value : null,
                HeavyInTwoDays = InTwoDays(line, heavy.IsRead ? heavy.Value : null),
            };
        });
        return workers.Count == 0 ? [new Worker("maker", null)] : workers;
    }

    /// <summary>Reads <c>appointments</c>.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="workers">Those whose time may be taken.</param>
    /// <param name="areKnown">Whether every worker's name could be read; otherwise nothing is said of names that are not there.</param>
    public static IReadOnlyList<ShopAppointment> Appointments(Section shop, IReadOnlyList<Worker> workers, bool areKnown)
    {
        string[] names = [.. workers.Select(worker => worker.Name)];
        return shop.Lines("appointments", "an appointment", line =>
        {
            var what = line.Required("appointment", Values.Name("what comes, such as timber delivery"), "what comes, such as timber delivery");
            var on = line.Required("on", Values.Date, "its date, such as 2027-04-06");
            var at = line.Required("at", HoursValues.InADay, "its hours, such as 10:00-11:00");
            if (on.IsRead && at.IsRead)
            {
                HoursValues.SayWhenDoubled(at.Place, on.Value, at.Value, line.Reading);
            }

            if (on.IsRead)
            {
                at = at.Unless(line.Findings, hours => HoursValues.Skipped(at.Place, on.Value, hours, line.Reading));
            }

            var who = line.Optional("who", Values.OneOrMore(WorkerOf(names, areKnown))).Or([]);
            return new ShopAppointment(new(what.Or(""), on.Value, at.Value), [.. who.Where(one => one.IsRead).Select(one => one.Value!)]);
        });
    }

    private static ValueReader<string> WorkerOf(string[] names, bool areKnown) => (node, reading) =>
        Values.Text("the name of a worker")(node, reading).Unless(
            reading.Findings,
            name => names.Contains(name, StringComparer.OrdinalIgnoreCase) || !areKnown ? null : ShopMistakes.UnknownWorker(node.Place, name, names))
            .Select(name => names.FirstOrDefault(one => string.Equals(one, name, StringComparison.OrdinalIgnoreCase)) ?? name);

    /// <summary>Reads <c>machines</c>: methods of the catalogue that the shop could use and does not as a rule.</summary>
    public static IReadOnlyList<string> Machines(Section shop, OperationCatalogue operations)
    {
        string[] names = [.. operations.All.SelectMany(operation => operation.Methods.Skip(1)).Select(method => method.Name).Distinct(StringComparer.OrdinalIgnoreCase).Order(StringComparer.Ordinal)];
        ValueReader<string> machine = (node, reading) => Values.Text("a machine, such as band saw")(node, reading)
            .Unless(reading.Findings, name => names.Contains(name, StringComparer.OrdinalIgnoreCase) ? null : ShopMistakes.UnknownMachine(node.Place, name, names));
        return [.. shop.Optional("machines", Values.OneOrMore(machine)).Or([]).Where(one => one.IsRead).Select(one => one.Value!)];
    }

    /// <summary>Reads <c>limits</c>, <c>clamps</c>, <c>benches</c> and <c>floor</c>.</summary>
    public static ShopLimits Limits(Section shop, IReadOnlyList<Worker> workers)
    {
        var usual = new ShopLimits();
        var limits = shop.Inner("limits", "the limits", inner => usual with
        {
            HeavyPerDay = inner.Optional("heavy-per-day", SomeTime("heavy work in a day"), usual.HeavyPerDay) is var perDay ? perDay : default,
            HeavyInTwoDays = InTwoDays(inner, perDay),
            Bout = inner.Optional("bout", SomeTime("a bout of heavy work"), usual.Bout),
            LiftAlone = inner.Optional("lift-alone", SomeWeight, usual.LiftAlone),
            LongestPass = inner.Optional("longest-pass", LengthValues.AboveZero("the longest pass", LengthValues.Longest), usual.LongestPass),
        }) ?? usual;
        var reaches = new HashSet<Length>();
        var clamps = shop.Lines<object>("clamps", "a line of clamps", line =>
        {
            var reach = line.Required("reach", LengthValues.AboveZero("the reach of a clamp", LengthValues.Longest), "the reach, such as 24\" or 600 mm");
            var count = line.Required("count", Values.Whole("a count of clamps", 1, MostClamps), "how many there are");
            if (reach.IsRead && !reaches.Add(reach.Value))
            {
                line.Findings.Add(ShopMistakes.ClampsTwice(reach.Place, line.Reading.Format.Write(reach.Value)));
            }

            return reach.IsRead && count.IsRead ? new ClampsHeld(reach.Value, count.Value) : null;
        });
        return limits with
        {
            Clamps = shop.Has("clamps") ? [.. clamps.Cast<ClampsHeld>()] : null,
            Benches = shop.Optional("benches", Values.Whole("a count of benches", 1, 20), usual.Benches),
            Floor = shop.Optional("floor", SomeFloor) is { IsRead: true } floor ? floor.Value : null,
            Workers = workers.Count,
            HeavyOf = TimesOf(workers, worker => worker.HeavyPerDay),
            HeavyInTwoDaysFor = TimesOf(workers, worker => worker.HeavyInTwoDays),
        };
    }

    /// <summary>Reads <c>heavy-in-two-days</c>; null where it is not written.</summary>
    /// <param name="section">The limits, or a worker's line.</param>
    /// <param name="perDay">The cap of a day that is written beside it, below which it makes no sense.</param>
    private static WorkTime? InTwoDays(Section section, WorkTime? perDay)
    {
        var read = section.Optional("heavy-in-two-days", SomeTime("heavy work in two days running"));
        read = read.Unless(section.Findings, time => perDay is { } day && time < day ? ShopMistakes.LessThanInADay(read.Place, time, day) : null);
        return read.IsRead ? read.Value : null;
    }

    private static Dictionary<string, WorkTime> TimesOf(IReadOnlyList<Worker> workers, Func<Worker, WorkTime?> time) => workers
        .Where(worker => time(worker) is not null)
        .DistinctBy(worker => worker.Name, StringComparer.Ordinal)
        .ToDictionary(worker => worker.Name, worker => time(worker)!.Value, StringComparer.Ordinal);

    /// <summary>A working time above zero.</summary>
    public static ValueReader<WorkTime> SomeTime(string what) => (node, reading) => Values.Time(node, reading)
        .Unless(reading.Findings, time => time > WorkTime.Zero ? null : ValueMistakes.NotInRange(node.Place, ((YamlText)node).Value, what, "more than nothing, such as 45m"));

    /// <summary>Reads <c>learning</c>.</summary>
    public static ShopLearning Learning(Section learning) => new(learning.Optional("half-life", HalfLife) is { IsRead: true } halfLife ? halfLife.Value : null);

    private static ValueReader<Duration> HalfLife { get; } = (node, reading) => Values.Wait(node, reading)
        .Unless(reading.Findings, wait => wait >= Duration.FromDays(1) ? null : ValueMistakes.NotInRange(node.Place, ((YamlText)node).Value, "the half-life of what was learned", "a day at least, such as 540d"));

    private static ValueReader<Area> SomeFloor { get; } = (node, reading) => Values.Floor(node, reading)
        .Unless(reading.Findings, area => area > Area.Zero ? null : ValueMistakes.NotInRange(node.Place, ((YamlText)node).Value, "free floor", "more than nothing, such as 40 sq ft"));

    private static ValueReader<Mass> SomeWeight { get; } = (node, reading) => Values.Weight(node, reading)
        .Unless(reading.Findings, mass => mass > Mass.Zero ? null : ValueMistakes.NotInRange(node.Place, ((YamlText)node).Value, "what one person lifts", "more than nothing, such as 23 kg"));
}
