using ShopDays.Plans;

namespace ShopDays.Cli.Json;

/// <summary>A day on which somebody beside the first worker is needed, for other programs.</summary>
internal static class VisitJson
{
    /// <summary>The visit as an object to be written.</summary>
    public static object Of(HelperVisit visit) => new
    {
        Date = JsonAnswer.Date(visit.Date),
        visit.Worker,
        TogetherMinutes = JsonAnswer.Minutes(visit.Together),
        AloneMinutes = JsonAnswer.Minutes(visit.Alone),
        Tasks = visit.Tasks.Select(task => task.Name),
        OwnToolsFor = visit.AtOnce,
    };
}
