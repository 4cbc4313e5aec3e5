using ShopDays.Measures;

namespace ShopDays.Cli.Files;

/// <summary>What can be wrong with the money of a shop beyond its single values.</summary>
internal static class MoneyMistakes
{
    public static Finding RateAndWage(Place place) =>
        Finding.At(place, "a rate stands beside a wage") with { Expected = "a 'rate' as it stands, or a 'wage' to build it up from: one of them" };

    public static Finding SocialWithoutWage(Place place) =>
        Finding.At(place, "social contributions stand without a wage") with { Expected = "a 'wage' that they are a share of" };

    public static Finding MarginAndMarkup(Place place) =>
        Finding.At(place, "a markup stands beside a margin") with { Expected = "a 'margin', a share of the price, or a 'markup', a share of the cost: one of them" };

    public static Finding NothingLeftOfThePrice(Place place, decimal margin) =>
        Finding.At(place, FormattableString.Invariant($"with a margin of {margin * 100:0.##}% this leaves nothing of the price")) with { Expected = "less than 100% together" };

    public static Finding StagesAreNotAll(Place place, decimal all) =>
        Finding.At(place, FormattableString.Invariant($"the stages come to {all:0.##}% of the price")) with { Expected = "100% together" };

    public static Finding TermsElsewhere(Place place, string path) =>
        Finding.At(place, $"{QuotedText.Of(path)} is not in the shop's folder") with { Expected = "a text file there, such as terms.txt" };

    public static Finding NoTermsFile(Place place, string path, string why) =>
        Finding.At(place, $"{QuotedText.Of(path)} {why}") with { Expected = "a text file in the shop's folder" };

    public static Finding TermsTooLong(Place place, string path) =>
        Finding.At(place, $"{QuotedText.Of(path)} is too long for the terms of a quote") with { Expected = "50,000 bytes at most" };
}
