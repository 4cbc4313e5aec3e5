using System.Diagnostics;
using System.Globalization;
using Microsoft.Data.Sqlite;
using NodaTime;
using ShopDays.Cli.Files;
using ShopDays.Cli.Store;
using ShopDays.Logbook;
using ShopDays.Measures;
using ShopDays.Work;

namespace ShopDays.Benchmarks;

/// <summary>
/// How long the log takes with 100,000 entries: opened and its last page read, read whole, one entry added. Beside it stands a
/// bare open of the same file, in the same run.
/// </summary>
internal static class LogTimes
{
    private const int Entries = 100_000;
    private const int Runs = 15;

    public static int Print()
    {
        var folder = Directory.CreateTempSubdirectory("shopdays-log-");
        try
        {
            var shop = new ShopFolder(folder.FullName);
            var now = Instant.FromUtc(2027, 4, 17, 12, 0);
            using (var log = ShopLog.Open(shop))
            {
                log.AddAll([.. Enumerable.Range(0, Entries).Select(Entry)], now);
            }

            var path = Path.Combine(folder.FullName, ShopLog.FileName);
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{Entries:N0} entries, {new FileInfo(path).Length / 1e6:0.0} MB; milliseconds of {Runs} runs: least / median / most; each opens the file anew"));
            var bare = Row("open only", 1, () => Bare(path));
            Row("open, list the last 20", bare, () => Use(shop, log => log.Last(20).Count + log.Count()));
            Row("open, list the last 20 of a job", bare, () => Use(shop, log => log.Last(20, "job 7").Count + log.Count("job 7")));
            Row("open, read all", bare, () => Use(shop, log => log.All().Count));
            Row("open, add one, safe on the disk", bare, () => Add(shop, now));
            return 0;
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static double Row(string what, double bare, Func<int> run)
    {
        run();
        var times = new double[Runs];
        for (var index = 0; index < Runs; index++)
        {
            var watch = Stopwatch.StartNew();
            if (run() == 0)
            {
                throw new InvalidOperationException("nothing was read");
            }

            times[index] = watch.Elapsed.TotalMilliseconds;
        }

        Array.Sort(times);
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{what,-34} {times[0],8:0.00} / {times[Runs / 2],8:0.00} / {times[^1],8:0.00}   least to a bare open: {(bare == 1 ? 1 : times[0] / bare):0.0}"));
        return times[0];
    }

    private static int Bare(string path)
    {
        using var connection = new SqliteConnection($"Data Source={path};Pooling=False");
        connection.Open();
        using var command = connection.CreateCommand();
        command.CommandText = "pragma user_version";
        return Convert.ToInt32(command.ExecuteScalar(), CultureInfo.InvariantCulture);
    }

    private static int Use(ShopFolder shop, Func<ShopLog, int> use)
    {
        using var log = ShopLog.OpenToRead(shop);
        return use(log!);
    }

    private static int Add(ShopFolder shop, Instant now)
    {
        using var log = ShopLog.Open(shop);
        return (int)log.Add(Entry(Entries), now).Number;
    }

    /// <summary>One of many entries.</summary>
    public static LogEntry Entry(int index) => new()
    {
        Job = FormattableString.Invariant($"job {index % 40}"),
        Task = FormattableString.Invariant($"rip board {index % 700} into 3"),
        Work = new()
        {
            Operation = "rip",
            Method = "hand",
            Unit = "ft of cut",
            Quantity = 1 + (index % 90),
            Setups = 3,
            Covariates = new Dictionary<Covariate, double> { [Covariate.Thickness] = 1 + (index % 3), [Covariate.Hardness] = 1360 },
        },
        Took = WorkTime.FromMinutes(5 + (index % 110)),
        On = new(new LocalDate(2000, 1, 1).PlusDays(index / 11)),
        Worker = "maker",
        Finished = true,
        Note = index % 9 == 0 ? "knot near the end" : "",
    };
}
