using NodaTime;
using ShopDays.Measures;

namespace ShopDays.Cli.Files.Jobs;

/// <summary>What can be wrong with how dry stock is said to be.</summary>
internal static class DryingMistakes
{
    public static Finding StillToCome(Place place, string what, LocalDate on, LocalDate today) =>
        Finding.At(place, $"{what} {on:uuuu'-'MM'-'dd}, which is still to come") with { Expected = $"a date up to today, {today:uuuu'-'MM'-'dd}" };

    public static Finding BeforeItWasStacked(Place place, string what, LocalDate on, LocalDate since) =>
        Finding.At(place, $"it was {what} on {on:uuuu'-'MM'-'dd}, before it was stacked on {since:uuuu'-'MM'-'dd}") with { Expected = "a later date, or an earlier 'since'" };

    public static Finding DateOfNothing(Place place) =>
        Finding.At(place, "a date of reading, and no moisture that was read") with { Expected = "'moisture' beside it, such as 12%" };

    public static Finding WeighedTwice(Place place, LocalDate on, Place first) =>
        Finding.At(place, $"it was weighed on {on:uuuu'-'MM'-'dd} already") with { Cure = FormattableString.Invariant($"it is in line {first.Line}; keep one of the two") };

    public static Finding DrierAtItsDampest(Place place, MoistureContent driest, MoistureContent dampest) =>
        Finding.At(place, $"{dampest} at its dampest is drier than {driest} at its driest") with { Expected = "the higher of the two as the dampest" };

    public static Finding NoWeight(Place place) =>
        Finding.At(place, "a board that weighs nothing") with { Expected = "a weight above 0" };

    public static Finding DrierThanAKilnDries(Place place, string typed) =>
        Finding.At(place, $"{QuotedText.Of(typed)} is drier than any kiln leaves a board") with { Expected = "3% or more", Cure = "leave it out when nothing was read" };

    public static Finding GainedTooMuch(Place place, double share, LocalDate since, MoistureContent air) =>
        Finding.At(place, FormattableString.Invariant($"it is {100 * share:0} % heavier than on {since:uuuu'-'MM'-'dd}, more than air that brings timber to {air} gives to the driest board")) with { Cure = "weigh the same piece each time; of timber that got wet keep only the weights after that" };
}
