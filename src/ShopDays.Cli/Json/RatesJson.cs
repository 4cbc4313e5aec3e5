using ShopDays.Cli.Phrases;
using ShopDays.Times;

namespace ShopDays.Cli.Json;

/// <summary>The answer of <c>shopdays rates --json</c>.</summary>
internal static class RatesJson
{
    /// <summary>The rates as an object to be written.</summary>
    public static object Of(ToldRates told)
    {
        var card = told.Card;
        return new
        {
            Rates = told.Rates.Select(rate => Of(told, rate)),
            Coverage80 = card is null ? null : Share(card, 0.8),
            told.Entries,
            TimedTasks = card?.Times ?? 0,
            ReportCard = card is null ? null : new
            {
                card.Times,
                Inside = card.Coverages.Select(coverage => new { coverage.Share, coverage.Inside, Expected = Figure(coverage.Share * card.Times), Verdict = Trusted.Of(coverage, card.Times) }),
                Bias = Figure(Math.Exp(card.Bias) - 1),
                BiasError = double.IsFinite(card.BiasError) ? Figure(card.BiasError) : (double?)null,
                RangeRatio = Figure(card.Width),
                LogScore = Figure(card.LogScore),
            },
            Spoiling = told.Spoiling.Select(one => new
            {
                Operation = one.Operation.Name,
                Method = one.Method.Name,
                Prior = Figure(one.Prior),
                Learned = Figure(one.Mean),
                Low80 = Figure(one.At(0.1)),
                High80 = Figure(one.At(0.9)),
                Pieces = Figure(one.Pieces),
                Spoiled = Figure(one.Spoiled),
            }),
            told.Sentences,
            Odd = told.Odd.Select(Of),
            LeftOut = told.LeftOut.Select(one => new { one.Reason, Entries = one.Entries.Select(entry => entry.Id.Number) }),
        };
    }

    /// <summary>A time that is asked about.</summary>
    public static object Of(OddTime odd) => new
    {
        Entries = odd.Judged.Work.Entries.Select(entry => entry.Number),
        odd.Judged.Work.Job,
        odd.Judged.Work.Task,
        On = JsonAnswer.Date(odd.Judged.Work.On),
        Minutes = JsonAnswer.Minutes(odd.Judged.Work.Took),
        ExpectedLow = JsonAnswer.Minutes(odd.Judged.Credible.Low),
        ExpectedMiddle = JsonAnswer.Minutes(odd.Judged.Expected.Median),
        ExpectedHigh = JsonAnswer.Minutes(odd.Judged.Credible.High),
        Commands = odd.Answers.Select(answer => answer.Command),
    };

    // The four figures of a row are read the same way: per minute, per hour, or minutes each, as 'per' says.
    private static object Of(ToldRates told, OperationRate rate)
    {
        var reading = told.ReadingOf(rate);
        var (low, high) = reading.Range80(rate.Learned);
        return new
        {
            Operation = rate.Operation.Name,
            Method = rate.Method.Name,
            Unit = rate.Operation.Unit.Name,
            ReadAs = reading.Unit,
            reading.Per,
            At = told.AtOf(rate),
            Properties = PropertiesJson.Of(rate.At),
            Prior = Figure(reading.Middle(rate.Prior)),
            Learned = Figure(reading.Middle(rate.Learned)),
            Low80 = Figure(low),
            High80 = Figure(high),
            rate.Entries,
            rate.HeldOut,
            MinutesPerUnit = new
            {
                Prior = Figure(rate.Prior.Median.Minutes),
                Learned = Figure(rate.Learned.Median.Minutes),
                Low80 = Figure(rate.Learned.At(0.1).Minutes),
                High80 = Figure(rate.Learned.At(0.9).Minutes),
            },
        };
    }

    private static double? Share(ReportCard card, double share) =>
        Figure((double)card.Coverages.Single(one => one.Share == share).Inside / card.Times);

    private static double Figure(double value) => Math.Round(value, 5, MidpointRounding.AwayFromZero);
}
