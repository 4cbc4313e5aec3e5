namespace ShopDays.Cli.Files;

/// <summary>A place in a file that a maker wrote.</summary>
/// <param name="File">The file as it is named to the maker, for example <c>jobs/chest.yaml</c>.</param>
/// <param name="Line">The line, from 1.</param>
/// <param name="Column">The column of the first character of what is meant, from 1.</param>
internal readonly record struct Place(string File, int Line, int Column)
{
    /// <summary>As it stands before a message: <c>jobs/chest.yaml:14:11</c>.</summary>
    public override string ToString() => FormattableString.Invariant($"{File}:{Line}:{Column}");
}
