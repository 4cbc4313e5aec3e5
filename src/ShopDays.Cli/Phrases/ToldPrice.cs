using NodaTime;
using ShopDays.Cli.Files;
using ShopDays.Layouts;
using ShopDays.Measures;
using ShopDays.Parts;
using ShopDays.Plans;
using ShopDays.Prices;
using ShopDays.Times;

namespace ShopDays.Cli.Phrases;

/// <summary>A price with all that is told about it: to the maker, to other programs, and some of it to the client.</summary>
internal sealed record ToldPrice
{
    /// <summary>The shop and the job.</summary>
    public required ShopAndJob Read { get; init; }

    /// <summary>What the shop charges.</summary>
    public required ShopMoney Money { get; init; }

    /// <summary>Where the parts come out of the boards.</summary>
    public required Layout Layout { get; init; }

    /// <summary>The timber.</summary>
    public required TimberBill Timber { get; init; }

    /// <summary>What the price is made of.</summary>
    public required PriceBuildUp Price { get; init; }

    /// <summary>What it may come to.</summary>
    public required PriceRisk Risk { get; init; }

    /// <summary>The risk that the maker would take, 0 or more and less than 1.</summary>
    public required double ChosenRisk { get; init; }

    /// <summary>The range of all hands-on time.</summary>
    public required TimeRange HandsOn { get; init; }

    /// <summary>The plan, or what stands against it.</summary>
    public required PlanAnswer Plan { get; init; }

    /// <summary>The day on which its work begins: the job's start, or the day of the quote where that is past and nothing is done.</summary>
    public required LocalDate Begins { get; init; }

    /// <summary>What the times come from.</summary>
    public required TimesBehind Behind { get; init; }

    /// <summary>The date by the shop's clock.</summary>
    public required LocalDate Today { get; init; }

    /// <summary>The seed of the draws.</summary>
    public required int Seed { get; init; }

    /// <summary>The piece.</summary>
    public Job Job => Read.Job;

    /// <summary>How its lines are worded.</summary>
    public PriceWords Words => new(Read.Located.Format);

    /// <summary>The chance that an hour earns less than the rate at the price as it is quoted.</summary>
    public double Chance => Risk.ChanceBelowRate(Price.Quoted.BeforeTax);

    /// <summary>The least price for the risk that the maker would take.</summary>
    public Money Least => Risk.LeastPrice(ChosenRisk);

    /// <summary>The last day on which the quote holds.</summary>
    public LocalDate ValidUntil => Today.PlusDays(Money.ValidDays);

    /// <summary>Prices that are marked on the curve of the risk.</summary>
    public IReadOnlyList<(Money Price, string Mark)> Marks =>
        [(Price.Quoted.BeforeTax, "as quoted"), (Least, $"least for a risk of {MoneyWords.Share((decimal)ChosenRisk)}"), (Price.CostWithContingency, "the cost")];

    /// <summary>What an hour earns at the quoted price when the work takes so long; null where it takes no time.</summary>
    public Money? PerHour(WorkTime time) => time > WorkTime.Zero ? Risk.PerHour(Price.Quoted.BeforeTax, time) : null;

    /// <summary>The payments, each with its date by the plan; none where there is no plan, or the plan has no such work.</summary>
    public IReadOnlyList<(Payment Payment, LocalDate? Date)> Payments
    {
        get
        {
            var dates = Plan is PlanAnswer.Planned planned ? new PaymentDates(planned, Begins) : null;
            return [.. Price.Quoted.Payments.Select(payment => (payment, dates?.Of(payment.Stage.On)))];
        }
    }

    /// <summary>What to look at before it is sent.</summary>
    public IReadOnlyList<string> Notes => [.. NotesOfMoney(), .. NotesOfDates()];

    /// <summary>What a quote should say and the job file does not; none where it says all.</summary>
    public IReadOnlyList<string> NotSaid =>
    [
        .. new (bool IsThere, string Key)[]
        {
            (Job.Commission.Client is not null, "client"),
            (Job.Commission.Description is not null, "description"),
            (Job.Commission.Dimensions is not null, "dimensions"),
            (Job.Commission.Included.Count > 0, "included"),
            (Job.Commission.NotIncluded.Count > 0, "not-included"),
        }.Where(one => !one.IsThere).Select(one => one.Key),
    ];

    private IEnumerable<string> NotesOfMoney()
    {
        if (Price.Profit.Amount < 0)
        {
            yield return $"The price does not cover the cost with what may go wrong: {MoneyWords.Of(Price.Profit * -1)} are lacking.";
        }

        if (Timber.AssumedBoardFoot is not null)
        {
            foreach (var said in CostWords.Assumptions(Layout.Cost with { AssumedBoardFoot = Timber.AssumedBoardFoot }, Read.Located.Format))
            {
                yield return said + " Write 'price' at its line before the quote is sent.";
            }
        }

        if (Job.Work.Sum(task => task.PaidKilometres) > 0 && Money.Terms.Travel is null)
        {
            yield return "The job has paid travel and the shop no 'travel' price: it is not in the price.";
        }
    }

    private IEnumerable<string> NotesOfDates()
    {
        if (Plan is PlanAnswer.CannotBePlanned)
        {
            yield return $"The job cannot be planned, so that its payments have no dates; why: shopdays plan {Read.LogName}";
        }
        else if (Payments.Where(one => one.Date is null).Select(one => PriceWords.When(one.Payment.Stage.On)).ToList() is { Count: > 0 } without)
        {
            yield return $"The plan has no date for what is paid {string.Join(" or ", without)}.";
        }

        if (Read.Folder.JobNames().Count > 1)
        {
            yield return "The dates are those of this job alone in the shop; among the other orders in hand: shopdays orders";
        }

        if (Job.Start < Today)
        {
            yield return $"The start, {DateWords.Of(Job.Start)}, is past: the dates are those of {(Begins < Today ? "the plan as it was then" : "a plan from today")}.";
        }
    }
}
