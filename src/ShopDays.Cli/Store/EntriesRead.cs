using ShopDays.Logbook;

namespace ShopDays.Cli.Store;

/// <summary>All entries as they were read once, with what tells whether anything has become of them since.</summary>
/// <param name="All">The entries, in order.</param>
/// <param name="Mark">How far the log had come.</param>
internal sealed record EntriesRead(IReadOnlyList<LogEntry> All, EntriesMark Mark)
{
    /// <summary>A log in which nothing was written yet.</summary>
    public static EntriesRead None { get; } = new([], new(0, 0, 0));

    /// <summary>Whether these are entries that were read before, the very same ones, and perhaps others that were written down after them.</summary>
    public bool Follows(EntriesRead before) => Mark.Changes == before.Mark.Changes && Mark.Last >= before.Mark.Last;
}

/// <summary>How far a log has come.</summary>
/// <param name="Last">The greatest number of an entry.</param>
/// <param name="Changes">How often one was corrected, deleted or put back.</param>
/// <param name="Count">How many entries there are.</param>
internal readonly record struct EntriesMark(long Last, long Changes, int Count);
