using System.CommandLine;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Hosting;
using NodaTime;
using ShopDays.Cli.Bench;
using ShopDays.Cli.Commands;
using ShopDays.Cli.Commands.Logging;
using ShopDays.Cli.Terminal;

var builder = Host.CreateEmptyApplicationBuilder(new HostApplicationBuilderSettings { DisableDefaults = true });
builder.Services
    .AddSingleton<IClock>(SystemClock.Instance)
    .AddSingleton(_ => Screen.OfProcess())
    .AddSingleton<IShopCommand, NewCommand>()
    .AddSingleton<IShopCommand, CheckCommand>()
    .AddSingleton<IShopCommand, LayoutCommand>()
    .AddSingleton<IShopCommand, MaterialsCommand>()
    .AddSingleton<IShopCommand, EstimateCommand>()
    .AddSingleton<IShopCommand, PlanCommand>()
    .AddSingleton<IShopCommand, PriceCommand>()
    .AddSingleton<IShopCommand, CompareCommand>()
    .AddSingleton<IShopCommand>(services => new LogCommand(services.GetRequiredService<Screen>(), services.GetRequiredService<IClock>(), args.Contains("log")))
    .AddSingleton<IShopCommand, ProgressCommand>()
    .AddSingleton<IShopCommand, OrdersCommand>()
    .AddSingleton<IShopCommand, RatesCommand>()
    .AddSingleton<IShopCommand, TrialCommand>()
    .AddSingleton<IShopCommand, BenchCommand>();
using var host = builder.Build();

var screen = host.Services.GetRequiredService<Screen>();
var root = new RootCommand("From a parts list and the boards on hand to a cutting layout, honest times and a plan in working days.");
foreach (var command in host.Services.GetServices<IShopCommand>())
{
    root.Add(command.Describe());
}

return CommandLine.Run(root, args, screen);
