namespace ShopDays.Cli.Terminal;

/// <summary>
/// Says what is being worked out: a line for each step where that is asked for, else one passing line on a terminal,
/// gone when the answer comes, else nothing.
/// </summary>
/// <param name="writer">The error stream.</param>
/// <param name="isVerbose">Whether each step keeps its line.</param>
/// <param name="isTerminal">Whether a passing line can be wiped out.</param>
internal sealed class Progress(TextWriter writer, bool isVerbose, bool isTerminal) : IDisposable
{
    private int shown;

    /// <summary>A step begins.</summary>
    public void Say(string step)
    {
        if (isVerbose)
        {
            writer.WriteLine(step);
        }
        else if (isTerminal)
        {
            Dispose();
            writer.Write(step);
            shown = step.Length;
        }
    }

    /// <summary>Wipes the passing line out.</summary>
    public void Dispose()
    {
        if (shown > 0)
        {
            writer.Write("\r" + new string(' ', shown) + "\r");
            shown = 0;
        }
    }
}
