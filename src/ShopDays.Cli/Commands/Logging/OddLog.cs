using System.CommandLine;
using NodaTime;
using ShopDays.Cli.Json;
using ShopDays.Cli.Phrases;
using ShopDays.Cli.Terminal;

namespace ShopDays.Cli.Commands.Logging;

/// <summary><c>shopdays log odd</c>: the times that are held out until the maker says what they are.</summary>
internal sealed class OddLog(Screen screen, IClock clock)
{
    private readonly Option<bool> json = LogOptions.Json();

    public Command Describe()
    {
        var command = new Command("odd", "Show the times that are far from what was expected, and what to do about them.\nExample: shopdays log odd") { json };
        command.SetAction(parsed =>
        {
            if (LogShop.Read(screen, "nothing was looked at") is not { } shop)
            {
                return ExitCode.No;
            }

            var odd = OddTime.In(LearnedRates.Of(shop.Folder, shop.Shop, shop.Operations, clock).Model);
            if (parsed.GetValue(json))
            {
                JsonAnswer.Write(screen.Out, new { Odd = odd.Select(RatesJson.Of) });
            }
            else
            {
                RatesPrint.PrintOdd(screen, odd);
            }

            return ExitCode.Done;
        });
        return command;
    }
}
