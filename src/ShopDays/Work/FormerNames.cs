using System.Globalization;
using System.Text.RegularExpressions;

namespace ShopDays.Work;

/// <summary>
/// Names that tasks had in older versions. A coat was called by how many there are, <c>oil, coat 1 of 3: lid</c>: with
/// another coat in the job, those that were laid on already would have been other work.
/// </summary>
public static partial class FormerNames
{
    /// <summary>Coats of which sheets of older versions are still about; each more of them makes a slip look like an old mark.</summary>
    private const int MostCoats = 9;

    /// <summary>What a task is called today that was once called so; the name itself where that has not changed.</summary>
    public static string Today(string former) => CoatOfSome().Replace(former, ", coat $1: ");

    /// <summary>What a task may have been called in older versions; none for most.</summary>
    public static IEnumerable<string> Of(string name)
    {
        if (Coat().Match(name) is { Success: true } coat && int.TryParse(coat.Groups[1].ValueSpan, NumberStyles.None, CultureInfo.InvariantCulture, out var number))
        {
            for (var all = number; all <= MostCoats; all++)
            {
                yield return FormattableString.Invariant($"{name[..coat.Index]}, coat {number} of {all}: {name[(coat.Index + coat.Length)..]}");
            }
        }
    }

    [GeneratedRegex(", coat ([0-9]{1,3}) of [0-9]{1,3}: ", RegexOptions.CultureInvariant)]
    private static partial Regex CoatOfSome();

    [GeneratedRegex(", coat ([0-9]{1,3}): ", RegexOptions.CultureInvariant)]
    private static partial Regex Coat();
}
