using NodaTime.Text;
using ShopDays.Logbook;

namespace ShopDays.Cli.Store;

/// <summary>The words that stand for choices in the database, in exports and on the command line, and how times are written there.</summary>
internal static class LogWords
{
    /// <summary>Moments with nine places, so that their order as text is their order in time.</summary>
    public static readonly InstantPattern Moment = InstantPattern.CreateWithInvariantCulture("uuuu-MM-dd'T'HH:mm:ss.fffffffff'Z'");

    /// <summary>Dates.</summary>
    public static readonly LocalDatePattern Date = LocalDatePattern.Iso;

    /// <summary>What went wrong.</summary>
    public static readonly (string Word, Setback Value)[] Setbacks =
    [
        ("none", Setback.None),
        ("dull-edge", Setback.DullEdge),
        ("tear-out", Setback.TearOut),
        ("interrupted", Setback.Interrupted),
        ("cold", Setback.Cold),
        ("first-of-its-kind", Setback.FirstOfItsKind),
        ("spoiled", Setback.Spoiled),
    ];

    /// <summary>What the maker said of an odd time.</summary>
    public static readonly (string Word, Standing Value)[] Standings =
    [
        ("as-logged", Standing.AsLogged),
        ("kept", Standing.Kept),
        ("unusual", Standing.Unusual),
    ];

    /// <summary>What became of an entry.</summary>
    public static readonly (string Word, TraceKind Value)[] Traces =
    [
        ("corrected", TraceKind.Corrected),
        ("deleted", TraceKind.Deleted),
        ("restored", TraceKind.Restored),
    ];

    /// <summary>A choice as people write it, in the form of the words: small letters, hyphens between.</summary>
    public static string Hyphened(string typed) => string.Join('-', typed.Trim().ToLowerInvariant().Split(' ', StringSplitOptions.RemoveEmptyEntries));

    /// <summary>The word for a value.</summary>
    public static string WordOf<T>((string Word, T Value)[] words, T value) => words.Single(one => EqualityComparer<T>.Default.Equals(one.Value, value)).Word;

    /// <summary>The value of a word.</summary>
    /// <exception cref="InvalidDataException">There is no such word.</exception>
    public static T ValueOf<T>((string Word, T Value)[] words, string word)
    {
        var at = Array.FindIndex(words, one => one.Word == word);
        return at >= 0 ? words[at].Value : throw new InvalidDataException($"'{word}' means nothing in the log");
    }
}
