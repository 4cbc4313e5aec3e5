using NodaTime;
using ShopDays.Days;
using ShopDays.Measures;
using ShopDays.Parts;
using ShopDays.Plans;
using ShopDays.Work;

namespace ShopDays.Tests.Plans;

/// <summary>Builds requests for plans: tasks by their minutes, a shop open from Monday to Friday unless said otherwise.</summary>
internal sealed class AJob
{
    public static readonly LocalDate Monday = new(2027, 3, 1);

    private readonly List<ShopTask> tasks = [];
    private readonly List<double> minutes = [];
    private readonly List<Precedence> precedences = [];
    private readonly List<Awaited> awaited = [];
    private readonly List<ClosingWait> closing = [];
    private readonly List<WorkingCalendar> calendars = [];

    public DateTimeZone Zone { get; init; } = DateTimeZoneProviders.Tzdb["America/New_York"];

    public LocalDate Start { get; init; } = Monday;

    public ShopLimits Limits { get; init; } = new();

    public LengthFormat Lengths { get; init; } = LengthFormat.Millimetres;

    public LocalDate? Due { get; init; }

    public ExtraDates Extra { get; init; } = ExtraDates.None;

    public AJob Task(string name, double takes, Func<ShopTask, ShopTask>? with = null)
    {
        var task = new ShopTask { Id = tasks.Count, Name = name, Stage = Stage.Joinery, Timing = new TaskTiming.ByGuess(new(WorkTime.FromMinutes(takes), WorkTime.FromMinutes(takes), WorkTime.FromMinutes(takes))), WorkClass = WorkClass.Light };
        tasks.Add(with?.Invoke(task) ?? task);
        minutes.Add(takes);
        return this;
    }

    public AJob Then(string before, string after, Wait? wait = null, bool sameSession = false)
    {
        precedences.Add(new(Id(before), Id(after), "because", wait, sameSession));
        return this;
    }

    /// <summary>Waits for somebody for exactly so long, from the start of the job.</summary>
    public AJob Opening(string name, Duration wait, params string[] holds) => Awaiting(name, new(wait, wait, wait), holds: holds);

    public AJob Awaiting(string name, WaitGuess wait, string[]? after = null, LocalDate? asked = null, LocalDate? arrived = null, params string[] holds)
    {
        awaited.Add(new() { Decision = new() { Name = name, From = "client", Wait = wait, Asked = asked, Arrived = arrived, Before = holds }, After = arrived is null && asked is null ? [.. (after ?? []).Select(Id)] : [], AfterByOrder = [.. (after ?? []).Select(Id)], Holds = [.. holds.Select(Id)] });
        return this;
    }

    public AJob Closing(string after, Wait wait)
    {
        closing.Add(new(Id(after), wait));
        return this;
    }

    public AJob Worker(string hours, string quiet = "", string name = "maker", Overhead? overhead = null, LocalDate? from = null, params IsoDayOfWeek[] days)
    {
        var open = new ShopHours([DayHours.Read(hours).Value]);
        var week = days.Length > 0 ? days : [IsoDayOfWeek.Monday, IsoDayOfWeek.Tuesday, IsoDayOfWeek.Wednesday, IsoDayOfWeek.Thursday, IsoDayOfWeek.Friday];
        calendars.Add(new()
        {
            Worker = name,
            Place = new(41, -71, Zone),
            Week = new(week.ToDictionary(day => day, _ => open)),
            Extra = Extra,
            Quiet = quiet.Length == 0 ? QuietHours.None : new(DayHours.ReadOverMidnight(quiet).Value),
            Closed = from is { } first && first > Start ? new(new DateInterval(Start, first.PlusDays(-1))) : ClosedDates.None,
            Overhead = overhead ?? Overhead.None,
            LeastUseful = WorkTime.FromMinutes(10),
        });
        return this;
    }

    /// <summary>Changes the calendar of the worker named last.</summary>
    public AJob With(Func<WorkingCalendar, WorkingCalendar> change)
    {
        calendars[^1] = change(calendars[^1]);
        return this;
    }

    public OrderInHand Order(IReadOnlyList<double[]>? trials = null) => new()
    {
        Name = "the job",
        Graph = new(tasks, precedences, awaited, closing),
        Times = [.. minutes.Select(WorkTime.FromMinutes)],
        Draws = new(trials ?? [[.. minutes]], 7),
        Start = Start,
        Due = Due,
    };

    public PlanRequest Request(IReadOnlyList<double[]>? trials = null) => new()
    {
        Orders = [Order(trials)],
        Calendars = calendars.Count > 0 ? calendars : Worker("09:00-11:00").calendars,
        Limits = Limits,
        Lengths = Lengths,
        Budget = 300,
    };

    public PlanAnswer.Planned Planned(IReadOnlyList<double[]>? trials = null) => (PlanAnswer.Planned)PlanMaker.Plan(Request(trials));

    public Plan Plan() => Planned().Plan;

    public IReadOnlyList<Unplannable> Reasons() => ((PlanAnswer.CannotBePlanned)PlanMaker.Plan(Request())).Reasons;

    private int Id(string name) => tasks.Single(task => task.Name == name).Id;
}
