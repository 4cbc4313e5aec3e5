namespace ShopDays.Cli.Commands;

/// <summary>What the process tells its caller.</summary>
public static class ExitCode
{
    /// <summary>Done.</summary>
    public const int Done = 0;

    /// <summary>The answer is no: it does not fit, it cannot be finished, or a file has mistakes.</summary>
    public const int No = 1;

    /// <summary>Wrong use of the command line.</summary>
    public const int WrongUse = 2;

    /// <summary>A file cannot be read or written, or a fault of the program itself is in the way: there is no answer.</summary>
    public const int CannotReadOrWrite = 3;
}
