using System.Globalization;

namespace ShopDays.Cli.Commands.Logging;

/// <summary>Numbers as they are typed at the command line: a point for decimals, whatever the country.</summary>
internal static class TypedNumber
{
    /// <summary>Reads a finite number.</summary>
    public static bool TryRead(string text, out double number) =>
        double.TryParse(text, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out number) && double.IsFinite(number);
}
