namespace ShopDays.Cli.Store;

/// <summary>The third step: a promise may be of what was left of a job then.</summary>
internal static class PromisesOfRestStep
{
    /// <summary>From when the rest was planned, as ISO 8601 text; null for a promise of a whole job.</summary>
    public const string Sql = "alter table promise add column rest_from text;";
}
