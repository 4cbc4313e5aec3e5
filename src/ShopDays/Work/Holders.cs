using ShopDays.Parts;

namespace ShopDays.Work;

/// <summary>Which glue-up holds what.</summary>
internal static class Holders
{
    /// <summary>The parts that a name stands for: the part itself, or all that a glue-up joins, through earlier glue-ups.</summary>
    public static IReadOnlyList<Part> PartsOf(string name, Job job)
    {
        var names = new HashSet<string>(StringComparer.Ordinal);
        Gather(name);
        return [.. job.Parts.Where(part => names.Contains(part.Name))];

        void Gather(string one)
        {
            if (names.Add(one) && job.GlueUps.FirstOrDefault(glueUp => glueUp.Name == one) is { } held)
            {
                foreach (var joined in held.Joins)
                {
                    Gather(joined);
                }
            }
        }
    }

    /// <summary>The last glue-up that holds a part or glue-up; its own name when none does.</summary>
    public static string OutermostOf(string name, Job job)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal) { name };
        while (job.GlueUps.FirstOrDefault(glueUp => glueUp.Joins.Contains(name)) is { } holder && seen.Add(holder.Name))
        {
            name = holder.Name;
        }

        return name;
    }

    /// <summary>The glue-ups with those that others join put first; the names that go round when that cannot be done.</summary>
    public static (IReadOnlyList<GlueUp> Order, IReadOnlyList<string> Round) InOrder(Job job)
    {
        var order = new List<GlueUp>();
        var left = job.GlueUps.ToList();
        while (left.FindIndex(one => !one.Joins.Any(name => left.Exists(other => other.Name == name))) is >= 0 and var next)
        {
            order.Add(left[next]);
            left.RemoveAt(next);
        }

        return (order, Round(left));
    }

    private static List<string> Round(List<GlueUp> left)
    {
        var path = new List<string>();
        var at = left.FirstOrDefault();
        while (at is not null && !path.Contains(at.Name))
        {
            path.Add(at.Name);
            at = left.Find(other => at.Joins.Contains(other.Name));
        }

        return at is null ? [] : [.. path[path.IndexOf(at.Name)..], at.Name];
    }
}
