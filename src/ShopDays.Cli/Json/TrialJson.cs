using ShopDays.Cli.Phrases;

namespace ShopDays.Cli.Json;

/// <summary>The answer of <c>shopdays trial --json</c>.</summary>
internal static class TrialJson
{
    /// <summary>The trials as an object to be written.</summary>
    public static object Of(ToldTrials told) => new
    {
        HandsOnMinutes = new
        {
            P10 = JsonAnswer.Minutes(told.Advice.Low),
            P90 = JsonAnswer.Minutes(told.Advice.High),
            Width = JsonAnswer.Minutes(told.Advice.Width),
        },
        Trials = told.Trials.Select((trial, at) => new
        {
            Order = at + 1,
            Operation = trial.Ranked.Trial.Timing.Operation.Name,
            Method = trial.Ranked.Trial.Timing.Method.Name,
            Quantity = Math.Round(trial.Ranked.Trial.Timing.Quantity, 3, MidpointRounding.AwayFromZero),
            Unit = trial.Ranked.Trial.Timing.Operation.Unit.Name,
            trial.At,
            Properties = PropertiesJson.Of(trial.Ranked.Trial.Timing.Covariates),
            Minutes = new
            {
                P10 = JsonAnswer.Minutes(trial.Ranked.Trial.Cost.P10),
                P50 = JsonAnswer.Minutes(trial.Ranked.Trial.Cost.P50),
                P90 = JsonAnswer.Minutes(trial.Ranked.Trial.Cost.P90),
            },
            WidthAlone = JsonAnswer.Minutes(trial.Ranked.Alone),
            WidthTogether = JsonAnswer.Minutes(trial.Ranked.Together),
            NarrowerAlone = Math.Round(told.NarrowerBy(trial.Ranked.Alone), 4, MidpointRounding.AwayFromZero),
            NarrowerTogether = Math.Round(told.NarrowerBy(trial.Ranked.Together), 4, MidpointRounding.AwayFromZero),
            trial.How,
            trial.Cautions,
            Log = trial.Command,
        }),
        told.Cautions,
        Times = TimesJson.Of(told.Behind),
    };
}
