using ShopDays.Plans;

namespace ShopDays.Cli.Json;

/// <summary>The sessions in which a plan slips most easily.</summary>
internal static class SessionAtRiskJson
{
    /// <summary>The sessions of a forecast as objects to be written, that first in which it slips most often.</summary>
    public static IEnumerable<object> Of(FinishForecast forecast) => forecast.SessionsAtRisk.Select(risk => new
    {
        Start = JsonAnswer.Time(risk.Session.Start),
        End = JsonAnswer.Time(risk.Session.End),
        risk.Session.Worker,
        Tasks = risk.Ends.Select(task => task.Name),
        Slips = Share(risk.Slips),
        NotDone = Share(risk.NotDone),
    });

    private static double Share(double share) => Math.Round(share, 4, MidpointRounding.AwayFromZero);
}
