using System.Collections.Immutable;
using System.Globalization;
using ShopDays.Plans.Scheduling;

namespace ShopDays.Tests.Outside;

/// <summary>A published scheduling problem: activities that go on by themselves, in an order, and share four resources.</summary>
internal sealed record PsplibInstance
{
    /// <summary>The name of its file, without ending.</summary>
    public required string Name { get; init; }

    /// <summary>Its parameter group, from 1.</summary>
    public required int Group { get; init; }

    /// <summary>The time of each activity; the first and the last take none.</summary>
    public required ImmutableArray<int> Durations { get; init; }

    /// <summary>How many of each resource an activity takes.</summary>
    public required ImmutableArray<ImmutableArray<int>> Requests { get; init; }

    /// <summary>Which activity comes before which.</summary>
    public required ImmutableArray<(int Before, int After)> Order { get; init; }

    /// <summary>How many there are of each resource.</summary>
    public required ImmutableArray<int> Capacities { get; init; }

    /// <summary>The length of its critical path, as published.</summary>
    public required int CriticalPath { get; init; }

    /// <summary>No schedule is shorter, as known in 2020; the critical path where nothing better was collected.</summary>
    public required int BestLower { get; init; }

    /// <summary>The shortest schedule known in 2020.</summary>
    public required int BestUpper { get; init; }

    /// <summary>The same in the form that is scheduled.</summary>
    public ScheduleProblem Problem => new(
        [.. Durations.Select((duration, activity) => new CompiledTask
        {
            Minutes = duration,
            Crew = 0,
            Holds = [.. Requests[activity].Select((count, resource) => new Hold(resource, resource, count)).Where(hold => hold.Count > 0)],
        })],
        [.. Order.Select(one => new CompiledPrecedence(one.Before, one.After))],
        [],
        Capacities);

    /// <summary>What is wrong with a schedule; nothing for a right one. Knows only the published rules.</summary>
    public IEnumerable<string> Faults(IReadOnlyList<int> starts, int length)
    {
        foreach (var (before, after) in Order.Where(one => starts[one.After] < starts[one.Before] + Durations[one.Before]))
        {
            yield return $"{Name}: {after + 1} begins before {before + 1} ends";
        }

        if (starts.Min() < 0 || length != Durations.Select((duration, activity) => starts[activity] + duration).Max())
        {
            yield return $"{Name}: it begins before 0, or its length is not that of the last activity";
        }

        for (var time = 0; time < length; time++)
        {
            var active = Enumerable.Range(0, starts.Count).Where(activity => starts[activity] <= time && time < starts[activity] + Durations[activity]).ToList();
            for (var resource = 0; resource < Capacities.Length; resource++)
            {
                if (active.Sum(activity => Requests[activity][resource]) > Capacities[resource])
                {
                    yield return $"{Name}: too much of resource {resource + 1} at {time}";
                }
            }
        }
    }

    /// <summary>Reads a problem file.</summary>
    public static PsplibInstance Parse(string text, string name, int group, int lower, int upper)
    {
        var lines = text.Split('\n', StringSplitOptions.TrimEntries);
        var activities = Rows(lines, "REQUESTS/DURATIONS");
        return new()
        {
            Name = name,
            Group = group,
            Durations = [.. activities.Select(row => row[2])],
            Requests = [.. activities.Select(row => row.Skip(3).ToImmutableArray())],
            Order = [.. Rows(lines, "PRECEDENCE RELATIONS").SelectMany(row => row.Skip(3).Select(after => (row[0] - 1, after - 1)))],
            Capacities = [.. Rows(lines, "RESOURCEAVAILABILITIES")[0]],
            CriticalPath = Rows(lines, "PROJECT INFORMATION")[0][5],
            BestLower = lower,
            BestUpper = upper,
        };
    }

    /// <summary>The rows of numbers of a section.</summary>
    private static List<int[]> Rows(string[] lines, string section) =>
        [.. lines
            .SkipWhile(line => !line.StartsWith(section, StringComparison.Ordinal))
            .TakeWhile(line => !line.StartsWith('*'))
            .Select(line => line.Split(' ', StringSplitOptions.RemoveEmptyEntries))
            .Where(words => words.Length > 0 && words.All(word => int.TryParse(word, CultureInfo.InvariantCulture, out _)))
            .Select(words => words.Select(word => int.Parse(word, CultureInfo.InvariantCulture)).ToArray())];
}
