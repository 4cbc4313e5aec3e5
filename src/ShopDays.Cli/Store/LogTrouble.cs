using Microsoft.Data.Sqlite;
using ShopDays.Cli.Files;

namespace ShopDays.Cli.Store;

/// <summary>Says in a maker's words what stands against reading or writing the log.</summary>
internal static class LogTrouble
{
    // Primary result codes of SQLite (sqlite.org/rescode.html).
    private const int Busy = 5;
    private const int Locked = 6;
    private const int ReadOnly = 8;
    private const int InputOutput = 10;
    private const int Corrupt = 11;
    private const int Full = 13;
    private const int CannotOpen = 14;
    private const int NoDatabase = 26;

    /// <summary>Trouble that SQLite reported.</summary>
    public static FileTroubleException Of(string path, SqliteException trouble) => FileTroubleException.Of(path, trouble.SqliteErrorCode switch
    {
        Busy or Locked => "is being written by another program and did not come free; see whether another window of the shop is busy, then try again",
        ReadOnly => "may not be written by you; nothing was logged",
        Full => "cannot be written: the disk is full; nothing was logged",
        CannotOpen => "cannot be opened: it may not be read by you, or its folder may not be written by you",
        NoDatabase => "is no log of ShopDays; nothing was changed in it; move it away, or put the shop's own file back",
        Corrupt => "is damaged; nothing was changed in it; put a copy of it back, or import an export of it into a fresh log",
        InputOutput => "cannot be read or written: the disk reports a fault, or lets no file grow so large",
        _ => "cannot be used: " + trouble.Message,
    }, trouble);

    /// <summary>The file holds what this program never writes.</summary>
    public static FileTroubleException Meddled(string path, Exception trouble) => FileTroubleException.Of(
        path, $"is damaged, or was changed by hand: {trouble.Message}; put a copy of it back, or import an export of it into a fresh log", trouble);

    /// <summary>The file was written by a newer program.</summary>
    public static FileTroubleException Newer(string path, long version, int known) => FileTroubleException.Of(
        path,
        FormattableString.Invariant($"was written by a newer ShopDays: its form is {version}, this program knows forms up to {known}; nothing was changed in it; use the newer program"));

    /// <summary>The file is a database of something else.</summary>
    public static FileTroubleException OfAnotherProgram(string path) => FileTroubleException.Of(
        path, "is a database of another program; nothing was changed in it; move it away, or put the shop's own file back");

    /// <summary>The file is of an older form, and cannot be brought up to date.</summary>
    public static FileTroubleException CannotBeRaised(string path) => FileTroubleException.Of(
        path, "is of an older form and may not be written by you, so it cannot be brought up to date");

    /// <summary>Whether a read failed only because its folder or file may not be written.</summary>
    public static bool IsOfWriting(SqliteException trouble) => trouble.SqliteErrorCode is CannotOpen or ReadOnly;
}
