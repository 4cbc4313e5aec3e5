using ShopDays.Measures;
using ShopDays.Parts;

namespace ShopDays.Cli.Files.Jobs;

/// <summary>What the boards and parts of a job weigh, and which are more than one person lifts.</summary>
internal sealed class JobWeights(Job job, Mass liftAlone)
{
    /// <summary>Whether a weight is for two.</summary>
    public bool IsHeavy(Mass weight) => weight > liftAlone;

    /// <summary>One piece of a part, at the moisture of the wettest board of its timber.</summary>
    public Mass Of(Part part) => part.Species.Weigh(
        part.Volume,
        job.Boards.Where(board => board.Species == part.Species).Select(board => board.Moisture).DefaultIfEmpty(Board.AirDry).Max());

    /// <summary>All the boards.</summary>
    public Mass AllBoards => Mass.FromKilograms(job.Boards.Sum(board => board.Weight.Kilograms));
}
