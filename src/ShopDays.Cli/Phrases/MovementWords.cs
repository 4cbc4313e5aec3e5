using ShopDays.Measures;
using ShopDays.Parts;
using ShopDays.Work;

namespace ShopDays.Cli.Phrases;

/// <summary>How much parts will move, in words, and what that asks of grooves, slots, tops and drawers.</summary>
internal static class MovementWords
{
    /// <summary>What the figures are for, a line each.</summary>
    public static IReadOnlyList<string> Meaning { get; } =
    [
        "Groove: a panel floats in it without glue; leave the room at either side, and let its edge reach in deep enough to stay covered when it has shrunk.",
        "Slot: a screw or button that holds it across the grain wants a slot this long at the far edge, and a tight hole at the one edge or in the middle.",
        "Top: held along its middle, each edge moves by half of both figures; nothing may be glued across it.",
        "Drawer: a front or side this wide takes the gap over it when it swells; without it, it binds in the damp season.",
    ];

    /// <summary>The part that moves most, in a line; null where none is wide.</summary>
    public static string? Most(IReadOnlyList<Movement> all, Job job, LengthFormat format) => all.MaxBy(one => one.InAll) is { } most && most.InAll > Length.Zero
        ? $"Of the parts {most.Part.Name} will move most: {By(most.InAll, format)} in all between {job.Home.Driest} and {job.Home.Dampest}; \"shopdays check\" lists the rest."
        : null;

    /// <summary>Between what moistures it was reckoned.</summary>
    public static string Range(Job job) =>
        $"Where the piece will stand its timber goes from {job.Home.Driest} at its driest to {job.Home.Dampest} at its dampest{(job.Home == MoistureRange.HeatedRoom ? ", as in a heated room" : "")}. Widths as sized; rounded up.";

    /// <summary>How its rings lie, and what it has when it is sized.</summary>
    public static string Made(Movement one)
    {
        // No meter tells tenths.
        var (driest, dampest) = (Math.Round(one.Made.Driest.Percent), Math.Round(one.Made.Dampest.Percent));
        return FormattableString.Invariant($"{(one.Sawing == BoardSawing.Quarter ? "quarter" : "plain")}-sawn, {(driest == dampest ? $"{dampest}%" : $"{driest} to {dampest}%")}");
    }

    /// <summary>By how much, rounded up to what a rule shows.</summary>
    public static string By(Length length, LengthFormat format)
    {
        var fine = format.IsInInches ? LengthFormat.Inches(32) : LengthFormat.Millimetres;
        if (length == Length.Zero)
        {
            return "none";
        }

        var rounded = fine.Rounded(length);
        return fine.Write(rounded < length ? rounded + fine.Step : rounded);
    }
}
