using System.Globalization;
using ShopDays.Plans;

namespace ShopDays.Cli.Phrases;

/// <summary>How heavy work is taken.</summary>
internal static class BoutWords
{
    /// <summary><c>in 4 bouts of about 24 min, between them mark out the legs</c>.</summary>
    public static string Of(WorkBouts bouts) =>
        string.Create(CultureInfo.InvariantCulture, $"in {bouts.Count} bouts of about {bouts.Each.Minutes:0} min{(bouts.Between is { } light ? $", between them {light.Name}" : "")}");
}
