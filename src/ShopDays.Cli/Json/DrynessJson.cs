using ShopDays.Cli.Files;
using ShopDays.Cli.Phrases;
using ShopDays.Measures;
using ShopDays.Parts;
using ShopDays.Work;

namespace ShopDays.Cli.Json;

/// <summary>How dry boards are, and how much parts will move, for other programs.</summary>
internal static class DrynessJson
{
    /// <summary>One board.</summary>
    public static object Of(Board board, ShopAndJob read)
    {
        var one = Dryness.Of(board, read.Job.Air, read.Job.Start, read.Waits);
        return new
        {
            State = one.IsKnown ? one.IsReadyOn(read.Job.Start) ? "ready" : "ready about" : "measure it",
            Basis = one.Basis switch
            {
                DrynessBasis.Reading => "reading",
                DrynessBasis.Weighings => "weighings",
                DrynessBasis.Stacked => "stacked",
                DrynessBasis.PoorWeighings => "poor weighings",
                _ => "nothing",
            },
            MoisturePercent = PercentOf(one.Moisture),
            one.On,
            AirPercent = PercentOf(one.Air),
            AirIsKnown = read.Job.Air is not null,
            ReadyFrom = one.Likely,
            one.Earliest,
            one.Latest,
            Reason = DrynessWords.Reason(one, read.Job.Air, read.Job.Start),
        };
    }

    /// <summary>The movement of wide parts.</summary>
    public static IEnumerable<object> Of(IReadOnlyList<Movement> movements, Job job) => movements.Select(one => new
    {
        Part = one.Part.Name,
        WidthMm = JsonAnswer.Millimetres(one.Part.Width),
        Sawn = one.Sawing,
        MadeAtPercent = new { Driest = PercentOf(one.Made.Driest), Dampest = PercentOf(one.Made.Dampest) },
        HomePercent = new { Driest = PercentOf(job.Home.Driest), Dampest = PercentOf(job.Home.Dampest) },
        ShrinksMm = JsonAnswer.Millimetres(one.Shrinks),
        SwellsMm = JsonAnswer.Millimetres(one.Swells),
    });

    private static double? PercentOf(MoistureContent? moisture) => moisture is { } known ? Math.Round(known.Percent, 2, MidpointRounding.AwayFromZero) : null;
}
