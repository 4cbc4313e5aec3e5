namespace ShopDays.Cli.Files;

/// <summary>
/// A file that cannot be read or written, or is not where it should be: the world is not as it must be, and the maker is
/// told so without a stack trace (exit code 3).
/// </summary>
internal sealed class FileTroubleException : Exception
{
    // ENOSPC and ERROR_DISK_FULL: the system's own words would name a passing file that the maker never sees.
    private const int FullOnUnix = 28;
    private const int FullOnWindows = unchecked((int)0x80070070);

    public FileTroubleException()
    {
    }

    public FileTroubleException(string message)
        : base(message)
    {
    }

    public FileTroubleException(string message, Exception inner)
        : base(message, inner)
    {
    }

    /// <summary>What is wrong with the file, to follow its name: <c>is not there</c>.</summary>
    public string Why { get; private init; } = "cannot be read";

    /// <summary>Trouble with one file.</summary>
    public static FileTroubleException Of(string file, string why, Exception? inner = null) => new($"{file} {why}", inner!) { Why = why };

    /// <summary>Says in a maker's words what the system said about a file that was to be read.</summary>
    public static FileTroubleException Reading(string file, bool isFolder, Exception trouble) => Of(file, trouble switch
    {
        _ when isFolder => "is a folder, not a file",
        FileNotFoundException or DirectoryNotFoundException => "is not there",
        UnauthorizedAccessException => "may not be read by you",
        _ => "cannot be read: " + trouble.Message,
    }, trouble);

    /// <summary>Says in a maker's words why a file could not be written.</summary>
    public static FileTroubleException Writing(string file, Exception trouble) => Of(file, trouble switch
    {
        DirectoryNotFoundException => "has no folder to be written to",
        UnauthorizedAccessException => "may not be written by you",
        IOException { HResult: FullOnUnix or FullOnWindows } => "cannot be written: the disk is full",
        _ => "cannot be written: " + trouble.Message,
    }, trouble);
}
