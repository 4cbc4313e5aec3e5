using ShopDays.Measures;
using ShopDays.Times;

namespace ShopDays.Prices;

/// <summary>
/// What a price may come to once the hours are known: from drawn courses of the job, the chance that an hour earns less than
/// the shop's own rate. All prices are before tax.
/// </summary>
public sealed class PriceRisk
{
    private const decimal MinutesOfAnHour = 60;

    // Minutes go through money and back: what differs in the twelfth figure is the same.
    private const double Hair = 1e-12;

    private readonly double[] minutes;

    /// <summary>Makes it.</summary>
    /// <param name="minutes">Hands-on time of all work in each drawn course, at least one, in any order.</param>
    /// <param name="rate">What an hour has to earn.</param>
    /// <param name="outlay">The money that goes out whatever the hours.</param>
    /// <exception cref="ArgumentException">There is no course.</exception>
    public PriceRisk(IEnumerable<double> minutes, Money rate, Money outlay)
    {
        this.minutes = [.. minutes.Order()];
        (Rate, Outlay) = (rate, outlay);
        if (this.minutes.Length == 0)
        {
            throw new ArgumentException("a risk needs at least one course", nameof(minutes));
        }
    }

    /// <summary>Makes it from drawn courses, with what is done again in them.</summary>
    /// <inheritdoc cref="PriceRisk(IEnumerable{double}, Money, Money)"/>
    public static PriceRisk Of(TimeDraws draws, Money rate, Money outlay) =>
        new(draws.Minutes.Select((trial, number) => trial.Sum() + (draws.Reworks?[number].Sum(one => one.Minutes) ?? 0)), rate, outlay);

    /// <summary>What an hour has to earn.</summary>
    public Money Rate { get; }

    /// <summary>The money that goes out whatever the hours.</summary>
    public Money Outlay { get; }

    /// <summary>How many courses were drawn.</summary>
    public int Courses => minutes.Length;

    /// <summary>The time that the work may take before an hour earns less than the rate; null where an hour need not earn anything. Below zero where the price does not cover the outlay.</summary>
    public WorkTime? BreakEven(Money price) => Rate.Amount == 0 ? null : WorkTime.FromHours((double)((price - Outlay).Amount / Rate.Amount));

    /// <summary>The share of courses in which an hour earns less than the rate, 0 to 1.</summary>
    public double ChanceBelowRate(Money price)
    {
        if (BreakEven(price) is not { } time)
        {
            return price.Amount < Outlay.Amount ? 1 : 0;
        }

        var kept = Array.FindIndex(minutes, one => one > time.Minutes + (Hair * Math.Abs(time.Minutes)));
        return kept < 0 ? 0 : (minutes.Length - kept) / (double)minutes.Length;
    }

    /// <summary>The least price at which no more than a share of the courses earn less than the rate; rounded up to the minor unit.</summary>
    /// <param name="risk">The share, 0 or more and less than 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The share is not in this range.</exception>
    public Money LeastPrice(double risk)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(risk);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(risk, 1);

        // So many courses may miss it; a share such as 0.1 is not exact, and a tenth of a thousand courses is a hundred.
        var missed = (int)Math.Floor((risk * minutes.Length) + 1e-9);
        var longest = minutes[minutes.Length - 1 - missed];
        return (Outlay + (Rate * ((decimal)longest / MinutesOfAnHour))).RoundedUp();
    }

    /// <summary>What an hour earns at a price when the work takes so long, rounded to the minor unit; below zero where the price does not cover the outlay.</summary>
    /// <param name="price">The price.</param>
    /// <param name="time">The time, above zero.</param>
    public Money PerHour(Money price, WorkTime time) =>
        (price with { Amount = (price - Outlay).Amount * MinutesOfAnHour / (decimal)time.Minutes }).Rounded();

    /// <summary>The chance at evenly spaced prices, from the first to the last.</summary>
    /// <param name="from">The first price.</param>
    /// <param name="to">The last, above the first.</param>
    /// <param name="steps">How many steps there are between them, at least 1.</param>
    public IReadOnlyList<(Money Price, double Chance)> Curve(Money from, Money to, int steps) =>
    [
        .. Enumerable.Range(0, steps + 1)
            .Select(step => from + ((to - from) * (step / (decimal)steps)))
            .Select(price => (price, ChanceBelowRate(price))),
    ];
}
