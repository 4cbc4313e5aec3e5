using ShopDays.Measures;
using ShopDays.Parts;

namespace ShopDays.Work;

/// <summary>The floor that something takes up while it stands and waits. Common practice, no source.</summary>
public static class Footprint
{
    // Front and back of a box are cut alike; what differs by more than a twentieth runs another way.
    private const double Alike = 0.95;

    /// <summary>
    /// Of a glue-up, its two largest dimensions: the longest of its parts, and the longest of those that are jointed to it
    /// and are not as long (a box has its front twice), of all parts where none is jointed to it. Of a part, all its pieces
    /// laid flat on sticks side by side.
    /// </summary>
    /// <param name="name">A part or a glue-up of the job.</param>
    /// <param name="job">The job.</param>
    public static Area Of(string name, Job job)
    {
        if (job.Parts.FirstOrDefault(part => part.Name == name) is { } loose)
        {
            return loose.FaceArea * loose.Count;
        }

        var parts = Holders.PartsOf(name, job);
        return parts.MaxBy(part => part.Length) is { } longest ? longest.Length * Across(longest, parts, job.Joints) : Area.Zero;
    }

    private static Length Across(Part longest, IReadOnlyList<Part> parts, IReadOnlyList<Joint> joints)
    {
        var jointed = joints.Where(joint => joint.Parts.Contains(longest.Name)).SelectMany(joint => joint.Parts).ToHashSet(StringComparer.Ordinal);
        List<Part> all = [.. parts.Where(part => part != longest)];
        var others = all.FindAll(part => jointed.Contains(part.Name));
        others = others.Count > 0 ? others : all;
        var across = others.FindAll(part => part.Length.Millimetres < longest.Length.Millimetres * Alike);
        return (across.Count > 0 ? across : others).Select(part => part.Length).DefaultIfEmpty(longest.Count > 1 ? longest.Length : longest.Width).Append(longest.Width).Max();
    }
}
