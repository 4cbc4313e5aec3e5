using System.Diagnostics;
using Microsoft.Extensions.Logging;
using NodaTime;
using ShopDays.Cli.Bench;
using ShopDays.Cli.Files;
using ShopDays.Cli.Store;
using ShopDays.Measures;

namespace ShopDays.Benchmarks;

/// <summary>
/// The picture of the bench's day page in the README: the writing table on its sixth morning, with one task half way. Taken
/// by a Chromium without a screen, as large as a phone.
/// </summary>
internal static class BenchPicture
{
    private static readonly Instant Morning = Instant.FromUtc(2027, 4, 17, 12, 32);

    private static readonly TimeSpan Longest = TimeSpan.FromMinutes(1);

    public static async Task<int> Take(string file)
    {
        var folder = Directory.CreateTempSubdirectory("shopdays-picture-");
        try
        {
            Samples.Copy("tidewater-commission", folder.FullName);
            File.Delete(Path.Combine(folder.FullName, "jobs", "oilskin-rack.yaml"));
            var shop = new ShopFolder(folder.FullName);
            Work(shop);
            await using var app = BenchServer.Build(shop, new(0, IsOpen: false), new Still(Morning), LogLevel.Error);
            await app.StartAsync();
            using var shot = Process.Start(new ProcessStartInfo("chromium", ["--headless", "--no-sandbox", "--disable-gpu", "--hide-scrollbars", "--force-device-scale-factor=2", "--window-size=390,1180", $"--screenshot={Path.GetFullPath(file)}", app.Urls.Single() + "/"]) { RedirectStandardError = true })!;
            var said = shot.StandardError.ReadToEndAsync();
            if (await Task.WhenAny(said, Task.Delay(Longest)) != said)
            {
                shot.Kill(entireProcessTree: true);
                await Console.Error.WriteLineAsync("no picture was taken within a minute");
                return 1;
            }

            await shot.WaitForExitAsync();
            return shot.ExitCode;
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static void Work(ShopFolder shop)
    {
        using var log = ShopLog.Open(shop);
        (string Task, int Minutes)[] done = [("draw it up and send the sketch", 105), ("fetch and stack the boards", 22), ("choose and chalk out all parts", 38)];
        foreach (var (task, minutes) in done)
        {
            log.Add(new() { Job = "writing-table", Task = task, Took = WorkTime.FromMinutes(minutes), On = new(new LocalDate(2027, 4, 15)), Worker = "maker", Finished = true, Stopped = task.StartsWith("choose", StringComparison.Ordinal) ? "A2 on the trestles, best face up" : "" }, Morning);
        }

        log.Begun.Start(new() { Worker = "maker", Job = "writing-table", Task = "crosscut A2, cuts 1-2", Began = Morning - Duration.FromMinutes(6) });
    }

    /// <summary>A clock that stands still.</summary>
    private sealed class Still(Instant at) : IClock
    {
        public Instant GetCurrentInstant() => at;
    }
}
