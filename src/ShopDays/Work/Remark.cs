using ShopDays.Measures;

namespace ShopDays.Work;

/// <summary>What a remark is about.</summary>
public enum RemarkKind
{
    /// <summary>Something is heavier than one person should lift.</summary>
    Lift,

    /// <summary>The shop does not say which clamps it has.</summary>
    Clamps,

    /// <summary>A glue-up takes longer than its adhesive allows.</summary>
    OpenTime,

    /// <summary>Work takes more people than the shop has.</summary>
    Crew,

    /// <summary>Finishes are written in an order in which they do not hold.</summary>
    FinishOrder,

    /// <summary>A part is sized, and then nothing is done with it.</summary>
    LooseEnd,

    /// <summary>A board is too wet yet, or nobody knows how wet it is.</summary>
    Dryness,

    /// <summary>The shop's nights are too cold for a glue or a coat, make it slow, or are damp.</summary>
    Nights,

    /// <summary>A part has no place in a board, so that its sawing and planing are missing.</summary>
    Unplaced,
}

/// <summary>What the maker should know before work begins, with what would cure it.</summary>
/// <param name="Kind">What it is about.</param>
/// <param name="About">The board, part or glue-up.</param>
/// <param name="Text">What is the matter, in words.</param>
/// <param name="Cure">What would help.</param>
/// <param name="Weight">What the thing weighs; zero where that does not matter.</param>
public sealed record Remark(RemarkKind Kind, string About, string Text, string Cure, Mass Weight = default)
{
    /// <summary>Whether it still matters to some work: how dry timber is does not any more when all of it is brought to size.</summary>
    /// <param name="left">What is left to do of the job.</param>
    public bool Concerns(IEnumerable<ShopTask> left) => Kind != RemarkKind.Dryness || AwaitsSize(left);

    /// <summary>Whether timber is still to be brought to size in some work.</summary>
    /// <param name="left">What is left to do of a job.</param>
    public static bool AwaitsSize(IEnumerable<ShopTask> left) => left.Any(task => task.Stage is Stage.Sawing or Stage.Dimensioning);
}
