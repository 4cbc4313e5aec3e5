namespace ShopDays.Cli.Files.Jobs;

/// <summary>What can be wrong with what is between the maker and the client.</summary>
internal static class CommissionMistakes
{
    public static Finding NoDimension(Place place) =>
        Finding.At(place, "the dimensions say nothing") with { Expected = "width, depth or height, such as {width: 46\", depth: 23\", height: 30\"}" };
}
