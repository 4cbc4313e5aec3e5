using NodaTime;
using ShopDays.Cli.Files;
using ShopDays.Parts;
using ShopDays.Work;

namespace ShopDays.Cli.Store;

/// <summary>By what a sheet is read.</summary>
internal sealed record SheetSettings
{
    /// <summary>Units, and where mistakes go.</summary>
    public required Reading Reading { get; init; }

    /// <summary>The shop's zone.</summary>
    public required DateTimeZone Zone { get; init; }

    /// <summary>The date by the shop's clock.</summary>
    public required LocalDate Today { get; init; }

    /// <summary>The shop's workers; the first is meant where none is named.</summary>
    public required IReadOnlyList<string> Workers { get; init; }

    /// <summary>The operations.</summary>
    public required OperationCatalogue Operations { get; init; }

    /// <summary>The timbers.</summary>
    public required SpeciesTable Species { get; init; }

    /// <summary>The shop's usual methods.</summary>
    public required IReadOnlyDictionary<string, string> Methods { get; init; }

    /// <summary>The job of rows that name none; null for none.</summary>
    public string? Job { get; init; }

    /// <summary>The date of rows without one; null for none.</summary>
    public LocalDate? Date { get; init; }

    /// <summary>Finds a task of a job by what is written in a row: the job as the log calls it and the task, or the complaint.</summary>
    public required Func<string, string, (string Job, LoggableTask? Task, string Complaint)> FindTask { get; init; }
}
