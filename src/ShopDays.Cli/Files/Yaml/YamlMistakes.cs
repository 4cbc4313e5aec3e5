using ShopDays.Measures;

namespace ShopDays.Cli.Files.Yaml;

/// <summary>What can be wrong with a file before its words mean anything.</summary>
internal static class YamlMistakes
{
    public static Finding NotUtf8(Place place) =>
        Finding.At(place, "the file is not text in UTF-8") with { Cure = "save it as UTF-8 in the editor" };

    public static Finding TooLargeAFile(Place place, long bytes, long limit) =>
        Finding.At(place, FormattableString.Invariant($"the file has {bytes:N0} bytes")) with { Expected = FormattableString.Invariant($"at most {limit:N0}") };

    public static Finding NothingInTheFile(Place place, string expected) =>
        Finding.At(place, "nothing is written in the file") with { Expected = expected };

    public static Finding SecondDocument(Place place) =>
        Finding.At(place, "a second document begins here") with { Expected = "one document in a file", Cure = "take out the line '---' or move what follows to a file of its own" };

    public static Finding TabBeforeText(Place place) =>
        Finding.At(place, "a tab stands before the text of this line") with { Expected = "spaces" };

    public static Finding CannotBeRead(Place place, string why, string cure) =>
        Finding.At(place, why) with { Cure = cure };

    public static Finding TooDeep(Place place, int limit) =>
        Finding.At(place, "lists and keys stand too deep in each other here") with { Expected = FormattableString.Invariant($"at most {limit} levels") };

    public static Finding UnknownAlias(Place place, string alias, IEnumerable<string> anchors) =>
        Finding.At(place, $"nothing above is marked {QuotedText.Of("&" + alias)}") with
        {
            Expected = "a name that is marked with & before it is repeated with *",
            Nearest = NearestName.To(alias, anchors),
        };

    public static Finding AliasInItself(Place place, string alias) =>
        Finding.At(place, $"{QuotedText.Of("*" + alias)} repeats what it is a part of");

    public static Finding TooManyAliases(Place place, int limit) =>
        Finding.At(place, "too much is repeated with * in this file") with { Expected = FormattableString.Invariant($"at most {limit} times") };

    public static Finding TooMuchRepeated(Place place, int limit) =>
        Finding.At(place, "what is repeated with * makes the file too long") with { Expected = FormattableString.Invariant($"at most {limit:N0} pieces in all") };

    public static Finding TagWithoutMeaning(Place place, string tag) =>
        Finding.At(place, $"the tag {QuotedText.Of(tag)} has no meaning here") with { Cure = "take it out; put quotes around a text that begins with !" };

    public static Finding KeyTwice(Place place, string key, Place first) =>
        Finding.At(place, FormattableString.Invariant($"the key {QuotedText.Of(key)} stands here for the second time")) with { Cure = FormattableString.Invariant($"the first is in line {first.Line}; keep one") };

    public static Finding KeyIsNoText(Place place, string shape) =>
        Finding.At(place, $"{shape} cannot be a key") with { Expected = "a word and a colon before a value" };
}
