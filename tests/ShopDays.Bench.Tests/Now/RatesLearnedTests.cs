using NodaTime;
using ShopDays.Cli.Bench.Now;
using ShopDays.Cli.Commands;
using ShopDays.Cli.Files;
using ShopDays.Cli.Store;
using ShopDays.Cli.Tests.Commands;
using ShopDays.Cli.Tests.Running;
using ShopDays.Logbook;
using ShopDays.Measures;
using ShopDays.Work;
using Xunit;

namespace ShopDays.Bench.Tests.Now;

/// <summary>What was learned is kept as long as it would be learned the same, and no longer.</summary>
public sealed class RatesLearnedTests : IDisposable
{
    private static readonly LocalDate Today = new(2027, 3, 1);
    private static readonly Instant Noon = Instant.FromUtc(2027, 3, 1, 12, 0);

    private readonly FreshFolder folder = new();
    private readonly RatesLearned learned;
    private readonly ShopAndJob read;

    public RatesLearnedTests()
    {
        folder.WithShop(ATrayShop.Shop).WithJob("tray", ATrayShop.Job);
        read = ShopAndJob.Read(Path.Combine(folder.Path, "jobs", "tray.yaml"), folder.Path, Noon).Read!;
        learned = new(new(folder.Path));
    }

    [Fact]
    public void Work_that_is_begun_or_laid_aside_teaches_nothing_new()
    {
        Log(Rip(20));
        var before = Rates();
        using (var log = ShopLog.Open(new(folder.Path)))
        {
            log.Begun.Start(new() { Worker = "maker", Job = "tray", Task = "rip T1", Began = Noon });
            log.Begun.Pause("maker", Noon + Duration.FromMinutes(10), null);
        }

        Assert.Same(before, Rates());
    }

    [Fact]
    public void A_new_entry_is_learned_from_as_if_all_were_read_afresh()
    {
        Log(Rip(20), Rip(25));
        Rates();
        Log(Rip(90));
        AssertFresh();
    }

    [Fact]
    public void An_entry_that_is_corrected_or_taken_out_or_of_an_earlier_date_is_seen()
    {
        var first = Log(Rip(20), Rip(25), Rip(22))[0];
        Rates();
        Change(log => log.Change(first, entry => entry with { Took = WorkTime.FromMinutes(60) }, Noon, "slip"));
        AssertFresh();
        Change(log => log.Delete(first, Noon, ""));
        AssertFresh();
        Log(Rip(30) with { On = new(Today.PlusDays(-9)) });
        AssertFresh();
    }

    [Fact]
    public void Another_day_or_other_files_teach_anew()
    {
        Log(Rip(20));
        var before = Rates();
        Assert.NotSame(before, learned.Of(read.Shop, read.Operations, "as they are", Today.PlusDays(1)));
        Assert.NotSame(Rates(), learned.Of(read.Shop, read.Operations, "others", Today));
    }

    [Fact]
    public void What_was_known_before_a_job_was_begun_is_learned_once_and_again_when_it_has_changed()
    {
        var first = Log(Rip(20) with { Job = "chest" })[0];
        Log(Rip(30));
        var before = Rates().Before(read);
        Log(Rip(35));
        Assert.Same(before, Rates().Before(read));

        Change(log => log.Change(first, entry => entry with { Took = WorkTime.FromMinutes(55) }, Noon, "slip"));
        var after = Rates().Before(read);
        Assert.NotSame(before, after);
        Assert.Equal(55, after.Entries.Single().Took.Minutes);
    }

    public void Dispose() => folder.Dispose();

    private static LogEntry Rip(double minutes) => new()
    {
        Job = "tray",
        Task = FormattableString.Invariant($"rip {minutes}"),
        Work = new() { Operation = "rip", Method = "hand", Unit = "ft of cut", Quantity = 4, Setups = 1, Covariates = new Dictionary<Covariate, double> { [Covariate.Thickness] = 1, [Covariate.Hardness] = 1290 } },
        Took = WorkTime.FromMinutes(minutes),
        On = new(Today.PlusDays(-1)),
        Worker = "maker",
        Finished = true,
    };

    private LearnedRates Rates() => learned.Of(read.Shop, read.Operations, "as they are", Today);

    private IReadOnlyList<EntryId> Log(params LogEntry[] entries)
    {
        using var log = ShopLog.Open(new(folder.Path));
        return log.AddAll(entries, Noon);
    }

    private void Change(Func<ShopLog, object?> change)
    {
        using var log = ShopLog.Open(new(folder.Path));
        Assert.NotNull(change(log));
    }

    private void AssertFresh()
    {
        using var log = ShopLog.Open(new(folder.Path));
        var fresh = LearnedRates.From(log.All(), read.Shop, read.Operations, Today);
        var kept = Rates();
        Assert.Equal(fresh.Entries, kept.Entries);
        Assert.Equal(Told(fresh), Told(kept));

        static IReadOnlyList<double> Told(LearnedRates rates) => [.. rates.Model.Log.Select(one => one.Expected.Location)];
    }
}
