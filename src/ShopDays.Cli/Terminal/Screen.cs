using Spectre.Console;

namespace ShopDays.Cli.Terminal;

/// <summary>Where answers and complaints go: the terminal, a pipe, or a test's own writers.</summary>
public sealed class Screen
{
    /// <summary>Columns used where the terminal does not say how many it has.</summary>
    public const int UsualWidth = 80;

    private const int Widest = 100;

    /// <summary>Makes a screen.</summary>
    /// <param name="output">Where answers go.</param>
    /// <param name="error">Where complaints go.</param>
    /// <param name="width">Columns; more than 100 are not used, so that lines stay readable.</param>
    /// <param name="hasColour">Whether colour may be used; false in a pipe.</param>
    /// <param name="errorIsTerminal">Whether complaints go to a terminal, where a passing line can be wiped out.</param>
    /// <param name="outIsTerminal">Whether answers go to a terminal.</param>
    public Screen(TextWriter output, TextWriter error, int width = UsualWidth, bool hasColour = false, bool errorIsTerminal = false, bool outIsTerminal = false)
    {
        ErrorIsTerminal = errorIsTerminal;
        OutIsTerminal = outIsTerminal;
        Out = output;
        Error = error;
        Width = Math.Clamp(width, 40, Widest);
        Console = AnsiConsole.Create(new AnsiConsoleSettings
        {
            Ansi = hasColour ? AnsiSupport.Yes : AnsiSupport.No,
            ColorSystem = hasColour ? ColorSystemSupport.Standard : ColorSystemSupport.NoColors,
            Interactive = InteractionSupport.No,
            Out = new AnsiConsoleOutput(output),
        });
        Console.Profile.Width = Width;
        Console.Profile.Capabilities.Unicode = true;
    }

    /// <summary>Where answers go, as plain text.</summary>
    public TextWriter Out { get; }

    /// <summary>Where complaints and progress go.</summary>
    public TextWriter Error { get; }

    /// <summary>Whether complaints go to a terminal.</summary>
    public bool ErrorIsTerminal { get; }

    /// <summary>Whether answers go to a terminal.</summary>
    public bool OutIsTerminal { get; }

    /// <summary>Tells how long work takes, for a passing line about it.</summary>
    public TimeProvider Time { get; init; } = TimeProvider.System;

    /// <summary>Where tables and coloured answers go; the same place as <see cref="Out"/>.</summary>
    public IAnsiConsole Console { get; }

    /// <summary>Columns to use.</summary>
    public int Width { get; }

    /// <summary>A screen that prints no answers, and complaints as before.</summary>
    public Screen Silent() => new(TextWriter.Null, Error, Width, hasColour: false, ErrorIsTerminal) { Time = Time };

    /// <summary>Writes a text in lines that fit, broken between words; words held together by no-break spaces stay together.</summary>
    /// <param name="text">The text.</param>
    /// <param name="indent">Columns by which every line but the first is moved in.</param>
    public void Wrapped(string text, int indent = 0) => Wrapped(Out, text, indent);

    /// <inheritdoc cref="Wrapped(string, int)"/>
    public void Wrapped(TextWriter writer, string text, int indent = 0) => Write(writer, "", new string(' ', indent), text);

    /// <summary>Writes a text behind a lead; its further lines begin under the text.</summary>
    public void Hanging(string lead, string text) => Write(Out, lead, new string(' ', lead.Length), text);

    /// <summary>
    /// Writes what is wrong at a place of a file, the place first: on a terminal in lines that fit, elsewhere in one line,
    /// for editors and filters read mistakes by the line.
    /// </summary>
    public void Located(TextWriter writer, string place, string message)
    {
        if (ReferenceEquals(writer, Error) ? ErrorIsTerminal : OutIsTerminal)
        {
            Write(writer, place + ": ", "  ", message);
        }
        else
        {
            writer.WriteLine($"{place}: {message}");
        }
    }

    private void Write(TextWriter writer, string lead, string indent, string text)
    {
        var line = lead;
        var isEmpty = true;
        foreach (var word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            if (!isEmpty && line.Length + 1 + word.Length > Width)
            {
                writer.WriteLine(line.Replace('\u00a0', ' '));
                (line, isEmpty) = (indent, true);
            }

            line += (isEmpty ? "" : " ") + word;
            isEmpty = false;
        }

        writer.WriteLine(line.Replace('\u00a0', ' '));
    }

    /// <summary>The screen of this process: no colour in a pipe, nor where the environment asks for none (NO_COLOR).</summary>
    public static Screen OfProcess()
    {
        var isPipe = System.Console.IsOutputRedirected;
        System.Console.OutputEncoding = new System.Text.UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
        return new(
            System.Console.Out,
            System.Console.Error,
            isPipe || System.Console.WindowWidth <= 0 ? UsualWidth : System.Console.WindowWidth,
            !isPipe && string.IsNullOrEmpty(Environment.GetEnvironmentVariable("NO_COLOR")),
            !System.Console.IsErrorRedirected,
            !isPipe);
    }
}
