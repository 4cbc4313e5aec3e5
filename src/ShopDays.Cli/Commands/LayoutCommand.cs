using System.CommandLine;
using ShopDays.Cli.Json;
using ShopDays.Cli.Terminal;

namespace ShopDays.Cli.Commands;

/// <summary><c>shopdays layout</c>: where every part comes out of which board.</summary>
internal sealed class LayoutCommand(Screen screen) : IShopCommand
{
    /// <inheritdoc/>
    public Command Describe()
    {
        var command = new JobCommand(screen, "layout", "Lay the parts out on the boards, with every cut in order.", "shopdays layout writing-table");
        command.AnswerWith(asked =>
        {
            var workings = asked.Workings;
            if (asked.AsJson)
            {
                JsonAnswer.Write(asked.Screen.Out, LayoutJson.Of(workings.Layout, workings.Read.Located.Format));
            }
            else
            {
                LayoutPrint.Print(asked.Screen, workings.Read.Job.Name, workings.Layout, workings.Preference, workings.Read.Located.Format);
            }

            return workings.Layout.Fits ? ExitCode.Done : ExitCode.No;
        });
        return command.Command;
    }
}
