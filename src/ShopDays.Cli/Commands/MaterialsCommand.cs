using System.CommandLine;
using NodaTime;
using ShopDays.Cli.Files;
using ShopDays.Cli.Json;
using ShopDays.Cli.Paper.Yard;
using ShopDays.Cli.Phrases;
using ShopDays.Cli.Terminal;
using ShopDays.Work.Materials;

namespace ShopDays.Cli.Commands;

/// <summary><c>shopdays materials</c>: what to buy at the timber yard, what to take from the stack, glue and finish.</summary>
internal sealed class MaterialsCommand(Screen screen, IClock clock) : IShopCommand
{
    /// <inheritdoc/>
    public Command Describe()
    {
        var command = new JobCommand(screen, clock, "materials", "List what to buy and what to take from the stack: timber, glue, finish.", "shopdays materials writing-table --pdf materials.pdf");
        var pdf = WrittenTo.AFile("--pdf", "Write the list to this PDF file, to be taken to the timber yard.");
        command.Command.Add(pdf);
        command.AnswerWith(asked =>
        {
            WrittenTo.SeeThatItHasAPlace(asked.Parsed.GetValue(pdf));
            return Answer(asked, asked.Parsed.GetValue(pdf));
        });
        return command.Command;
    }

    private int Answer(Question asked, string? pdf)
    {
        var (workings, now) = (asked.Workings, clock.GetCurrentInstant());
        var read = workings.Read;
        var list = MaterialsList.Of(read.Job, workings.Layout, read.Operations, read.Waits, BuiltIn.Coverages, read.Located.Format.IsInInches);
        var told = new ToldMaterials(read, workings.Layout, list, now.InZone(read.Shop.Place.Zone).Date);
        if (pdf is not null)
        {
            WholeFile.Save(pdf, YardBook.Set(told, now));
        }

        if (asked.AsJson)
        {
            JsonAnswer.Write(asked.Screen.Out, MaterialsJson.Of(told));
        }
        else
        {
            MaterialsPrint.Print(asked.Screen, told);
            LayoutPrint.PrintWritten(asked.Screen, pdf is null ? [] : [pdf]);
        }

        return list.NotToBeBought.Count == 0 ? ExitCode.Done : ExitCode.No;
    }
}
