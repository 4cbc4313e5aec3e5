using NodaTime;
using ShopDays.Cli.Files;
using ShopDays.Cli.Store;
using ShopDays.Logbook;
using ShopDays.Measures;

namespace ShopDays.Cli.Tests.Store;

/// <summary>By what sheets are read in tests: a shop of two workers with a job of two tasks.</summary>
internal static class ASheet
{
    private static readonly LoggableTask[] Tasks =
    [
        new("rip A into 2", new LoggedWork { Operation = "rip", Method = "hand", Unit = "ft of cut", Quantity = 12 }),
        new("deliver", null),
    ];

    public static SheetSettings Settings(Findings findings, string? job = null, LocalDate? date = null) => new()
    {
        Reading = new() { Findings = findings, Units = LengthUnit.Inch },
        Zone = DateTimeZoneProviders.Tzdb["Europe/London"],
        Today = new(2027, 4, 17),
        Workers = ["maker", "helper"],
        Operations = BuiltIn.Operations,
        Species = BuiltIn.Species,
        Methods = new Dictionary<string, string>(),
        Job = job,
        Date = date,
        FindTask = (named, typed) => (named, Tasks.FirstOrDefault(task => task.Name == typed), $"no task of {named} is called {QuotedText.Of(typed)}"),
    };
}
