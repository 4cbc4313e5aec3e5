using System.Diagnostics;
using System.Globalization;
using System.Text.RegularExpressions;
using Microsoft.Extensions.Logging;
using NodaTime;
using ShopDays.Cli.Bench;
using ShopDays.Cli.Files;
using ShopDays.Cli.Store;

namespace ShopDays.Benchmarks;

/// <summary>
/// How the pages of the bench bear it: twenty clients that ask for 200 pages a second for 30 seconds, all of them, in a shop
/// with 100,000 entries, while every five seconds a task is begun, laid aside, gone on with or logged. Requests leave by the clock, whether or not
/// those before are answered, so that a slow answer is not hidden by the next one's waiting. Server and clients share the
/// machine.
/// </summary>
internal static partial class BenchLoad
{
    private const int Entries = 100_000;
    private const int Clients = 20;
    private const int ASecond = 200;
    private const int Seconds = 30;
    private const double Limit = 100;

    private static readonly string[] Paths = ["/", "/", "/", "/job?job=writing-table", "/piece?job=writing-table&part=top", "/waits", "/rates", "/log", "/log?page=900", "/log/77"];

    public static async Task<int> Print()
    {
        var folder = Directory.CreateTempSubdirectory("shopdays-bench-");
        try
        {
            Samples.Copy("tidewater-commission", folder.FullName);
            var shop = new ShopFolder(folder.FullName);
            using (var log = ShopLog.Open(shop))
            {
                log.AddAll([.. Enumerable.Range(0, Entries).Select(LogTimes.Entry)], SystemClock.Instance.GetCurrentInstant());
            }

            await using var app = BenchServer.Build(shop, new(0, IsOpen: false), SystemClock.Instance, LogLevel.Error);
            await app.StartAsync();
            // One who taps is told on the next page what came of it, and that page waits for it a moment: those who only look are others.
            using var connections = new SocketsHttpHandler { MaxConnectionsPerServer = Clients, UseCookies = false };
            using var client = new HttpClient(connections, disposeHandler: false) { BaseAddress = new(app.Urls.Single()) };
            using var hand = new HttpClient { BaseAddress = client.BaseAddress };
            // Each page by itself first, twice: the first time it may be put together.
            foreach (var path in Paths.Distinct().SelectMany(path => (string[])[path, path]))
            {
                var watch = Stopwatch.StartNew();
                (await client.GetAsync(new Uri(path, UriKind.Relative))).EnsureSuccessStatusCode();
                Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{path,-40} {watch.Elapsed.TotalMilliseconds,10:0.0} ms"));
            }

            return await Run(client, hand);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static async Task<int> Run(HttpClient client, HttpClient hand)
    {
        var times = new double[ASecond * Seconds];
        var errors = 0;
        var watch = Stopwatch.StartNew();
        var taps = Taps(hand, watch);
        var asked = Enumerable.Range(0, times.Length).Select(async number =>
        {
            var due = TimeSpan.FromSeconds((double)number / ASecond);
            await Task.Delay(due - watch.Elapsed is { Ticks: > 0 } left ? left : TimeSpan.Zero);
            var sent = watch.Elapsed;
            using var answer = await client.GetAsync(new Uri(Paths[number % Paths.Length], UriKind.Relative));
            _ = await answer.Content.ReadAsByteArrayAsync();
            times[number] = (watch.Elapsed - sent).TotalMilliseconds;
            if (!answer.IsSuccessStatusCode)
            {
                Interlocked.Increment(ref errors);
            }
        });
        await Task.WhenAll(asked);
        var changes = await taps;
        Array.Sort(times);
        var high = times[(int)(times.Length * 0.99)];
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{times.Length:N0} pages in {watch.Elapsed.TotalSeconds:0.0} s by {Clients} clients, {Entries:N0} entries in the log, {changes} changes meanwhile, {errors} errors"));
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"milliseconds: median {times[times.Length / 2]:0.0}, 99 in 100 {high:0.0} (limit {Limit:0}), most {times[^1]:0.0}"));
        return errors == 0 && high <= Limit ? 0 : 1;
    }

    /// <summary>Begins a task, lays it aside, goes on with it and logs some of it, in turn, as a hand at the bench does.</summary>
    private static async Task<int> Taps(HttpClient hand, Stopwatch watch)
    {
        var page = await hand.GetStringAsync(new Uri("/sheet?job=writing-table", UriKind.Relative));
        var token = System.Net.WebUtility.HtmlDecode(Token().Match(page).Groups[1].Value);
        var changes = 0;
        for (; watch.Elapsed.TotalSeconds < Seconds - 2; changes++)
        {
            await Task.Delay(TimeSpan.FromSeconds(5));
            var (to, how) = (changes % 4) switch { 0 or 2 => ("/start", ""), 1 => ("/done", "pause"), _ => ("/done", "half") };
            using var form = new FormUrlEncodedContent([new("form-token", token), new("who", "maker"), new("job", "writing-table"), new("task", "fetch and stack the boards"), new("how", how), new("took", how == "half" ? "10m" : "")]);
            (await hand.PostAsync(new Uri(to, UriKind.Relative), form)).EnsureSuccessStatusCode();
        }

        return changes;
    }

    [GeneratedRegex("name=\"form-token\" value=\"([^\"]*)\"")]
    private static partial Regex Token();
}
