namespace ShopDays.Cli.Store;

/// <summary>The seventh step: when work that had been laid aside was gone on with, to tell a stretch that somebody forgot to end.</summary>
internal static class GoneOnStep
{
    /// <summary>A moment as text; null for work that was never laid aside.</summary>
    public const string Sql = "alter table begun add column gone_on text;";
}
