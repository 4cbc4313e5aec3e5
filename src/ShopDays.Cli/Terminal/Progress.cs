namespace ShopDays.Cli.Terminal;

/// <summary>
/// Says what is being worked out: a line for each step where that is asked for, else one passing line on a terminal,
/// gone when the step is done, else nothing. Of a step that takes more than a second it also says how far it has come.
/// </summary>
/// <param name="writer">The error stream.</param>
/// <param name="isVerbose">Whether each step keeps its line.</param>
/// <param name="isTerminal">Whether a passing line can be wiped out.</param>
/// <param name="width">Columns of a passing line.</param>
/// <param name="time">Tells how long a step has taken.</param>
internal sealed class Progress(TextWriter writer, bool isVerbose, bool isTerminal, int width, TimeProvider time)
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(1);

    // A passing line may change as often as an eye follows; lines that stay are fewer.
    private readonly TimeSpan pause = isVerbose ? TimeSpan.FromSeconds(2) : TimeSpan.FromSeconds(0.2);
    private string step = "";
    private int shown;
    private long begun;
    private long said;

    /// <summary>Does a step, and says so meanwhile.</summary>
    /// <param name="what">What is being worked out.</param>
    /// <param name="work">The work.</param>
    /// <returns>What came of it.</returns>
    public T During<T>(string what, Func<T> work)
    {
        (step, begun) = (what, time.GetTimestamp());
        said = begun;
        if (isVerbose)
        {
            writer.WriteLine(what);
        }

        if (isVerbose || !isTerminal)
        {
            return work();
        }

        Pass(what);
        try
        {
            return work();
        }
        finally
        {
            Pass("");
            writer.Write('\r');
            shown = 0;
        }
    }

    /// <summary>How far the step in hand has come; put into words only when they are wanted.</summary>
    public void Now(Func<string> words)
    {
        if ((!isVerbose && !isTerminal) || time.GetElapsedTime(begun) < Patience || (said != begun && time.GetElapsedTime(said) < pause))
        {
            return;
        }

        said = time.GetTimestamp();
        if (isVerbose)
        {
            writer.WriteLine("  " + words());
        }
        else
        {
            Pass($"{step}: {words()}");
        }
    }

    private void Pass(string line)
    {
        // A line that wraps could not be wiped out.
        var fitting = line.Length < width ? line : line[..(width - 1)];
        writer.Write((shown > 0 ? "\r" : "") + fitting + new string(' ', Math.Max(0, shown - fitting.Length)));
        writer.Flush();
        shown = fitting.Length;
    }
}
