using System.CommandLine;
using NodaTime;
using ShopDays.Cli.Commands.Logging;
using ShopDays.Cli.Files;
using ShopDays.Cli.Json;
using ShopDays.Cli.Paper.Rates;
using ShopDays.Cli.Paper.Svg;
using ShopDays.Cli.Phrases;
using ShopDays.Cli.Terminal;
using ShopDays.Measures;
using ShopDays.Times;
using ShopDays.Work;

namespace ShopDays.Cli.Commands;

/// <summary><c>shopdays rates</c>: how fast this shop works, against the tables, and how far to trust it.</summary>
internal sealed class RatesCommand(Screen screen, IClock clock) : IShopCommand
{
    /// <summary>How many rates get a picture of how they became known.</summary>
    private const int MostCourses = 6;

    private readonly Argument<string[]> operation = new("OPERATION") { Description = "Only operations with these words in their names.", Arity = ArgumentArity.ZeroOrMore };
    private readonly Option<bool> all = new("--all") { Description = "Operations that were never timed too." };
    private readonly Option<string?> timber = new("--species") { Description = "State the rates for this timber.", HelpName = "NAME" };
    private readonly Option<string?> thickness = new("--thickness") { Description = "State the rates for stock of this thickness.", HelpName = "LENGTH" };
    private readonly Option<string?> pdf = WrittenTo.AFile("--pdf", "Write the report card, the rates and the pictures to this PDF file.");
    private readonly Option<string?> svg = WrittenTo.AFolder("--svg", "Write the pictures into this folder.");
    private readonly Option<bool> json = new("--json") { Description = "Print the answer for other programs; it has all operations." };
    private readonly Option<bool> quiet = new("--quiet", "-q") { Description = "Print nothing but complaints." };

    /// <inheritdoc/>
    public Command Describe()
    {
        var command = new Command("rates", "Show how fast this shop works by its log, against the tables, and how far to trust it.\nExample: shopdays rates --pdf rates.pdf") { operation, all, timber, thickness, pdf, svg, json, quiet };
        command.SetAction(Answer);
        return command;
    }

    private int Answer(ParseResult parsed)
    {
        if (LogShop.Read(screen, "nothing was worked out or written") is not { } shop)
        {
            return ExitCode.No;
        }

        var (asked, complaint) = Asked(parsed, shop.Shop);
        var words = parsed.GetValue(operation) ?? [];
        var named = shop.Operations.All.Where(one => words.All(word => one.Name.Contains(word, StringComparison.OrdinalIgnoreCase))).Select(one => one.Name).ToHashSet(StringComparer.Ordinal);
        if (named.Count == 0)
        {
            complaint ??= LogShop.Unknown("operation", string.Join(' ', words), [.. shop.Operations.Names], "operations");
        }

        if (complaint is not null)
        {
            screen.Error.WriteLine(complaint);
            return ExitCode.WrongUse;
        }

        var paper = parsed.GetValue(pdf);
        WrittenTo.SeeThatItHasAPlace(paper);
        var told = RatesNow.Of(shop, LearnedRates.Of(shop.Folder, shop.Shop, shop.Operations, clock), shop.Today(clock), asked, named, showAll: parsed.GetValue(all) || parsed.GetValue(json) || words.Length > 0);
        var written = Write(told, paper, parsed.GetValue(svg));
        if (parsed.GetValue(quiet))
        {
            return ExitCode.Done;
        }

        if (parsed.GetValue(json))
        {
            JsonAnswer.Write(screen.Out, RatesJson.Of(told));
        }
        else
        {
            RatesPrint.Print(screen, told);
            LayoutPrint.PrintWritten(screen, written);
        }

        return ExitCode.Done;
    }

    private List<string> Write(ToldRates told, string? paper, string? folder)
    {
        if (paper is null && folder is null)
        {
            return [];
        }

        var courses = RateCourse.Of(told.Model, told.Shop.LearningAsOf(told.Today), [.. told.Rates.Where(rate => rate.Entries > 0).OrderByDescending(rate => rate.Entries).Take(MostCourses)]);
        var drawings = folder is null ? [] : RateDrawings.Of(told, courses);
        var book = paper is null ? null : RatesBook.Set(told, courses, clock.GetCurrentInstant());
        if (folder is not null)
        {
            WholeFile.SaveAll(folder, drawings);
        }

        if (paper is not null)
        {
            WholeFile.Save(paper, book);
        }

        return [.. drawings.Select(drawing => Path.Combine(folder!, drawing.Name)), .. paper is null ? (string[])[] : [paper]];
    }

    private (Dictionary<Covariate, double> Asked, string? Complaint) Asked(ParseResult parsed, Shop shop)
    {
        var asked = new Dictionary<Covariate, double>();
        if (parsed.GetValue(timber) is { } name)
        {
            if (!BuiltIn.Species.TryFind(name, out var species))
            {
                return (asked, LogShop.Unknown("timber", name, [.. BuiltIn.Species.Names], "timbers"));
            }

            asked[Covariate.Hardness] = species.HardnessPoundsForce;
        }

        if (parsed.GetValue(thickness) is { } typed)
        {
            var read = LengthText.ReadRoughThickness(typed, shop.Units);
            if (!read.IsRead || read.Value <= Length.Zero || read.Value > LengthValues.Thickest)
            {
                return (asked, read.IsRead
                    ? $"--thickness: {QuotedText.Of(typed)} cannot be; expected more than zero and at most {shop.Format.Write(LengthValues.Thickest)}"
                    : $"--thickness: {read.Fault.What}; expected {read.Fault.Expected}");
            }

            asked[Covariate.Thickness] = read.Value.Inches;
        }

        return (asked, null);
    }
}
