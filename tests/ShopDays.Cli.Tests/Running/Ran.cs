using System.Diagnostics;
using System.Text;
using System.Text.Json;
using Xunit;

namespace ShopDays.Cli.Tests.Running;

/// <summary>The built tool, run in a process of its own as a maker runs it, and what came of it.</summary>
internal sealed record Ran(int ExitCode, string Out, string Error)
{
    private const string Tool = "shopdays.dll";

    /// <summary>The answer of a run with <c>--json</c>.</summary>
    public JsonElement ReadJson()
    {
        using var document = JsonDocument.Parse(Out);
        return document.RootElement.Clone();
    }

    /// <summary>Runs it in a folder.</summary>
    public static Task<Ran> In(string folder, params IReadOnlyList<string> typed) => In(folder, new Dictionary<string, string>(), typed);

    /// <summary>Runs it in a folder, with some of the environment changed.</summary>
    public static async Task<Ran> In(string folder, IReadOnlyDictionary<string, string> environment, params IReadOnlyList<string> typed)
    {
        var start = new ProcessStartInfo("dotnet")
        {
            WorkingDirectory = folder,
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            StandardOutputEncoding = Encoding.UTF8,
            StandardErrorEncoding = Encoding.UTF8,
        };
        start.ArgumentList.Add(Path.Combine(AppContext.BaseDirectory, Tool));
        foreach (var word in typed)
        {
            start.ArgumentList.Add(word);
        }

        // Where a terminal promises colours, a pipe still has none.
        start.Environment["TERM"] = "xterm-256color";
        foreach (var (name, value) in environment)
        {
            start.Environment[name] = value;
        }

        using var process = Process.Start(start)!;
        process.StandardInput.Close();
        var output = process.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);
        var error = process.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        await process.WaitForExitAsync(TestContext.Current.CancellationToken);
        return new(process.ExitCode, (await output).ReplaceLineEndings("\n"), (await error).ReplaceLineEndings("\n"));
    }

    /// <summary>The same run, which must have gone well and said nothing on the error stream.</summary>
    public Ran WentWell()
    {
        Assert.Equal((0, ""), (ExitCode, Error));
        return this;
    }

    /// <summary>The lines of the error stream.</summary>
    public IReadOnlyList<string> Complaints => Error.Split('\n', StringSplitOptions.RemoveEmptyEntries);
}
