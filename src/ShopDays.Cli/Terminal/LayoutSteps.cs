using System.Globalization;
using ShopDays.Layouts;
using ShopDays.Measures;

namespace ShopDays.Cli.Terminal;

/// <summary>Hears from a search for a layout how far it has come, and says it in words.</summary>
/// <param name="say">Takes the words.</param>
/// <param name="currency">What costs are told in; null when they are not told.</param>
internal sealed class LayoutSteps(Action<Func<string>> say, Currency? currency) : IProgress<LayoutStep>
{
    /// <inheritdoc/>
    public void Report(LayoutStep value) => say(() => Words(value));

    private string Words(LayoutStep step)
    {
        var places = step.Left switch
        {
            0 => "all placed",
            1 => "1 part without a place",
            _ => string.Create(CultureInfo.InvariantCulture, $"{step.Left} parts without a place"),
        };
        var cost = currency is not null && double.IsFinite(step.Cost) ? $", {new Money((decimal)step.Cost, currency)} so far" : "";
        return string.Create(CultureInfo.InvariantCulture, $"round {step.Round} of {step.Rounds}, {places}{cost}");
    }
}
