using System.Globalization;

namespace ShopDays.Logbook;

/// <summary>The number of an entry in a shop's log, by which it is corrected or taken out; never given twice.</summary>
/// <param name="Number">The number, from 1; 0 before it is in the log.</param>
public readonly record struct EntryId(long Number)
{
    /// <inheritdoc/>
    public override string ToString() => Number.ToString(CultureInfo.InvariantCulture);
}
