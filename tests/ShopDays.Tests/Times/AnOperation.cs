using ShopDays.Measures;
using ShopDays.Parts;
using ShopDays.Work;

namespace ShopDays.Tests.Times;

/// <summary>Builds operations and tasks for tests in a few words.</summary>
internal static class AnOperation
{
    public static Operation Named(string name, double minutes = 10, double low = 5, double high = 20, PaceGroup group = PaceGroup.Sawing, double setup = 0, double rest = 0, double learning = 1, params Slope[] slopes) => new()
    {
        Name = name,
        Unit = new TradeUnit { Name = "ft" },
        Methods =
        [
            new Method
            {
                Name = "hand",
                PaceGroup = group,
                MinutesPerUnit = minutes,
                LowMinutes = low,
                HighMinutes = high,
                Slopes = slopes,
                Setup = WorkTime.FromMinutes(setup),
                SetupPer = "piece",
                WorkClass = WorkClass.Medium,
                Rest = rest,
                IsNoisy = false,
                IsSplittable = true,
                LeastUseful = WorkTime.FromMinutes(5),
                Crew = 1,
                LearningRate = learning,
                Source = "made up for a test",
            },
        ],
    };

    public static TaskTiming.ByOperation Of(this Operation operation, double quantity, double setups = 0, int batch = 1) => new()
    {
        Operation = operation,
        Method = operation.Methods[0],
        Quantity = quantity,
        Setups = setups,
        Batch = batch,
        Run = batch,
    };

    public static IReadOnlyList<ShopTask> Tasks(params TaskTiming[] timings) => [.. timings.Select((timing, id) => new ShopTask
    {
        Id = id,
        Name = FormattableString.Invariant($"task {id}"),
        Stage = Stage.Sawing,
        Timing = timing,
        WorkClass = WorkClass.Medium,
    })];

    public static TaskTiming Guess(double low, double likely, double high) => new TaskTiming.ByGuess(
        new TimeGuess(WorkTime.FromMinutes(low), WorkTime.FromMinutes(likely), WorkTime.FromMinutes(high)));
}
