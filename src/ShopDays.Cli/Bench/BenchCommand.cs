using System.CommandLine;
using System.Globalization;
using Microsoft.AspNetCore.Builder;
using Microsoft.Extensions.Hosting;
using Microsoft.Extensions.Logging;
using NodaTime;
using ShopDays.Cli.Bench.Doors;
using ShopDays.Cli.Commands;
using ShopDays.Cli.Files;
using ShopDays.Cli.Terminal;
using ShopDays.Measures;

namespace ShopDays.Cli.Bench;

/// <summary><c>shopdays bench</c>: pages beside the work that show what is next and take the times.</summary>
internal sealed class BenchCommand(Screen screen, IClock clock) : IShopCommand
{
    private readonly Option<int> port = new("--port")
    {
        Description = "The port of the pages.",
        HelpName = "NUMBER",
        DefaultValueFactory = _ => BenchPlace.UsualPort,
        CustomParser = typed =>
        {
            var text = typed.Tokens[0].Value;
            if (int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number is >= 0 and <= 65535)
            {
                return number;
            }

            typed.AddError($"{QuotedText.Of(text)} is no port; expected a whole number between 1 and 65535, or 0 for any that is free");
            return 0;
        },
    };

    private readonly Option<bool> open = new("--open") { Description = "Let phones of the shop's network in too, by a key; otherwise this machine alone." };
    private readonly Option<bool> verbose = new("--verbose", "-v") { Description = "Say on the error stream what is asked for." };

    /// <inheritdoc/>
    public Command Describe()
    {
        var command = new Command("bench", "Serve pages beside the bench that show the day's work and take the times.\nExample: shopdays bench --open") { port, open, verbose };
        command.SetAction(async (parsed, stop) =>
        {
            var place = new BenchPlace(parsed.GetValue(port), parsed.GetValue(open));
            var folder = ShopFolder.MustFindFrom(Directory.GetCurrentDirectory());
            await using var app = BenchServer.Build(folder, place, clock, parsed.GetValue(verbose) ? LogLevel.Information : LogLevel.Error);
            try
            {
                await app.StartAsync(stop);
            }
            catch (IOException trouble)
            {
                await screen.Error.WriteLineAsync($"port {place.Port.ToString(CultureInfo.InvariantCulture)} cannot be served: {trouble.Message.TrimEnd('.')}; take another with --port");
                return ExitCode.CannotReadOrWrite;
            }

            Tell(app, place, folder);
            await app.WaitForShutdownAsync(stop);
            await screen.Out.WriteLineAsync("The bench is closed; everything that was said to be logged is.");
            return ExitCode.Done;
        });
        return command;
    }

    private void Tell(WebApplication app, BenchPlace place, ShopFolder folder)
    {
        var addresses = BenchServer.AddressesOf(app, place);
        screen.Out.WriteLine($"The bench is open at {addresses[0]}");
        if (place.IsOpen)
        {
            var key = BenchKey.Of(folder);
            foreach (var address in addresses.Skip(1))
            {
                screen.Out.WriteLine($"and for the shop's phones at {address}?{Door.KeyName}={key.Text}");
            }

            if (addresses.Count > 1)
            {
                screen.Out.WriteLine("Scan this with the phone:");
                screen.Out.WriteLine(Scanned.Of($"{addresses[1]}?{Door.KeyName}={key.Text}"));
            }

            screen.Wrapped("Whoever has the key can log and change times. What goes over the network can be read by whoever listens there: open the bench in a network of your own only.");
        }

        screen.Out.WriteLine("Ctrl+C closes it.");
        screen.Out.Flush();
    }
}
