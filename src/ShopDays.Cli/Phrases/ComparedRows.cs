using NodaTime;
using ShopDays.Choices;

namespace ShopDays.Cli.Phrases;

/// <summary>The rows in which ways of doing a job are compared.</summary>
/// <param name="Name">What the row tells.</param>
/// <param name="Cells">The figure of each way; a dash where it cannot be done.</param>
internal sealed record ComparedRows(string Name, IReadOnlyList<string> Cells)
{
    private const string None = "-";

    /// <summary>The rows.</summary>
    /// <param name="told">The comparison.</param>
    /// <param name="ways">The ways, the job as it is among them.</param>
    public static IReadOnlyList<ComparedRows> Of(ToldComparison told, IReadOnlyList<Tried> ways)
    {
        var format = told.Read.Located.Format;
        return
        [
            Row("shop days", outcome => CountWords.Number(outcome.Plan.ShopDays)),
            Row("finish, as likely as not", outcome => Date(outcome.Forecast.P50)),
            Row("promise, four in five", outcome => Date(outcome.Forecast.P80)),
            Row("hands-on, as likely", outcome => HourWords.Of(outcome.Estimate.HandsOn.P50)),
            Row("heavy work, as likely", outcome => HourWords.Of(outcome.Estimate.Heavy.P50)),
            Row("days called in", outcome => CountWords.Number(outcome.CalledIn)),
            Row("boards cut", outcome => CountWords.Number(outcome.Boards)),
            Row("timber lost, left over", outcome => SawnWords.Of(outcome.Lost, format)),
            .. told.Read.Shop.Money is null
                ? (ComparedRows[])[]
                : [
                    Row("timber, price", outcome => MoneyWords.Of(outcome.Timber.Total)),
                    Row("cost, bad luck in it", outcome => outcome.Money is { } money ? MoneyWords.Of(money.Cost) : None),
                    Row($"price at {MoneyWords.Share((decimal)told.Risk)} risk", outcome => outcome.Money is { } money ? MoneyWords.Of(money.Least) : None),
                ],
        ];

        ComparedRows Row(string name, Func<Outcome, string> cell) => new(name, [.. ways.Select(way => way.Outcome is { } outcome ? cell(outcome) : None)]);
    }

    private static string Date(ZonedDateTime? time) => time is { } known ? DateWords.Plain(known.Date) : "no date";
}
