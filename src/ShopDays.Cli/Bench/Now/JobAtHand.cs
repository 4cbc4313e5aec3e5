using NodaTime;
using ShopDays.Cli.Commands;
using ShopDays.Cli.Files;
using ShopDays.Cli.Phrases;
using ShopDays.Plans;
using ShopDays.Times;
using ShopDays.Work;

namespace ShopDays.Cli.Bench.Now;

/// <summary>A job in hand, worked out.</summary>
/// <param name="Title">What it is called among the others.</param>
/// <param name="Workings">Its layout, order of work and rates.</param>
/// <param name="Graph">Its whole order of work.</param>
/// <param name="Standing">How it stands by its log, and what is left.</param>
/// <param name="Unrecorded">What would have been promised of it; for where no promise is on record.</param>
internal sealed record JobAtHand(string Title, Workings Workings, TaskGraph Graph, JobNow Standing, Lazy<Promise?> Unrecorded)
{
    /// <summary>The shop and the job.</summary>
    public ShopAndJob Read => Workings.Read;

    /// <summary>What it is called in the log and in addresses of pages.</summary>
    public string Name => Read.LogName;

    private readonly Lazy<ToldProgress?> progress = new(() => ProgressNow.Of(Workings, Graph, Standing, Standing.At, Standing.Record.Promises.Count > 0 ? null : Unrecorded.Value));

    /// <summary>How it stands against its promise, and what moved its finish; null while that is not worked out, or where it could never be planned.</summary>
    public ToldProgress? Told => progress.IsValueCreated ? progress.Value : null;

    /// <summary>Works out what moved its finish, which takes several plans.</summary>
    public void WorkOutProgress() => _ = progress.Value;

    /// <summary>The date by the end of which it should be finished, and whether that was promised; null for none.</summary>
    public (LocalDate Date, bool IsPromised)? Due =>
        Standing.Record.Promises is [.., { P80: { } promised }] ? (promised.InZone(Read.Shop.Place.Zone).Date, true)
        : Read.Job.Due is { } due ? (due, false)
        : null;

    /// <summary>The marks of its tasks.</summary>
    public TaskMarks Marks { get; } = new(Graph.Tasks.Select(task => task.Name));

    /// <summary>How long each task that is left may take, by its name; drawn at once, for every page asks for them.</summary>
    public IReadOnlyDictionary<string, TimeRange> Ranges { get; } = Standing.Left.Graph.Tasks.ToDictionary(task => task.Name, task => Standing.Draws.Of(task.Id), StringComparer.Ordinal);

    /// <summary>Whether nothing is left to do, nor to wait for.</summary>
    public bool IsOver => Standing.Left is { Graph.Tasks.Count: 0, UnderWay: { Waits.Count: 0, Held.Count: 0 } };

    /// <summary>A task by its name; null where the job has none of that name.</summary>
    public ShopTask? Find(string task) => Graph.Tasks.FirstOrDefault(one => one.Name == task);
}

/// <summary>A job that cannot be worked out as it is.</summary>
/// <param name="Name">What it is called in the log.</param>
/// <param name="Why">Each reason, a sentence; with its place in a file where it has one.</param>
internal sealed record UnplannedJob(string Name, IReadOnlyList<string> Why);
