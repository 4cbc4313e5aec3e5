using NodaTime;
using ShopDays.Logbook;
using ShopDays.Plans;
using ShopDays.Work;

namespace ShopDays.Cli.Phrases;

/// <summary>What is told of a plan that is of the rest of a job, not of the whole.</summary>
internal sealed record ToldRest
{
    /// <summary>The moment from which it is planned.</summary>
    public required ZonedDateTime From { get; init; }

    /// <summary>The date with which the job begins, or should have begun.</summary>
    public required LocalDate Start { get; init; }

    /// <summary>How far the job's tasks have come.</summary>
    public required JobStanding Standing { get; init; }

    /// <summary>What is left.</summary>
    public required RemainingWork Left { get; init; }

    /// <summary>Where the maker stopped last; null where nothing is noted that still holds.</summary>
    public StoppedNote? Stopped { get; init; }

    /// <summary>How far the finish moved since it was promised; null where nothing is on record as promised.</summary>
    public MovedFinish? Moved { get; init; }

    /// <summary>Why, that first which moved it most.</summary>
    public IReadOnlyList<MovedRow> Why { get; init; } = [];

    /// <summary>Boards of which all sawing is done by the log though they are not recorded as sawn: nobody needs their pictures any more.</summary>
    public IReadOnlySet<string> SawnByLog => field ??= SawnIn(Standing);

    /// <summary>Whether nothing is left to do.</summary>
    public bool IsDone => Left.Graph.Tasks.Count == 0;

    /// <summary>How much of the job is planned: from when, and what is done.</summary>
    public string Said
    {
        get
        {
            if (!Standing.IsBegun)
            {
                return $"Planned as a whole, from {DateWords.Of(From)} on: it should have begun on {DateWords.Of(Start)}, and nothing of it is logged.";
            }

            var (done, half) = (Standing.In(TaskState.Done).Count, Standing.In(TaskState.HalfDone).Count);
            var begun = half == 0 ? "" : $", {CountWords.Number(half)} half done";
            return $"Planned from {DateWords.Of(From)} on: {CountWords.Number(done)} of {CountWords.Of(Standing.Tasks.Count, "task")} {(done == 1 ? "is" : "are")} done{begun}.";
        }
    }

    private static HashSet<string> SawnIn(JobStanding standing) =>
    [
        .. standing.Tasks
            .Where(one => one.Task is { Stage: Stage.Sawing, Board: not null })
            .GroupBy(one => one.Task.Board!, StringComparer.Ordinal)
            .Where(board => board.All(one => one.State == TaskState.Done))
            .Select(board => board.Key),
    ];
}
