using ShopDays.Measures;
using ShopDays.Work;

namespace ShopDays.Cli.Files;

/// <summary>What can be wrong with a shop's own rates beyond their single values.</summary>
internal static class RateMistakes
{
    public static Finding RateTwice(Place place, string operation, string method) =>
        Finding.At(place, $"{QuotedText.Of(operation)} by the method {QuotedText.Of(method)} stands here for the second time") with { Expected = "each method of an operation once" };

    public static Finding UnitChanged(Place place, string typed, string operation, string unit) =>
        Finding.At(place, $"{QuotedText.Of(operation)} is counted in {unit}, not in {QuotedText.Of(typed)}") with { Cure = "leave the unit out, or give the operation another name" };

    public static Finding RateOutOfOrder(Place place) =>
        Finding.At(place, "the minutes for one unit do not rise") with { Expected = "low, likely and high in this order" };

    public static Finding UnknownEdge(Place place, string typed, IReadOnlyList<string> known) =>
        Finding.At(place, $"{QuotedText.Of(typed)} is not an edge") with { Expected = ValueMistakes.AnyOf(known, "edges"), Nearest = NearestName.To(typed, known) };

    public static Finding EdgeTwice(Place place, string edge) =>
        Finding.At(place, $"the edge {QuotedText.Of(edge)} stands here for the second time") with { Expected = "each edge once" };

    public static Finding EdgeIsNotHoned(Place place, string edge, string sharpenedBy) =>
        Finding.At(place, $"the {edge} is not honed as part of other work") with { Cure = $"write its minutes at the operation {QuotedText.Of(sharpenedBy)}" };

    public static Finding HoningTooLong(Place place, WorkTime honing) =>
        Finding.At(place, $"{WorkTimeText.Write(honing)} to hone one edge is grinding, not honing") with { Expected = "an hour at most" };

    public static Finding HoningOutlastsEdge(Place place, WorkTime honing, WorkTime lasts) =>
        Finding.At(place, $"{WorkTimeText.Write(honing)} of honing is more than the {WorkTimeText.Write(lasts)} of cutting that the edge lasts") with { Expected = "less than it lasts" };

    public static Finding SharpeningOutlastsEdge(Place place, CuttingEdge edge, WorkTime sharpening, WorkTime lasts) =>
        Finding.At(place, $"{WorkTimeText.Write(lasts)} of cutting is less than the {WorkTimeText.Write(sharpening)} that sharpening the edge takes") with
        {
            Expected = "more than that",
            Cure = edge.IsHoned ? "write your own 'honing' beside it where it takes less" : $"where it takes less, write the minutes of the operation {QuotedText.Of(edge.SharpenedBy)}",
        };

    public static Finding UnknownCaution(Place place, string typed, IReadOnlyList<string> known) =>
        Finding.At(place, $"{QuotedText.Of(typed)} is not a kind of caution") with { Expected = ValueMistakes.AnyOf(known, "kinds"), Nearest = NearestName.To(typed, known) };
}
