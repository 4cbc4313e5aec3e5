using System.Diagnostics;
using System.Globalization;

namespace ShopDays.Benchmarks;

/// <summary>
/// Starts the built executable as a user does, a fresh process each time, and prints how long a whole plan takes
/// beside a start that does nothing. Runs alternate, so that a busy machine slows both.
/// </summary>
internal static class ColdRun
{
    public static int Print(int runs)
    {
        var root = RepositoryRoot();
        var jobs = Directory.GetFiles(Path.Combine(root, "sample-projects"), "*.yaml", SearchOption.AllDirectories)
            .Where(file => Path.GetFileName(Path.GetDirectoryName(file)) == "jobs")
            .Order(StringComparer.Ordinal)
            .ToList();
        var pdf = Path.Combine(Path.GetTempPath(), $"shopdays-cold-{Environment.ProcessId}.pdf");
        Console.WriteLine($"{runs} runs of each, fresh processes, alternating; seconds as least / median / most");
        foreach (var job in jobs)
        {
            var starts = new double[runs];
            var plans = new double[runs];
            for (var run = 0; run < runs; run++)
            {
                starts[run] = Seconds("--version");
                plans[run] = Seconds("plan", job, "--pdf", pdf);
            }

            File.Delete(pdf);
            Array.Sort(starts);
            Array.Sort(plans);
            Console.WriteLine(string.Create(
                CultureInfo.InvariantCulture,
                $"{Path.GetRelativePath(root, job),-58} plan with PDF {Three(plans)}   bare start {Three(starts)}   ratio of medians {plans[runs / 2] / starts[runs / 2]:0.0}"));
        }

        return 0;
    }

    private static string Three(double[] sorted) => string.Create(
        CultureInfo.InvariantCulture, $"{sorted[0]:0.00} / {sorted[sorted.Length / 2]:0.00} / {sorted[^1]:0.00}");

    private static double Seconds(params string[] arguments)
    {
        var start = new ProcessStartInfo("dotnet", [Path.Combine(AppContext.BaseDirectory, "shopdays.dll"), .. arguments])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        var watch = Stopwatch.StartNew();
        using var process = Process.Start(start) ?? throw new InvalidOperationException("the executable did not start");
        var complaint = process.StandardError.ReadToEndAsync();
        process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return process.ExitCode == 0
            ? watch.Elapsed.TotalSeconds
            : throw new InvalidOperationException($"shopdays {string.Join(' ', arguments)} ended with {process.ExitCode}: {complaint.Result}");
    }

    private static string RepositoryRoot()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "ShopDays.sln")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName ?? throw new InvalidOperationException("run this from a checkout");
    }
}
