namespace ShopDays.Logbook;

/// <summary>Why nothing is learned from some entries.</summary>
public enum LeftOutReason
{
    /// <summary>The task is not finished, and how much of it is done is not said, or not of one operation and method.</summary>
    NotFinished,

    /// <summary>The task is timed by a guess, not by an operation.</summary>
    NoOperation,

    /// <summary>The catalogue has no such operation, method or unit any more.</summary>
    UnknownOperation,

    /// <summary>The maker marked it as unusual.</summary>
    MarkedUnusual,

    /// <summary>One of its figures cannot be: it is not above zero, or beyond all measure.</summary>
    ImpossibleFigures,
}

/// <summary>Entries that nothing is learned from, and why.</summary>
/// <param name="Entries">The entries of one piece of work; at least one.</param>
/// <param name="Reason">Why.</param>
public sealed record LeftOut(IReadOnlyList<LogEntry> Entries, LeftOutReason Reason);
