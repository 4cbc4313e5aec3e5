using NodaTime;
using ShopDays.Logbook;
using ShopDays.Measures;
using ShopDays.Times;
using ShopDays.Work;

namespace ShopDays.Tests.Times;

/// <summary>Builds logs for tests in a few words.</summary>
internal static class TimedLog
{
    public const string Maker = "maker";

    public static readonly LocalDate Day = new(2026, 10, 17);

    public static readonly Learning How = new(Day, Maker);

    public static TimedWork Took(this TaskTiming.ByOperation timing, double minutes, string worker = Maker, int daysAgo = 0, bool kept = false) => new()
    {
        Timing = timing,
        Took = WorkTime.FromMinutes(minutes),
        On = Day.PlusDays(-daysAgo),
        Worker = worker,
        Task = timing.Operation.Name,
        IsKept = kept,
        Entries = [new EntryId(1)],
    };

    public static RateModel Learned(OperationCatalogue catalogue, params TimedWork[] log) => RateModel.FromPrior(catalogue).Learn(log, How);
}
