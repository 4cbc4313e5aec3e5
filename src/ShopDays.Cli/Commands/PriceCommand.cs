using System.CommandLine;
using NodaTime;
using ShopDays.Cli.Files;
using ShopDays.Cli.Json;
using ShopDays.Cli.Paper;
using ShopDays.Cli.Paper.Prices;
using ShopDays.Cli.Phrases;
using ShopDays.Cli.Terminal;
using ShopDays.Plans;
using ShopDays.Prices;
using ShopDays.Work;

namespace ShopDays.Cli.Commands;

/// <summary><c>shopdays price</c>: what a job costs, what to ask for it, and what that may come to; the quote for the client.</summary>
internal sealed class PriceCommand(Screen screen, IClock clock) : IShopCommand
{
    private readonly Option<double?> risk = RiskOption.Make();
    private readonly Option<string?> pdf = WrittenTo.AFile("--pdf", "Write the internal sheet, with all of the build-up and the risk, to this PDF file.");
    private readonly Option<string?> quote = WrittenTo.AFile("--quote", "Write the quote for the client to this PDF file.");

    /// <inheritdoc/>
    public Command Describe()
    {
        var command = new JobCommand(screen, clock, "price", "Price the job: its cost, what to ask for it, what that may come to, and the quote.", "shopdays price writing-table --quote quote.pdf").ThatPlans();
        command.Command.Add(risk);
        command.Command.Add(pdf);
        command.Command.Add(quote);
        command.Command.Validators.Add(typed =>
        {
            if (typed.GetValue(pdf) is { Length: > 0 } sheet && typed.GetValue(quote) is { Length: > 0 } sent && Path.GetFullPath(sheet) == Path.GetFullPath(sent))
            {
                typed.AddError("'--pdf' and '--quote' name the same file; expected two, as the internal sheet is not for the client");
            }
        });
        command.AnswerWith(asked =>
        {
            WrittenTo.SeeThatItHasAPlace(asked.Parsed.GetValue(pdf));
            WrittenTo.SeeThatItHasAPlace(asked.Parsed.GetValue(quote));
            return asked.Workings.Read.Shop.Money is { } money ? command.InOrder(asked, made => Answer(asked, made, money)) : SayNoMoney(asked);
        });
        return command.Command;
    }

    private int Answer(Question asked, OrderOfWork.Made made, ShopMoney money)
    {
        var told = Told(asked, made, money);
        var now = clock.GetCurrentInstant();
        List<string> written = [];
        Save(asked.Parsed.GetValue(pdf), () => InternalBook.Set(told, now), written);
        Save(asked.Parsed.GetValue(quote), () => QuoteBook.Set(told, now), written);
        if (asked.AsJson)
        {
            JsonAnswer.Write(asked.Screen.Out, PriceJson.Of(told));
            return ExitCode.Done;
        }

        PricePrint.Print(asked.Screen, told);
        if (asked.Parsed.GetValue(quote) is not null && told.NotSaid is { Count: > 0 } notSaid)
        {
            asked.Screen.Wrapped($"The quote would say more with these keys in the job file: {string.Join(", ", notSaid)}.");
        }

        if (asked.Parsed.GetValue(quote) is not null && PaperNames.Remark(QuoteBook.Names(told)) is { } unprintable)
        {
            asked.Screen.Wrapped(unprintable);
        }

        foreach (var path in written)
        {
            asked.Screen.Out.WriteLine($"Written: {path}");
        }

        return ExitCode.Done;
    }

    private ToldPrice Told(Question asked, OrderOfWork.Made made, ShopMoney money)
    {
        var workings = asked.Workings;
        var read = workings.Read;
        var now = clock.GetCurrentInstant();
        var today = now.InZone(read.Shop.Place.Zone).Date;
        var (plan, begins) = PlanOf(workings, made, now, today);
        var handsOn = workings.DrawsOf(made.Graph).OfAll();
        var timber = TimberBill.Of(workings.Layout, money.Terms.SpareBoards);
        var price = workings.PriceOf(made.Graph, money.Terms, timber);
        return new()
        {
            Read = read,
            Money = money,
            Layout = workings.Layout,
            Timber = timber,
            Price = price,
            Risk = PriceRisk.Of(workings.RiskDrawsOf(made.Graph), money.Terms.Rate.PerHour, price.Outlay),
            ChosenRisk = RiskOption.Of(asked.Parsed, risk),
            HandsOn = handsOn,
            Plan = plan,
            Begins = begins,
            Behind = workings.Rates.Behind,
            Today = today,
            Seed = workings.Seed,
        };
    }

    /// <summary>A client is not told of dates that are over: where nothing is done yet, the work begins today at the earliest.</summary>
    private static (PlanAnswer Plan, LocalDate Begins) PlanOf(Workings workings, OrderOfWork.Made made, Instant now, LocalDate today) =>
        WorkToPlan.RestOf(workings, made, now) is { Standing.IsBegun: false } rest ? (rest.Ahead, today) : (workings.PlanOf(made.Graph), workings.Read.Job.Start);

    private static void Save(string? path, Func<byte[]> bytes, List<string> written)
    {
        if (path is not null)
        {
            WholeFile.Save(path, bytes());
            written.Add(path);
        }
    }

    private int SayNoMoney(Question asked)
    {
        if (asked.AsJson)
        {
            JsonAnswer.Write(asked.Screen.Out, RefusalJson.OfNoMoney());
        }

        screen.Wrapped(screen.Error, $"{ShopFolder.ShopFileName} does not say what an hour has to earn; expected 'money' with a rate or a wage, such as: money: {{rate: 48 per hour, margin: 15%}}");
        return ExitCode.No;
    }
}
