using System.CommandLine;
using NodaTime;
using ShopDays.Cli.Calendars;
using ShopDays.Cli.Commands.Logging;
using ShopDays.Cli.Files;
using ShopDays.Cli.Json;
using ShopDays.Cli.Paper.Orders;
using ShopDays.Cli.Phrases;
using ShopDays.Cli.Terminal;
using ShopDays.Days;
using ShopDays.Measures;

namespace ShopDays.Cli.Commands;

/// <summary><c>shopdays orders</c>: all jobs in hand in one shop, and when another could be promised.</summary>
internal sealed class OrdersCommand(Screen screen, IClock clock) : IShopCommand
{
    private const string InHand = "orders in hand";

    private readonly Option<string?> like = new("--like") { Description = "Say when a new piece like this job could be promised: a job's file, or its name.", HelpName = "JOB" };
    private readonly Option<LocalDate?> start = LogOptions.Read("--start", "With --like: the date on which it would begin; today unless given.", "DATE", DateText.Read);
    private readonly Option<bool> all = new("--all") { Description = "Print every session, not only those of the next two weeks." };
    private readonly Option<string?> pdf = WrittenTo.AFile("--pdf", "Write the orders and the next two weeks to this PDF file; with --like also when the new piece could be promised.");
    private readonly Option<string?> ical = WrittenTo.AFile("--ical", "Write sessions, reminders and dates of all orders to this iCalendar file; one that is there is brought up to date.");
    private readonly Option<string?> folder = new("--shop") { Description = "The shop's folder itself; when left out, where you stand or a shop's folder above it.", HelpName = "FOLDER" };
    private readonly Option<bool> priorOnly = new("--prior-only") { Description = "Leave the log aside: times by the built-in rates alone." };
    private readonly Option<bool> json = new("--json") { Description = "Print the answer for other programs; it has all sessions." };
    private readonly Option<bool> quiet = new("--quiet", "-q") { Description = "Print nothing but complaints." };
    private readonly Option<bool> verbose = new("--verbose", "-v") { Description = "Say on the error stream what is being worked out." };
    private readonly SearchOptions search = new(
        "Where draws and searches begin: the same seed gives the same answer.",
        "How hard to search for each layout.",
        "What to spare in the layouts; as priced unless given.");

    /// <inheritdoc/>
    public Command Describe()
    {
        var command = new Command("orders", "Plan all jobs in hand in one shop, with the chance of each date; or say when another could be promised.\nExample: shopdays orders --like writing-table") { like, start, all, pdf, ical, folder, priorOnly };
        search.AddSchedulesTo(command, "Schedules to look at for each plan.");
        search.AddTo(command);
        command.Add(json);
        command.Add(quiet);
        command.Add(verbose);
        command.Validators.Add(typed =>
        {
            if (typed.GetResult(start) is { Implicit: false } && typed.GetResult(like) is null)
            {
                typed.AddError("'--start' says when a new piece would begin: it goes with '--like JOB'");
            }
        });
        command.SetAction(Answer);
        return command;
    }

    private int Answer(ParseResult parsed)
    {
        WrittenTo.SeeThatItHasAPlace(parsed.GetValue(pdf));
        var place = parsed.GetValue(folder) is { } named ? new ShopFolder(Path.GetFullPath(named)) : ShopFolder.MustFindFrom(Directory.GetCurrentDirectory());
        var (read, findings) = ShopAndJobs.Read(place, clock.GetCurrentInstant());
        var model = parsed.GetValue(like) is { } job ? ShopAndJob.Read(job, place.Path, clock.GetCurrentInstant()) : null;
        var unfit = new Findings();
        var calendar = PlanFiles.CalendarToWrite(parsed.GetValue(ical), InHand, unfit);
        findings = [.. findings.Concat(model?.Findings ?? []).Distinct(), .. unfit.InOrder()];
        var answers = parsed.GetValue(quiet) ? screen.Silent() : screen;
        if (findings.Count > 0)
        {
            LogShop.SayMistakes(screen, findings, "nothing was planned: dates that leave a job out would be no dates");
            if (parsed.GetValue(json))
            {
                JsonAnswer.Write(answers.Out, RefusalJson.Of(findings));
            }

            return ExitCode.No;
        }

        if (ComplaintAbout(parsed, read!, model?.Read) is { } complaint)
        {
            screen.Error.WriteLine(complaint);
            return ExitCode.WrongUse;
        }

        var orders = Asked(parsed, read!);
        var (told, another) = orders.Tell(model?.Read, parsed.GetValue(start));
        if (told is null)
        {
            orders.SayWhatStandsAgainst(screen, parsed.GetValue(json) ? answers.Out : null);
            return ExitCode.No;
        }

        if (parsed.GetValue(pdf) is { } paper)
        {
            WholeFile.Save(paper, OrdersBook.Set(told, another, clock.GetCurrentInstant()));
        }

        calendar?.Save(new PlanEvents(told.Shop, InHand, [.. told.Orders.Select(InCalendar)]).Of(told.Plan), clock.GetCurrentInstant());
        Print(parsed, answers, told, another);
        return ExitCode.Done;
    }

    private void Print(ParseResult parsed, Screen answers, ToldOrders told, ToldNewOrder? another)
    {
        if (parsed.GetValue(json))
        {
            JsonAnswer.Write(answers.Out, OrdersJson.Of(told, another));
            return;
        }

        if (another is null)
        {
            OrdersPrint.Print(answers, told, parsed.GetValue(all));
        }
        else
        {
            OrdersPrint.Print(answers, told, another, parsed.GetValue(all));
        }

        LayoutPrint.PrintWritten(answers, [.. ((string?[])[parsed.GetValue(pdf), parsed.GetValue(ical)]).OfType<string>()]);
    }

    private static CalendarOrder InCalendar(ToldOrder order) => new(order.Title, order.Read.LogName, order.Title, order.Marks)
    {
        Due = order.Read.Job.Due,
        Promise = order.IsPromised ? order.Date : order.Forecast.P80?.Date,
        IsPromised = order.IsPromised,
    };

    private OrdersAsked Asked(ParseResult parsed, ShopAndJobs read)
    {
        var rates = LearnedRates.Of(read.Folder, read.Shop, read.Operations, clock, parsed.GetValue(priorOnly));
        var progress = new Progress(screen.Error, parsed.GetValue(verbose), screen.ErrorIsTerminal, screen.Width, screen.Time);
        return new(read, one => search.Workings(parsed, one, rates, progress), rates, progress)
        {
            Now = clock.GetCurrentInstant(),
            Schedules = search.Schedules(parsed),
        };
    }

    private string? ComplaintAbout(ParseResult parsed, ShopAndJobs read, ShopAndJob? model)
    {
        if (model is not null && !string.Equals(model.Folder.Path, read.Folder.Path, StringComparison.Ordinal))
        {
            return $"{QuotedText.Of(parsed.GetValue(like)!)} is a job of another shop";
        }

        var today = clock.GetCurrentInstant().InZone(read.Shop.Place.Zone).Date;
        return parsed.GetValue(start) is { } date && date < today ? $"--start: {DateWords.Of(date)} is past; today is {DateWords.Of(today)}" : null;
    }
}
