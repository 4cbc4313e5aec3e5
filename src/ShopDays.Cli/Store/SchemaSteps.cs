namespace ShopDays.Cli.Store;

/// <summary>
/// What <c>shop.db</c> holds, as steps from an empty file to the newest form. A step that has once been given out is never
/// changed; the form grows by one more step at the end of the list.
/// </summary>
internal static class SchemaSteps
{
    /// <summary>The steps in order; the version of a file is how many of them it has taken.</summary>
    public static IReadOnlyList<string> All { get; } = [EntriesStep.Sql, PromisesStep.Sql, PromisesOfRestStep.Sql, PromisesLastEntryStep.Sql, StoppedStep.Sql, CoatNamesStep.Sql, GoneOnStep.Sql];
}
