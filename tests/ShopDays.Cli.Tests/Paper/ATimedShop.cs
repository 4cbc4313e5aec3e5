using NodaTime;
using ShopDays.Cli.Files;
using ShopDays.Cli.Paper.Setting;
using ShopDays.Cli.Phrases;
using ShopDays.Logbook;
using ShopDays.Times;
using ShopDays.Work;

namespace ShopDays.Cli.Tests.Paper;

/// <summary>A shop whose log holds so many times of ripping, planing and mortising, all a fifth slower than the tables, and one slip.</summary>
internal static class ATimedShop
{
    public static readonly LocalDate Today = new(2027, 4, 1);
    public static readonly Learning How = new(Today, "maker");
    private static readonly string[] Done = ["rip", "flatten face one", "mortise"];

    public static RateModel Model(int times, bool withASlip = false)
    {
        var prior = RateModel.FromPrior(BuiltIn.Operations);
        var work = Enumerable.Range(0, times).Select(number => Work(prior, number)).ToList();
        if (withASlip)
        {
            work[^1] = work[^1] with { Took = work[^1].Took * 60 };
        }

        return prior.Learn(work, How);
    }

    public static ToldRates Told(RateModel model, PaperSize paper, bool inches = true) => new()
    {
        Shop = AShop.With(paper, inches),
        Model = model,
        Card = ReportCard.Of(model),
        Rates = [.. OperationRate.All(model, new Dictionary<Covariate, double>()).Where(rate => rate.Entries + rate.HeldOut > 0)],
        LeftOut = [],
        Entries = model.Log.Count,
        Today = Today,
        Timbers = ["white oak"],
    };

    public static IReadOnlyList<RateCourse> Courses(ToldRates told) => RateCourse.Of(told.Model, How, [.. told.Rates.Where(rate => rate.Entries > 0)]);

    private static TimedWork Work(RateModel prior, int number)
    {
        var operation = BuiltIn.Operations[Done[number % Done.Length]];
        var timing = new TaskTiming.ByOperation
        {
            Operation = operation,
            Method = operation.Methods[0],
            Quantity = 2 + (number % 5),
            Setups = 1,
            Covariates = new Dictionary<Covariate, double> { [Covariate.Thickness] = 1.25, [Covariate.Hardness] = 1360, [Covariate.Depth] = 0.25, [Covariate.Width] = 2 },
        };

        // A spread of luck without chance: a tenth up or down by turns.
        return new()
        {
            Timing = timing,
            Took = prior.TimeFor(timing).P50 * (1.2 * Math.Exp(0.1 * ((number % 3) - 1))),
            On = new LocalDate(2027, 1, 4).PlusDays(number),
            Worker = "maker",
            Job = "chest",
            Task = FormattableString.Invariant($"{operation.Name} {number}"),
            Entries = [new EntryId(number + 1)],
        };
    }
}
