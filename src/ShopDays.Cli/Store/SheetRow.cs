using ShopDays.Logbook;

namespace ShopDays.Cli.Store;

/// <summary>A row of a sheet or an export that is to be put into the log.</summary>
internal abstract record SheetRow
{
    private SheetRow()
    {
    }

    /// <summary>A row that the maker wrote.</summary>
    /// <param name="Entry">The entry, without a number.</param>
    public sealed record Own(LogEntry Entry) : SheetRow;

    /// <summary>An entry of an export.</summary>
    /// <param name="Stored">The entry with its number and key.</param>
    public sealed record Exported(StoredEntry Stored) : SheetRow;

    /// <summary>What an entry of an export was before it was changed.</summary>
    /// <param name="Line">The trace.</param>
    public sealed record ExportedTrace(TraceLine Line) : SheetRow;
}
