namespace ShopDays.Cli.Files;

/// <summary>Collects the mistakes of all files that are read for one command, and what is doubtful in them.</summary>
internal sealed class Findings
{
    private readonly List<Finding> all = [];
    private readonly List<Finding> doubts = [];
    private readonly List<string> files = [];

    /// <summary>Whether there is none.</summary>
    public bool AreNone => all.Count == 0;

    /// <summary>How many there are.</summary>
    public int Count => all.Count;

    /// <summary>Adds one; the same one said twice counts once.</summary>
    public void Add(Finding finding)
    {
        if (!files.Contains(finding.Place.File, StringComparer.Ordinal))
        {
            files.Add(finding.Place.File);
        }

        if (!all.Contains(finding))
        {
            all.Add(finding);
        }
    }

    /// <summary>Adds what is likely to be a slip and can still be worked with.</summary>
    public void Doubt(Finding finding)
    {
        if (!doubts.Contains(finding))
        {
            doubts.Add(finding);
        }
    }

    /// <summary>What is doubtful, in the order of reading.</summary>
    public IReadOnlyList<Finding> Doubts => doubts;

    /// <summary>Whether there is one at a place.</summary>
    public bool Has(Place place) => all.Exists(one => one.Place == place);

    /// <summary>All of them: files in the order in which they were read, then by line and column.</summary>
    public IReadOnlyList<Finding> InOrder() =>
    [
        .. all
            .OrderBy(one => files.IndexOf(one.Place.File))
            .ThenBy(one => one.Place.Line)
            .ThenBy(one => one.Place.Column),
    ];
}
