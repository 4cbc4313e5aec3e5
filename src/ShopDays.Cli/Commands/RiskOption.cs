using System.CommandLine;
using System.CommandLine.Parsing;
using ShopDays.Measures;

namespace ShopDays.Cli.Commands;

/// <summary>The risk at which a price is told.</summary>
internal static class RiskOption
{
    private const double Usual = 0.1;

    /// <summary>The option.</summary>
    public static Option<double?> Make() => new("--risk") { Description = "The chance of earning less than the shop's rate that you would take; 10% unless given.", CustomParser = RiskOf, HelpName = "PERCENT" };

    /// <summary>What was typed, 0 or more and less than 1, or what is usual.</summary>
    public static double Of(ParseResult parsed, Option<double?> risk) => parsed.GetValue(risk) ?? Usual;

    private static double? RiskOf(ArgumentResult typed)
    {
        var text = typed.Tokens[0].Value;
        var read = PercentText.Read(text);
        if (read.IsRead && read.Value.Value < 100)
        {
            return read.Value.Share;
        }

        typed.AddError($"{QuotedText.Of(text)} is no risk to take; expected a percentage from 0% to less than 100%, such as 10%");
        return Usual;
    }
}
