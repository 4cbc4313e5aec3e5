using ShopDays.Measures;

namespace ShopDays.Cli.Files.Variants;

/// <summary>What can be wrong with variants beyond what their keys say of the job and the shop.</summary>
internal static class VariantMistakes
{
    public static Finding NoSuchLine(Place place, string typed, string list, IReadOnlyList<string> names) =>
        Finding.At(place, $"no line of {QuotedText.Of(list)} is called {QuotedText.Of(typed)}") with { Expected = ValueMistakes.AnyOf(names, "names"), Nearest = NearestName.To(typed, names) };

    public static Finding NoLinesByName(Place place, string list, IReadOnlyList<string> lists) =>
        Finding.At(place, $"the lines of {QuotedText.Of(list)} have no names by which to change them") with { Expected = "the whole list; by name only lines of " + ValueMistakes.AnyOf(lists, "lists") };

    public static Finding NothingIsOtherwise(Place place) =>
        Finding.At(place, "nothing is done otherwise in this variant") with { Expected = "a change, such as machine: {rip: band saw}" };

    public static Finding VariantTwice(Place place, string name, Place first) =>
        Finding.At(place, FormattableString.Invariant($"a variant is called {QuotedText.Of(name)} already")) with { Cure = FormattableString.Invariant($"the first is in line {first.Line}; name one otherwise") };
}
