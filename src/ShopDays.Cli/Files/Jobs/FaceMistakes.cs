using ShopDays.Measures;

namespace ShopDays.Cli.Files.Jobs;

/// <summary>What can be wrong with how far the faces of parts are taken.</summary>
internal static class FaceMistakes
{
    public static Finding RougherThanNeeded(Place place, string part, string surface, string standard, string why, string least) =>
        Finding.At(place, $"the {surface} of {QuotedText.Of(part)} is left {standard}, and {why}") with { Expected = $"{least} or finer", Nearest = least };

    public static Finding EdgeBetweenStandards(Place place, string standard) =>
        Finding.At(place, $"an edge is left from the saw or planed true, and {QuotedText.Of(standard)} lies between") with { Expected = "rough, tried or smoothed", Nearest = "tried" };
}
