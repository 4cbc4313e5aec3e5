using System.Globalization;

namespace ShopDays.Cli.Phrases;

/// <summary>Numbers of things, and things by name, the same in every culture.</summary>
internal static class CountWords
{
    /// <summary>A number that counts.</summary>
    public static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);

    /// <summary>So many of something whose name takes an s: <c>1 board</c>, <c>3 boards</c>.</summary>
    public static string Of(int number, string one) => Number(number) + " " + (number == 1 ? one : one + "s");

    /// <summary>Rising numbers with those that follow each other drawn together: <c>1, 3 to 7, 9</c>.</summary>
    public static string Runs(IReadOnlyList<int> numbers) => string.Join(", ", numbers
        .Select((number, order) => (Number: number, Run: number - order))
        .GroupBy(one => one.Run, one => one.Number)
        .Select(run => (First: run.First(), Last: run.Last()))
        .Select(run => (run.Last - run.First) switch
        {
            0 => Number(run.First),
            1 => $"{Number(run.First)}, {Number(run.Last)}",
            _ => $"{Number(run.First)} to {Number(run.Last)}",
        }));

    /// <summary>Some names in a row, cut short behind the first of them: <c>a, b and 4 more</c>.</summary>
    /// <param name="names">The names.</param>
    /// <param name="most">How many stand before the rest are only counted; a single one is still named.</param>
    public static string Names(IReadOnlyList<string> names, int most) => names.Count <= most + 1
        ? string.Join(", ", names)
        : $"{string.Join(", ", names.Take(most))} and {Number(names.Count - most)} more";
}
