using System.Globalization;
using ShopDays.Cli.Files;
using ShopDays.Measures;
using ShopDays.Times.Trials;
using ShopDays.Work;

namespace ShopDays.Cli.Phrases;

/// <summary>The trials of a job with all that is told about them.</summary>
internal sealed record ToldTrials
{
    /// <summary>The shop and the job.</summary>
    public required ShopAndJob Read { get; init; }

    /// <summary>Which trials, and what they are worth.</summary>
    public required TrialAdvice Advice { get; init; }

    /// <summary>What the times come from.</summary>
    public required TimesBehind Behind { get; init; }

    /// <summary>Whether some of the job's tasks are done: then it is about the others.</summary>
    public required bool IsBegun { get; init; }

    /// <summary>How every trial is done.</summary>
    public static string InGeneral =>
        "For each: sharp iron, the tools set up and the gauges set beforehand, timber and sizes as stated. Let the watch run from the first stroke to the last, with the pauses that you would make anyway, and write down how much you did and how long it took; more or less than stated is as good.";

    /// <summary>How wide the range is now.</summary>
    public string Now => $"{(IsBegun ? "What is left of " : "")}{Read.Job.Name} takes between {Hours(Advice.Low)} and {Hours(Advice.High)} at the bench (four times in five): a range of {Hours(Advice.Width)}. These trials are expected to narrow it most:";

    /// <summary>The trials in words, in their order.</summary>
    public IReadOnlyList<ToldTrial> Trials => [.. Advice.Trials.Select(trial => new ToldTrial(trial, Read.Shop, Read.Located.Format, Timbers))];

    /// <summary>The cautions of all of them, each once.</summary>
    public IReadOnlyList<Caution> Cautions
    {
        get
        {
            var kinds = Trials.SelectMany(trial => trial.Cautions).Append(Caution.Always).ToHashSet(StringComparer.Ordinal);
            return [.. BuiltIn.Cautions.Where(caution => kinds.Contains(caution.Kind))];
        }
    }

    /// <summary>How much narrower a width is than now, as a share.</summary>
    public double NarrowerBy(WorkTime width) => 1 - (width / Advice.Width);

    /// <summary><c>27 %</c>.</summary>
    public string NarrowerInWords(WorkTime width) =>
        string.Create(CultureInfo.InvariantCulture, $"{Math.Round(NarrowerBy(width) * 100, MidpointRounding.AwayFromZero):0} %");

    private IReadOnlyList<string> Timbers => [.. Read.Job.Boards.Select(board => board.Species.Name).Distinct(StringComparer.Ordinal)];

    private static string Hours(WorkTime time) => WorkTimeText.Write(time);
}
