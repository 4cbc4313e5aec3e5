using System.Globalization;
using ShopDays.Plans;

namespace ShopDays.Tests.Outside;

/// <summary>A published scheduling problem: activities that go on by themselves and share four resources.</summary>
internal sealed record PsplibInstance(ScheduleProblem Problem, int CriticalPath)
{
    public static PsplibInstance Read(string name)
    {
        var lines = File.ReadAllLines(Path.Combine(AppContext.BaseDirectory, "Outside", "data", "psplib", name + ".sm"));
        var precedences = Numbers(lines, "PRECEDENCE RELATIONS").SelectMany(row => row.Skip(3).Select(after => new CompiledPrecedence(row[0] - 1, after - 1)));
        var capacities = Numbers(lines, "RESOURCEAVAILABILITIES")[0];
        var tasks = Numbers(lines, "REQUESTS/DURATIONS").Select(row => new CompiledTask
        {
            Minutes = row[2],
            Crew = 0,
            Holds = [.. row.Skip(3).Select((count, resource) => new Hold(resource, resource, count)).Where(hold => hold.Count > 0)],
        });
        var criticalPath = Numbers(lines, "PROJECT INFORMATION")[0][5];
        return new(new([.. tasks], [.. precedences], [], capacities), criticalPath);
    }

    /// <summary>The rows of numbers of a section.</summary>
    private static List<int[]> Numbers(string[] lines, string section) =>
        [.. lines
            .SkipWhile(line => !line.StartsWith(section, StringComparison.Ordinal))
            .TakeWhile(line => !line.StartsWith('*'))
            .Select(line => line.Split(' ', StringSplitOptions.RemoveEmptyEntries))
            .Where(words => words.Length > 0 && words.All(word => int.TryParse(word, CultureInfo.InvariantCulture, out _)))
            .Select(words => words.Select(word => int.Parse(word, CultureInfo.InvariantCulture)).ToArray())];
}
