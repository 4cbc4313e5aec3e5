using NodaTime;
using ShopDays.Cli.Commands;
using ShopDays.Cli.Files;
using ShopDays.Cli.Store;
using ShopDays.Cli.Tests.Running;
using ShopDays.Layouts;
using ShopDays.Logbook;
using ShopDays.Measures;
using ShopDays.Plans;
using ShopDays.Work;
using Xunit;

namespace ShopDays.Cli.Tests.Commands;

/// <summary>A shop with a tray, begun on Monday 1 March 2027, whose work is logged as its plan has it, only slower or faster.</summary>
internal sealed class ATrayUnderWay : IDisposable
{
    // The same in every test: worked out once.
    private static readonly Lazy<(TaskGraph Graph, Plan Plan, IReadOnlyList<WorkTime> Times, Instant Start)> AsPlanned = new(WorkOut);

    private readonly FreshFolder folder = new FreshFolder().WithATray();
    private int logged;

    /// <summary>The job's file.</summary>
    public string Job => folder.File("jobs", "tray.yaml");

    /// <summary>Its tasks.</summary>
    public TaskGraph Graph => AsPlanned.Value.Graph;

    /// <summary>The tasks in the order of the plan.</summary>
    public IReadOnlyList<PlannedWork> InOrder { get; } =
        [.. AsPlanned.Value.Plan.Sessions.SelectMany(session => session.Work).OrderBy(work => work.Start.ToInstant()).Where(work => work.IsLastPiece)];

    /// <summary>The shop's clock: the start of the job, then the end of what was logged last.</summary>
    public Instant Now { get; private set; } = AsPlanned.Value.Start;

    /// <summary>The shop's folder.</summary>
    public FreshFolder Folder => folder;

    /// <summary>Logs the next tasks of the plan as done, each in so many times its planned time, at the end that the plan gave it.</summary>
    public ATrayUnderWay Done(int tasks, double times)
    {
        foreach (var work in InOrder.Skip(logged).Take(tasks))
        {
            Log(work.Task, AsPlanned.Value.Times[work.Task.Id] * times, work.End.ToInstant(), finished: true);
        }

        logged += tasks;
        return this;
    }

    /// <summary>Logs some time of the next task, without finishing it.</summary>
    public ATrayUnderWay Began(double times)
    {
        var work = InOrder[logged];
        Log(work.Task, AsPlanned.Value.Times[work.Task.Id] * times, work.End.ToInstant(), finished: false);
        return this;
    }

    /// <summary>Time goes by.</summary>
    public ATrayUnderWay Later(Duration time)
    {
        Now += time;
        return this;
    }

    /// <summary>Logs one entry.</summary>
    public ATrayUnderWay Log(ShopTask task, WorkTime took, Instant ended, bool finished)
    {
        Now = ended;
        using var log = ShopLog.Open(new(folder.Path));
        log.Add(
            new()
            {
                Job = "tray",
                Task = task.Name,
                Work = finished && task.Timing is TaskTiming.ByOperation by ? LoggedWork.Of(by) : null,
                Took = took,
                On = WorkedOn.At(ended, Zone),
                Worker = "maker",
                Finished = finished,
            },
            ended);
        return this;
    }

    /// <summary>Types a command about the tray.</summary>
    public Typed Type(string command, params string[] options) => Typed.At(Now, [command, Job, "--effort", "quick", .. options]);

    public void Dispose() => folder.Dispose();

    private static DateTimeZone Zone => DateTimeZoneProviders.Tzdb["Europe/London"];

    private static (TaskGraph Graph, Plan Plan, IReadOnlyList<WorkTime> Times, Instant Start) WorkOut()
    {
        using var folder = new FreshFolder().WithATray();
        var read = ShopAndJob.Read(folder.File("jobs", "tray.yaml"), folder.Path).Read!;
        var rates = LearnedRates.From([], read.Shop, read.Operations, read.Job.Start);
        var workings = new Workings(read, 1, LayoutEffort.Quick, LayoutPreference.AsPriced, rates, new(TextWriter.Null, false, false, 80, TimeProvider.System));
        var graph = Assert.IsType<OrderOfWork.Made>(workings.Order).Graph;
        var plan = Assert.IsType<PlanAnswer.Planned>(workings.PlanOf(graph)).Plan;
        return (graph, plan, WholeMinutes.Of(graph, rates.Model), read.Job.Start.AtStartOfDayInZone(Zone).ToInstant());
    }
}
