using ShopDays.Measures;

namespace ShopDays.Cli.Files.Jobs;

/// <summary>What can be wrong with joints.</summary>
internal static class JointMistakes
{
    public static Finding UnknownJoint(Place place, string typed, IReadOnlyList<string> kinds) =>
        Finding.At(place, $"{QuotedText.Of(typed)} is not a kind of joint") with { Expected = ValueMistakes.AnyOf(kinds, "kinds"), Nearest = ValueMistakes.Nearest(typed, kinds) };

    public static Finding JointWithoutParts(Place place, string kind) =>
        Finding.At(place, $"{QuotedText.Of(kind)} names no parts") with { Expected = "'between' with the parts that it joins, or 'in' with the parts in which it is cut" };

    public static Finding PartsNamedTwice(Place place, string kind) =>
        Finding.At(place, $"{QuotedText.Of(kind)} has both 'between' and 'in'") with { Expected = "one of them" };

    public static Finding JointOfOnePart(Place place, string kind) =>
        Finding.At(place, $"{QuotedText.Of(kind)} joins two parts, and one is named") with { Expected = "two names in 'between'" };

    public static Finding CountedTwice(Place place, string kind) =>
        Finding.At(place, $"{QuotedText.Of(kind)} has both 'corners' and 'count'") with { Expected = "one of them" };

    public static Finding FigureMissing(Place place, string kind, string key, string example) =>
        Finding.At(place, $"{QuotedText.Of(kind)} has no '{key}'") with { Expected = example };

    public static Finding FigureWithoutUse(Place place, string kind, string key, IReadOnlyList<string> figures) =>
        Finding.At(place, $"{QuotedText.Of(kind)} has no use for '{key}'") with { Expected = ValueMistakes.AnyOf(figures, "figures") };
}
