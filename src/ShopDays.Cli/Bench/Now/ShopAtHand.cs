using NodaTime;
using ShopDays.Cli.Commands;
using ShopDays.Cli.Commands.Logging;
using ShopDays.Cli.Phrases;
using ShopDays.Plans;

namespace ShopDays.Cli.Bench.Now;

/// <summary>The shop, worked out at one moment: every job in hand, and one plan of what is left of them all.</summary>
internal sealed record ShopAtHand
{
    /// <summary>What it was worked out from.</summary>
    public required StateMark From { get; init; }

    /// <summary>The shop.</summary>
    public required LogShop Shop { get; init; }

    /// <summary>The moment.</summary>
    public required Instant At { get; init; }

    /// <summary>The rates.</summary>
    public required LearnedRates Rates { get; init; }

    /// <summary>The jobs in hand, those with a date first.</summary>
    public required IReadOnlyList<JobAtHand> Jobs { get; init; }

    /// <summary>Jobs that cannot be planned as they are; their hours are in nobody's plan.</summary>
    public required IReadOnlyList<UnplannedJob> Unplanned { get; init; }

    /// <summary>The plan of what is left; null where nothing is, or where none can be made.</summary>
    public required PlanAnswer.Planned? Ahead { get; init; }

    /// <summary>The times that are asked about.</summary>
    public required IReadOnlyList<OddTime> Odd { get; init; }

    /// <summary>What stands against a plan, in sentences; none where nothing does.</summary>
    public IReadOnlyList<string> Against { get; init; } = [];

    /// <summary>A job by its name in the log; null where none in hand has it.</summary>
    public JobAtHand? Find(string? job) => Jobs.FirstOrDefault(one => one.Name == job);

    /// <summary>The job that a plan calls by its title.</summary>
    public JobAtHand Titled(string title) => Jobs.Single(one => one.Title == title);

    /// <summary>The forecast of a job; null where there is no plan.</summary>
    public FinishForecast? ForecastOf(JobAtHand job) => Ahead is { } ahead && Open.IndexOf(job) is >= 0 and var place ? ahead.Forecasts[place] : null;

    /// <summary>The jobs that are planned, in the plan's order.</summary>
    public IReadOnlyList<JobAtHand> Planned => Open;

    private List<JobAtHand> Open => field ??= [.. Jobs.Where(job => !job.IsOver)];
}

/// <summary>What the shop is worked out from: as long as it is the same, so is what was worked out.</summary>
/// <param name="Log">The number of the log's reading.</param>
/// <param name="Files">The stamp of the files.</param>
/// <param name="Span">Which ten minutes of the day it is: what is planned from now on gets old.</param>
internal sealed record StateMark(long Log, string Files, long Span);
