using System.Diagnostics;
using System.Globalization;
using System.Text;
using System.Threading.Channels;
using ShopDays.Logbook;

namespace ShopDays.Cli.Tests.Running;

/// <summary><c>shopdays log add --timed -</c> in a process of its own, fed with lines; it can be killed at any moment.</summary>
internal sealed class AddingLines : IDisposable
{
    private readonly Process process;
    private readonly Channel<string> feed = Channel.CreateUnbounded<string>();
    private readonly Task feeding;
    private readonly Task<string> error;
    private readonly List<EntryId> acknowledged = [];

    private AddingLines(Process process, CancellationToken stop)
    {
        this.process = process;
        feeding = FeedAll(stop);
        error = process.StandardError.ReadToEndAsync(stop);
    }

    /// <summary>The numbers that it has said are logged, in the order in which it said so.</summary>
    public IReadOnlyList<EntryId> Acknowledged => acknowledged;

    public static AddingLines In(string folder, CancellationToken stop)
    {
        var start = new ProcessStartInfo("dotnet", [Path.Combine(AppContext.BaseDirectory, "shopdays.dll"), "log", "add", "--timed", "-"])
        {
            WorkingDirectory = folder,
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            StandardOutputEncoding = Encoding.UTF8,
        };
        return new(Process.Start(start)!, stop);
    }

    /// <summary>The line of a piece of work whose note is this mark.</summary>
    public void Feed(string mark) => feed.Writer.TryWrite($"rip 12 m 20m # {mark}");

    /// <summary>Nothing more comes.</summary>
    public void FeedNoMore() => feed.Writer.TryComplete();

    /// <summary>Waits until so many are acknowledged, or the process has ended.</summary>
    public async Task WaitFor(int count, CancellationToken stop)
    {
        while (acknowledged.Count < count && await process.StandardOutput.ReadLineAsync(stop) is { } line)
        {
            Take(line);
        }
    }

    /// <summary>Ends it without a word (SIGKILL), and hears what it had said by then.</summary>
    public async Task Kill(CancellationToken stop)
    {
        process.Kill();
        feed.Writer.TryComplete();
        var rest = await process.StandardOutput.ReadToEndAsync(stop);

        // What stands behind the last line's end was cut off in the middle: it is no acknowledgement.
        foreach (var line in rest.Split('\n')[..^1])
        {
            Take(line);
        }

        await process.WaitForExitAsync(stop);
        await feeding;
    }

    /// <summary>Waits until it has ended by itself.</summary>
    /// <returns>Its exit code and what it complained of.</returns>
    public async Task<(int ExitCode, string Error)> End(CancellationToken stop)
    {
        feed.Writer.TryComplete();
        await WaitFor(int.MaxValue, stop);
        await process.WaitForExitAsync(stop);
        return (process.ExitCode, await error);
    }

    public void Dispose()
    {
        if (!process.HasExited)
        {
            process.Kill();
        }

        process.Dispose();
    }

    private void Take(string line)
    {
        var colon = line.IndexOf(':', StringComparison.Ordinal);
        acknowledged.Add(new(long.Parse(line.AsSpan(0, colon), NumberStyles.None, CultureInfo.InvariantCulture)));
    }

    private async Task FeedAll(CancellationToken stop)
    {
        try
        {
            await foreach (var line in feed.Reader.ReadAllAsync(stop))
            {
                await process.StandardInput.WriteLineAsync(line.AsMemory(), stop);
                await process.StandardInput.FlushAsync(stop);
            }

            process.StandardInput.Close();
        }
        catch (IOException)
        {
            // It was killed with lines still on their way: they were never acknowledged.
        }
    }
}
