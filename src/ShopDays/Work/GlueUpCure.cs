using ShopDays.Measures;

namespace ShopDays.Work;

/// <summary>What would help a glue-up that outlasts its adhesive: stages, or an adhesive that leaves more time.</summary>
internal static class GlueUpCure
{
    /// <summary>In words.</summary>
    /// <param name="waits">The adhesives.</param>
    /// <param name="joints">Joints to close, at least 1.</param>
    /// <param name="each">Spreading and closing of one, by one pair of hands.</param>
    /// <param name="allowed">What the adhesive leaves.</param>
    public static string For(WaitTable waits, int joints, WorkTime each, WorkTime allowed)
    {
        var slower = waits.Adhesives.Where(one => each * joints <= GlueUps.Allowed(one)).Select(one => one.Name).ToList();
        var inTime = (int)(allowed / each);
        var stages = inTime == 0 ? 0 : ((joints - 1) / inTime) + 1;
        return (inTime, slower.Count) switch
        {
            (0, 0) => "not even one joint is closed in time, and no adhesive known here leaves time for all of them: take a slower one and glue it up in stages",
            (0, _) => $"not even one joint is closed in time: take {Any(slower)}",
            (_, 0) => FormattableString.Invariant($"glue it up in {stages} stages of no more than {inTime}, fewer with a helper or a slower adhesive"),
            _ => FormattableString.Invariant($"glue it up in {stages} stages, take {Any(slower)}, or have a second pair of hands"),
        };
    }

    private static string Any(List<string> names) => names.Count == 1 ? Quoted(names[0]) : string.Join(", ", names.Take(names.Count - 1).Select(Quoted)) + " or " + Quoted(names[^1]);

    // Names of adhesives have commas in them.
    private static string Quoted(string name) => $"'{name}'";
}
