using System.Diagnostics;
using System.Text;
using Xunit;

namespace ShopDays.Cli.Tests.Running;

/// <summary>The built tool in a process of its own that goes on reading lines, and can be killed at any moment.</summary>
internal sealed class Bench : IDisposable
{
    private readonly Process process;
    private readonly List<string> said = [];
    private readonly SemaphoreSlim heard = new(0);
    private readonly Task reading;
    private readonly Task<string> complaints;

    private Bench(Process process)
    {
        this.process = process;
        complaints = process.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        reading = Task.Run(async () =>
        {
            while (await process.StandardOutput.ReadLineAsync() is { } line)
            {
                said.Add(line);
                heard.Release();
            }
        });
    }

    /// <summary>Starts it.</summary>
    public static Bench In(string folder, params IReadOnlyList<string> typed)
    {
        var start = new ProcessStartInfo("dotnet", [Path.Combine(AppContext.BaseDirectory, "shopdays.dll"), .. typed])
        {
            WorkingDirectory = folder,
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            StandardOutputEncoding = Encoding.UTF8,
            StandardErrorEncoding = Encoding.UTF8,
        };
        return new(Process.Start(start)!);
    }

    /// <summary>Types a line; a process that is gone does not hear it.</summary>
    public async Task Type(string line)
    {
        try
        {
            await process.StandardInput.WriteLineAsync(line);
            await process.StandardInput.FlushAsync();
        }
        catch (IOException)
        {
            // The pipe ends where the process was killed: the line was never read.
        }
    }

    /// <summary>Waits until it has said one line more.</summary>
    public Task Hear() => heard.WaitAsync(TestContext.Current.CancellationToken);

    /// <summary>Kills it without warning (SIGKILL), and gives all the lines that it had said.</summary>
    public async Task<IReadOnlyList<string>> Kill()
    {
        process.Kill();
        return await Ended();
    }

    /// <summary>Closes its input, and gives all that it said.</summary>
    public async Task<IReadOnlyList<string>> End()
    {
        var (exitCode, lines, error) = await EndAnyhow();
        Assert.Equal((0, ""), (exitCode, error));
        return lines;
    }

    /// <summary>Closes its input, and gives how it ended.</summary>
    public async Task<(int ExitCode, IReadOnlyList<string> Said, string Complaints)> EndAnyhow()
    {
        process.StandardInput.Close();
        var lines = await Ended();
        return (process.ExitCode, lines, (await complaints).ReplaceLineEndings("\n"));
    }

    public void Dispose()
    {
        process.Dispose();
        heard.Dispose();
    }

    private async Task<IReadOnlyList<string>> Ended()
    {
        await process.WaitForExitAsync(TestContext.Current.CancellationToken);
        await reading;
        return said;
    }
}
