using ShopDays.Measures;

namespace ShopDays.Cli.Phrases;

/// <summary>What a price may come to, in sentences for the maker.</summary>
internal static class RiskWords
{
    /// <summary>The sentences.</summary>
    public static IEnumerable<string> Of(ToldPrice told)
    {
        var (risk, price) = (told.Risk, told.Price.Quoted.BeforeTax);
        yield return $"At {MoneyWords.Of(price)}, the price before tax, the chance of earning less than {MoneyWords.Of(risk.Rate)} an hour is {ChanceWords.Of(told.Chance)}.";
        if (risk.BreakEven(price) is { } even)
        {
            yield return even > WorkTime.Zero
                ? $"The work may take {HourWords.Of(even)} before that happens; as likely as not it takes {HourWords.Of(told.HandsOn.P50)}, with bad luck {HourWords.Of(told.HandsOn.P90)}."
                : $"The price does not even cover what is bought, {MoneyWords.Of(risk.Outlay)}.";
        }

        if (told.PerHour(told.HandsOn.P50) is { } likely && told.PerHour(told.HandsOn.P90) is { } bad)
        {
            yield return $"An hour then earns {MoneyWords.Of(likely)} as likely as not, and {MoneyWords.Of(bad)} with bad luck (nine in ten do better).";
        }

        yield return $"The least price for a risk of {MoneyWords.Share((decimal)told.ChosenRisk)} is {MoneyWords.Of(told.Least)}.";
    }
}
