using System.Text;
using NodaTime;
using ShopDays.Cli.Commands.Logging;
using ShopDays.Cli.Files;
using ShopDays.Cli.Phrases;
using ShopDays.Times;
using ShopDays.Work;

namespace ShopDays.Cli.Commands;

/// <summary>A shop's rates with all that is told about them.</summary>
internal static class RatesNow
{
    /// <summary>Puts it together.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="learned">What its log teaches.</param>
    /// <param name="today">The date by its clock.</param>
    /// <param name="asked">For what the rates are to be stated; where nothing is said, for what was timed most.</param>
    /// <param name="named">The operations that are wanted.</param>
    /// <param name="showAll">Whether operations that were never timed are told too.</param>
    public static ToldRates Of(LogShop shop, LearnedRates learned, LocalDate today, IReadOnlyDictionary<Covariate, double> asked, IReadOnlySet<string> named, bool showAll)
    {
        List<OperationRate> rates = [.. OperationRate.All(learned.Model, asked).Where(rate => named.Contains(rate.Operation.Name))];
        List<OperationRate> shown = [.. rates.Where(rate => showAll || rate.Entries + rate.HeldOut > 0)];
        return new()
        {
            Shop = shop.Shop,
            Model = learned.Model,
            Card = ReportCard.Of(learned.Model),
            Rates = shown,
            Spoiling = [.. learned.Spoiling.All.Where(one => (one.Prior > 0 || one.Spoiled > 0) && shown.Any(rate => rate.Operation.Name == one.Operation.Name && rate.Method.Name == one.Method.Name))],
            IsCutShort = shown.Count < rates.Count,
            LeftOut = learned.Work.LeftOut,
            Entries = learned.Entries.Count,
            Today = today,
            Timbers = TimbersOf(shop.Folder),
        };
    }

    // Several timbers share a hardness: those that the shop's jobs name are named before others. The text is enough for that,
    // also of a job that has mistakes.
    private static IReadOnlyList<string> TimbersOf(ShopFolder folder)
    {
        var jobs = string.Join('\n', folder.JobNames().Select(job => Encoding.UTF8.GetString(folder.Read(Path.Combine(ShopFolder.JobsFolderName, job + ShopFolder.JobFileEnding)).Bytes)));
        return [.. BuiltIn.Species.Names.Where(name => jobs.Contains(name, StringComparison.OrdinalIgnoreCase))];
    }
}
