using ShopDays.Cli.Files;
using ShopDays.Layouts;
using ShopDays.Measures;

namespace ShopDays.Cli.Json;

/// <summary>Why there is no answer, for other programs: the same for every command that computes something of a job.</summary>
internal static class RefusalJson
{
    /// <summary>The files have mistakes.</summary>
    public static object Of(IReadOnlyList<Finding> findings) => new { Mistakes = MistakesOf(findings) };

    /// <summary>The stock does not yield every part.</summary>
    public static object Of(Layout layout, LengthFormat format) => new
    {
        layout.Fits,
        Unplaced = LayoutJson.UnplacedOf(layout, format),
        Wanted = LayoutJson.WantedOf(layout),
    };

    /// <summary>The order of work goes round.</summary>
    public static object Of(IReadOnlyList<string> goesRound) => new { GoesRound = goesRound };

    /// <summary>The shop does not say what an hour has to earn.</summary>
    public static object OfNoMoney() => new { Missing = "money" };

    /// <summary>Mistakes as objects to be written.</summary>
    public static IEnumerable<object> MistakesOf(IReadOnlyList<Finding> findings) => findings.Select(one => new
    {
        one.Place.File,
        one.Place.Line,
        one.Place.Column,
        one.Kind,
        one.What,
        one.Expected,
        one.Nearest,
        one.Cure,
        Text = one.ToString(),
    });
}
