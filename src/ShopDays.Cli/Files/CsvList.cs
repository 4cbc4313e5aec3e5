namespace ShopDays.Cli.Files;

/// <summary>What a CSV file is a list of, and how much of it is still no slip.</summary>
/// <param name="Name">The list, with its article: <c>the parts list</c>.</param>
/// <param name="Row">What a row is: <c>part</c>.</param>
/// <param name="MostRows">The most rows, the headings not counted.</param>
internal sealed record CsvList(string Name, string Row, int MostRows)
{
    /// <summary>The most bytes.</summary>
    public int LargestBytes { get; init; } = Yaml.YamlFile.LargestBytes;

    /// <summary>Whether headings alone are a list too.</summary>
    public bool MayBeEmpty { get; init; }
}
