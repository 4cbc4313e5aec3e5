namespace ShopDays.Cli.Store;

/// <summary>The fourth step: a promise knows what the log held when it was made, though an entry may be of an earlier date.</summary>
internal static class PromisesLastEntryStep
{
    /// <summary>The number that was given last to an entry, 0 before any was; null for promises of before.</summary>
    public const string Sql = "alter table promise add column last_entry integer;";
}
