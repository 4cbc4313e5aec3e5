using NodaTime;
using ShopDays.Cli.Files;
using ShopDays.Cli.Phrases;
using ShopDays.Cli.Terminal;
using ShopDays.Measures;
using ShopDays.Work;

namespace ShopDays.Cli.Commands.Logging;

/// <summary>The shop whose log is kept.</summary>
/// <param name="Folder">Its folder.</param>
/// <param name="Shop">What its file says.</param>
/// <param name="Operations">The operations, its own among them.</param>
internal sealed record LogShop(ShopFolder Folder, Shop Shop, OperationCatalogue Operations)
{
    /// <summary>Its zone.</summary>
    public DateTimeZone Zone => Shop.Place.Zone;

    /// <summary>Reads the shop in whose folder the maker stands; mistakes of its files are printed.</summary>
    /// <param name="screen">Where they are printed.</param>
    /// <param name="nothing">What did not come of it.</param>
    /// <returns>The shop; null when there are mistakes.</returns>
    /// <exception cref="FileTroubleException">There is no shop here.</exception>
    public static LogShop? Read(Screen screen, string nothing = "nothing was logged")
    {
        var folder = ShopFolder.MustFindFrom(Directory.GetCurrentDirectory());
        var findings = new Findings();
        var operations = RatesFile.OperationsIn(folder, findings);
        var shop = ShopFile.Read(folder.Read(ShopFolder.ShopFileName), operations, findings).Shop;
        if (findings.AreNone && shop is not null)
        {
            return new(folder, shop, operations);
        }

        SayMistakes(screen, findings.InOrder(), nothing);
        return null;
    }

    /// <summary>Prints mistakes of files, and that nothing was written.</summary>
    public static void SayMistakes(Screen screen, IReadOnlyList<Finding> findings, string nothing = "nothing was logged")
    {
        foreach (var finding in findings)
        {
            screen.Located(screen.Error, finding.Place.ToString(), finding.Message);
        }

        screen.Error.WriteLine($"{CountWords.Of(findings.Count, "mistake")}; {nothing}");
    }

    /// <summary>The worker of a name, or the first one where none is typed; null, and a complaint, when there is no such one.</summary>
    public string? WorkerOf(string? typed, Screen screen)
    {
        string[] names = [.. Shop.Workers.Select(worker => worker.Name)];
        if (typed is null)
        {
            return names[0];
        }

        if (names.FirstOrDefault(name => string.Equals(name, typed.Trim(), StringComparison.OrdinalIgnoreCase)) is { } known)
        {
            return known;
        }

        screen.Error.WriteLine(Unknown("worker of the shop", typed, names, "workers"));
        return null;
    }

    /// <summary>The date by the shop's clock.</summary>
    public LocalDate Today(IClock clock) => clock.GetCurrentInstant().InZone(Zone).Date;

    /// <summary>Whether a date is still to come, which is complained of.</summary>
    public bool IsToCome(LocalDate date, IClock clock, Screen screen)
    {
        if (date <= Today(clock))
        {
            return false;
        }

        screen.Error.WriteLine($"{DateWords.Of(date)} is still to come; today is {DateWords.Of(Today(clock))}");
        return true;
    }

    /// <summary>Says that something typed is not there, and what is.</summary>
    public static string Unknown(string noun, string typed, IReadOnlyList<string> names, string many)
    {
        var nearest = ValueMistakes.Nearest(typed, names);
        return $"no {noun} is called {QuotedText.Of(typed)}; expected {ValueMistakes.AnyOf(names, many)}" + (nearest is null ? "" : "; nearest: " + nearest);
    }
}
