using System.CommandLine;
using NodaTime;
using ShopDays.Cli.Files;
using ShopDays.Cli.Json;
using ShopDays.Cli.Paper.Svg;
using ShopDays.Cli.Terminal;
using ShopDays.Work;

namespace ShopDays.Cli.Commands;

/// <summary><c>shopdays layout</c>: where every part comes out of which board; with <c>--sawn</c> it records boards as cut so.</summary>
internal sealed class LayoutCommand(Screen screen, IClock clock) : IShopCommand
{
    private readonly Option<string[]> sawn = new("--sawn")
    {
        Description = "Record these boards as sawn the way this layout has them; from then on the rest is laid out around them.",
        HelpName = "BOARD...",
        AllowMultipleArgumentsPerToken = true,
        Arity = ArgumentArity.OneOrMore,
    };

    /// <inheritdoc/>
    public Command Describe()
    {
        var command = new JobCommand(screen, clock, "layout", "Lay the parts out on the boards, with every cut in order.", "shopdays layout writing-table");
        var svg = WrittenTo.AFolder("--svg", "Write a drawing of each board that is cut into this folder.");
        command.Command.Add(svg);
        command.Command.Add(sawn);
        command.AnswerWith(asked =>
        {
            var folder = asked.Parsed.GetValue(svg);
            if (asked.Parsed.GetValue(sawn) is { Length: > 0 } names)
            {
                return new SawnRecording(asked, screen, clock.GetCurrentInstant()).Record(names, folder is null ? null : then => Save(folder, then));
            }

            var workings = asked.Workings;
            var movements = Movement.Of(workings.Read.Job, workings.Layout, workings.Read.Waits);
            var written = folder is null ? [] : Save(folder, workings);
            if (asked.AsJson)
            {
                JsonAnswer.Write(asked.Screen.Out, LayoutJson.Of(workings.Layout, workings.Read.Job, movements, workings.Read.Located.Format, workings.Rates.Behind));
            }
            else
            {
                LayoutPrint.Print(asked.Screen, workings.Read.Job.Name, workings.Layout, workings.Preference, workings.Read.Located.Format);
                DrynessPrint.Print(asked.Screen, workings.Read.Job, movements, workings.Read.Located.Format);
                TimesPrint.Print(asked.Screen, workings.Rates.Behind);
                LayoutPrint.PrintWritten(asked.Screen, written);
            }

            return workings.Layout.Fits ? ExitCode.Done : ExitCode.No;
        });
        return command.Command;
    }

    private static List<string> Save(string folder, Workings workings)
    {
        var drawings = BoardDrawings.Of(workings.Layout, workings.Read.Job.Allowances, workings.Read.Located.Format);
        WholeFile.SaveAll(folder, drawings);
        return [.. drawings.Select(drawing => Path.Combine(folder, drawing.Name))];
    }
}
