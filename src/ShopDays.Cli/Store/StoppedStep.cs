namespace ShopDays.Cli.Store;

/// <summary>The fourth step: where a maker stopped, with an entry, with what an entry was before, and with work that is begun.</summary>
internal static class StoppedStep
{
    /// <summary>Text as it was typed; empty for none.</summary>
    public const string Sql = """
        alter table entry add column stopped text not null default '';
        alter table trace add column stopped text not null default '';
        alter table begun add column stopped text not null default '';
        """;
}
