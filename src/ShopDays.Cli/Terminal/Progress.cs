namespace ShopDays.Cli.Terminal;

/// <summary>
/// Says what is being worked out: a line for each step where that is asked for, else one passing line on a terminal,
/// gone when the step is done, else nothing.
/// </summary>
/// <param name="writer">The error stream.</param>
/// <param name="isVerbose">Whether each step keeps its line.</param>
/// <param name="isTerminal">Whether a passing line can be wiped out.</param>
internal sealed class Progress(TextWriter writer, bool isVerbose, bool isTerminal)
{
    /// <summary>Does a step, and says so meanwhile.</summary>
    /// <param name="step">What is being worked out.</param>
    /// <param name="work">The work.</param>
    /// <returns>What came of it.</returns>
    public T During<T>(string step, Func<T> work)
    {
        if (isVerbose)
        {
            writer.WriteLine(step);
        }

        if (isVerbose || !isTerminal)
        {
            return work();
        }

        writer.Write(step);
        try
        {
            return work();
        }
        finally
        {
            writer.Write("\r" + new string(' ', step.Length) + "\r");
        }
    }
}
