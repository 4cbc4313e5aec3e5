using NodaTime;
using ShopDays.Cli.Files;
using ShopDays.Cli.Phrases;
using ShopDays.Layouts;
using ShopDays.Measures;
using ShopDays.Parts;
using ShopDays.Plans;
using ShopDays.Times;
using ShopDays.Work;

namespace ShopDays.Cli.Paper;

/// <summary>All that stands on the pages of a plan.</summary>
internal sealed record PlanPaper
{
    /// <summary>The shop: its name, its paper, its units, its limits and closed dates.</summary>
    public required Shop Shop { get; init; }

    /// <summary>How lengths are written for this job.</summary>
    public required LengthFormat Format { get; init; }

    /// <summary>The piece.</summary>
    public required Job Job { get; init; }

    /// <summary>Where its parts come out of the boards.</summary>
    public required Layout Layout { get; init; }

    /// <summary>Which way the layout leans.</summary>
    public LayoutPreference Preference { get; init; }

    /// <summary>Its tasks and their order.</summary>
    public required TaskGraph Graph { get; init; }

    /// <summary>The marks of its tasks, which are pencilled and typed in place of their names.</summary>
    public TaskMarks Marks
    {
        get => field ??= new(Graph.Tasks.Select(task => task.Name));
        init;
    }

    /// <summary>How long it takes at the bench.</summary>
    public required JobEstimate Estimate { get; init; }

    /// <summary>What rougher hidden faces save; null where there is nothing to tell, and where the plan is of the rest of a job.</summary>
    public string? Faces { get; init; }

    /// <summary>The range of every task, each at the task's id.</summary>
    public required IReadOnlyList<TimeRange> TaskTimes { get; init; }

    /// <summary>When what is done.</summary>
    public required Plan Plan { get; init; }

    /// <summary>When it may be finished.</summary>
    public required FinishForecast Forecast { get; init; }

    /// <summary>The cautions of every kind of work in the plan, each once, with that which always holds.</summary>
    public required IReadOnlyList<Caution> Cautions { get; init; }

    /// <summary>What the maker should know before beginning: a lift for two, clamps that are lacking.</summary>
    public required IReadOnlyList<Remark> Remarks { get; init; }

    /// <summary>How much the wide parts will move; empty where none is wide.</summary>
    public IReadOnlyList<Movement> Movements { get; init; } = [];

    /// <summary>Which boards that are cut may be brought to their final sizes, and from when.</summary>
    public IReadOnlyList<string> Verdicts { get; init; } = [];

    /// <summary>What of the promise is for pieces that may be spoiled, in sentences; none where nothing may be.</summary>
    public IReadOnlyList<string> SpoilingNotes { get; init; } = [];

    /// <summary>Hours of the shop that give no session while the plan runs, each with its dates and its reason; may be empty.</summary>
    public IReadOnlyList<string> UnusedHours { get; init; } = [];

    /// <summary>What is told where the plan is of the rest of a job; null where it is of the whole.</summary>
    public ToldRest? Rest { get; init; }

    /// <summary>The boards that are still to be cut: those to which the log has not been.</summary>
    public IReadOnlyList<BoardLayout> ToCut => [.. Layout.ToCut.Where(board => Rest?.SawnByLog.Contains(board.Board.Name) != true)];

    /// <summary>When the plan was made; passed in, so that the same plan gives the same file.</summary>
    public required Instant Made { get; init; }
}
