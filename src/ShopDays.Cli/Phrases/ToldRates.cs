using NodaTime;
using ShopDays.Cli.Files;
using ShopDays.Logbook;
using ShopDays.Times;

namespace ShopDays.Cli.Phrases;

/// <summary>A shop's rates with all that is told about them, on the terminal, on paper and to other programs.</summary>
internal sealed record ToldRates
{
    /// <summary>The shop.</summary>
    public required Shop Shop { get; init; }

    /// <summary>What is known now.</summary>
    public required RateModel Model { get; init; }

    /// <summary>The rates that are shown, in the catalogue's order.</summary>
    public required IReadOnlyList<OperationRate> Rates { get; init; }

    /// <summary>The chances of spoiling a piece in the same operations, where there is any chance of it.</summary>
    public IReadOnlyList<SpoilingChance> Spoiling { get; init; } = [];

    /// <summary>Whether operations that were never timed are left out of them.</summary>
    public bool IsCutShort { get; init; }

    /// <summary>Entries that nothing is learned from.</summary>
    public required IReadOnlyList<LeftOut> LeftOut { get; init; }

    /// <summary>How many entries the log holds.</summary>
    public required int Entries { get; init; }

    /// <summary>The date by the shop's clock.</summary>
    public required LocalDate Today { get; init; }

    /// <summary>The timbers of the shop's jobs, to be named before others as hard.</summary>
    public IReadOnlyList<string> Timbers { get; init; } = [];

    /// <summary>The report card; null when nothing was timed.</summary>
    public required ReportCard? Card { get; init; }

    /// <summary>The times that are asked about.</summary>
    public IReadOnlyList<OddTime> Odd => OddTime.In(Model);

    /// <summary>The report card in words, then what work without times goes by; how to begin where nothing is timed.</summary>
    public IReadOnlyList<string> Sentences => Card is { } card
        ? [.. ReportWords.Of(card, WidthOfTables()), .. PaceWords.Of(OperationRate.Paces(Model)) is { } paces ? (string[])[paces] : []]
        : [
            "Nothing is learned yet: these are the built-in tables.",
            "Log what a task took, and every estimate learns from it: shopdays log add JOB TASK TIME. Which quarter of an hour with a watch would teach most: shopdays trial JOB.",
        ];

    /// <summary>What was left out and why, and how many times are asked about.</summary>
    public IReadOnlyList<string> NotLearnedFrom =>
    [
        .. Odd.Count == 0 ? (string[])[] : [$"{CountWords.Of(Odd.Count, "time")} so far from what was expected that {(Odd.Count == 1 ? "it is" : "they are")} held out, behind a + in the table, until you say what {(Odd.Count == 1 ? "it is" : "they are")}: shopdays log odd"],
        .. LeftOutWords.Of(LeftOut),
    ];

    /// <summary>What the figures of the table mean.</summary>
    public static string SmallPrint => "What the tables say and what is believed now is the middle, pauses between strokes and usual rest included; in joints it is the time of a practised piece. The 80 % range is of the rate itself, on an average day: a single task strays further. Under each operation stands what the figures hold for.";

    /// <summary>How one of the rates is read in this shop.</summary>
    public RateReading ReadingOf(OperationRate rate) => RateReading.Of(rate, Shop.Format);

    /// <summary>What one of the rates holds for, in words.</summary>
    public string AtOf(OperationRate rate) => PropertyWords.Of(rate.At, Shop.Format, Timbers);

    /// <summary>What the figures of the chances mean.</summary>
    public static string SpoilingSmallPrint => FormattableString.Invariant($"The chance that a piece, cut or joint has to be made again. The tables count as {SpoilingChance.PriorPieces} pieces; yours come from the log, where an entry has: --setback spoiled");

    /// <summary>Operation and method: <c>rip</c> by hand, or <c>rip, band saw</c>.</summary>
    public static string NameOf(OperationRate rate) => MethodWords.Of(rate.Operation, rate.Method);

    private double WidthOfTables()
    {
        var prior = RateModel.FromPrior(Model.Terms.Catalogue);
        // All have the same degrees of freedom, so that the one in the middle by its scale is so by its width.
        var beliefs = Model.Log.Select(one => prior.BeliefOf(one.Work.Timing)).OrderBy(belief => belief.Scale).ToList();
        var middle = beliefs[beliefs.Count / 2];
        return middle.At(0.9) / middle.At(0.1);
    }
}
