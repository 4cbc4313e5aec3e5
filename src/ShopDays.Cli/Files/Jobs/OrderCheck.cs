using ShopDays.Parts;
using ShopDays.Work;

namespace ShopDays.Cli.Files.Jobs;

/// <summary>Finds orders that go round: glue-ups that join each other, and work that must come before itself.</summary>
internal sealed class OrderCheck(Job job, JobPlaces places, Findings findings)
{
    private readonly List<string> nodes = [];
    private readonly Dictionary<string, int> ids = new(StringComparer.Ordinal);
    private readonly List<Precedence> order = [];

    /// <summary>Reports the first round of each kind.</summary>
    public void Run()
    {
        foreach (var glueUp in job.GlueUps)
        {
            foreach (var joined in glueUp.Joins)
            {
                Put(joined, glueUp.Name);
            }
        }

        if (Round() is { } joins)
        {
            findings.Add(JobMistakes.GlueUpsGoRound(places.Of(joins[0]), joins, [.. joins.Select(places.Of)]));
            return;
        }

        foreach (var (earlier, later) in StageNames.All.Zip(StageNames.All.Skip(1)))
        {
            Put(earlier, later);
        }

        foreach (var task in job.Work)
        {
            Put(task.Name, task.Before, task.After);
        }

        foreach (var decision in job.Decisions)
        {
            Put(decision.Name, decision.Before, decision.After);
        }

        if (Round() is { } round)
        {
            Place[] where = [.. round.Where(name => !StageNames.TryFind(name, out _)).Select(places.Of)];
            findings.Add(JobMistakes.OrderGoesRound(where.MinBy(place => place.Line), round, where));
        }
    }

    private void Put(string name, IReadOnlyList<string> before, IReadOnlyList<string> after)
    {
        foreach (var later in before)
        {
            Put(name, later);
        }

        foreach (var earlier in after)
        {
            Put(earlier, name);
        }
    }

    private void Put(string earlier, string later) => order.Add(new(Id(earlier), Id(later), ""));

    private int Id(string name)
    {
        if (!ids.TryGetValue(name, out var id))
        {
            ids[name] = id = nodes.Count;
            nodes.Add(name);
        }

        return id;
    }

    private List<string>? Round() => TaskCycle.Find(nodes.Count, order) is { } round ? [.. round.Select(id => nodes[id])] : null;
}
