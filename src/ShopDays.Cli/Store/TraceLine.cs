using NodaTime;
using ShopDays.Logbook;

namespace ShopDays.Cli.Store;

/// <summary>What became of an entry.</summary>
internal enum TraceKind
{
    /// <summary>Something of it was put right.</summary>
    Corrected,

    /// <summary>It was taken out of the log.</summary>
    Deleted,

    /// <summary>It was put back.</summary>
    Restored,
}

/// <summary>A change to an entry, with all that it was before.</summary>
/// <param name="What">What was done.</param>
/// <param name="At">When.</param>
/// <param name="Why">The maker's reason, or the command; may be empty.</param>
/// <param name="Key">The key of the entry.</param>
/// <param name="Before">The entry as it was.</param>
internal sealed record TraceLine(TraceKind What, Instant At, string Why, Guid Key, LogEntry Before);

/// <summary>An entry as it stands in the file.</summary>
/// <param name="Key">What it is known by in other copies of the log: one of a kind anywhere.</param>
/// <param name="Entry">The entry.</param>
internal sealed record StoredEntry(Guid Key, LogEntry Entry);
