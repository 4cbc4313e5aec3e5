using ShopDays.Measures;

namespace ShopDays.Cli.Files;

/// <summary>What can be wrong with a key or a single value.</summary>
internal static class ValueMistakes
{
    private const int MostNamesListed = 30;
    private const int MostLike = 3;

    public static Finding UnknownKey(Place place, string key, string section, IReadOnlyList<string> valid) =>
        Finding.At(place, $"{QuotedText.Of(key)} is not a key of {section}") with { Expected = AnyOf(valid, "keys"), Nearest = NearestName.To(key, valid) };

    public static Finding KeyMissing(Place place, string key, string section, string expected) =>
        Finding.At(place, $"{section} has no '{key}'") with { Expected = expected };

    public static Finding NotKeys(Place place, string shape, string section) =>
        Finding.At(place, $"{shape} stands where {section} should") with { Expected = "keys with values" };

    public static Finding NotAList(Place place, string shape, string line) =>
        Finding.At(place, $"{shape} stands where a list should") with { Expected = $"lines that begin with a dash, each {line}" };

    public static Finding NotOneValue(Place place, string shape, string expected) =>
        Finding.At(place, $"{shape} stands where one value should") with { Expected = expected };

    public static Finding NothingWritten(Place place, string expected) =>
        Finding.At(place, "nothing is written here") with { Expected = expected };

    public static Finding CannotBeRead(Place place, TextFault fault)
    {
        // A fault of a text names the nearest unit after what was expected.
        var parts = fault.Expected.Split("; nearest: ", 2);
        return Finding.At(place, fault.What) with { Expected = parts[0], Nearest = parts.Length == 2 ? parts[1] : null };
    }

    public static Finding NotANumber(Place place, string typed, string expected) =>
        Finding.At(place, $"{QuotedText.Of(typed)} is not a number") with { Expected = expected };

    public static Finding NotInRange(Place place, string typed, string what, string expected) =>
        Finding.At(place, $"{QuotedText.Of(typed)} cannot be {what}") with { Expected = expected };

    public static Finding NotAChoice(Place place, string typed, string noun, IReadOnlyList<string> valid) =>
        Finding.At(place, $"{QuotedText.Of(typed)} is not {noun}") with { Expected = AnyOf(valid, "names"), Nearest = NearestName.To(typed, valid) };

    public static Finding NoName(Place place, string typed) =>
        Finding.At(place, $"{QuotedText.Of(typed)} cannot be a name") with { Expected = "letters, figures and signs on one line" };

    public static Finding NameTooLong(Place place, int length, int longest) =>
        Finding.At(place, FormattableString.Invariant($"a name of {length} letters is too long")) with { Expected = FormattableString.Invariant($"{longest} at most") };

    public static Finding TextTooLong(Place place, int length, int longest) =>
        Finding.At(place, FormattableString.Invariant($"a text of {length:#,0} letters is too long")) with { Expected = FormattableString.Invariant($"{longest:#,0} at most") };

    public static Finding SaidTwiceInAList(Place place, string typed) =>
        Finding.At(place, $"{QuotedText.Of(typed)} stands here for the second time") with { Expected = "each once" };

    public static Finding WaitsOutOfOrder(Place place, string low, string likely, string high) =>
        Finding.At(place, $"the waits {low}, {likely} and {high} do not rise") with { Expected = "low, likely and high in this order, the likely one above nothing" };

    public static Finding TooLargeALength(Place place, string written, string what, string limit) =>
        Finding.At(place, $"{written} is more than {what} can be") with { Expected = $"at most {limit}" };

    public static Finding ZeroLength(Place place, string typed, string what) =>
        Finding.At(place, $"{QuotedText.Of(typed)} is nothing, for {what}") with { Expected = "more than zero" };

    /// <summary>Valid names in a sentence, in quotes where one of them holds a comma; of long lists only how many there are.</summary>
    public static string AnyOf(IReadOnlyList<string> names, string noun) => names.Count switch
    {
        0 => "none at all",
        1 => names[0],
        <= MostNamesListed => Either(names.Any(name => name.Contains(',', StringComparison.Ordinal)) ? [.. names.Select(QuotedText.Of)] : names),
        _ => FormattableString.Invariant($"one of {names.Count} {noun}"),
    };

    /// <summary>The name that was probably meant; of a list too long to be shown, failing that, up to three that share a word with what was typed.</summary>
    public static string? Nearest(string typed, IReadOnlyList<string> names)
    {
        var nearest = NearestName.To(typed, names);
        if (nearest is not null || names.Count <= MostNamesListed)
        {
            return nearest;
        }

        var words = WordsOf(typed);
        string[] like =
        [
            .. names
                .Select(name => (Name: name, Shared: WordsOf(name).Intersect(words, StringComparer.OrdinalIgnoreCase).Count()))
                .Where(one => one.Shared > 0)
                .OrderByDescending(one => one.Shared)
                .ThenBy(one => one.Name.Length)
                .ThenBy(one => one.Name, StringComparer.Ordinal)
                .Take(MostLike)
                .Select(one => one.Name),
        ];
        return like.Length == 0 ? null : Either(like);
    }

    private static string Either(IReadOnlyList<string> names) => names.Count == 1 ? names[0] : string.Join(", ", names.Take(names.Count - 1)) + " or " + names[^1];

    private static string[] WordsOf(string name) => name.Split([' ', ',', '(', ')', '-', '\''], StringSplitOptions.RemoveEmptyEntries);
}
