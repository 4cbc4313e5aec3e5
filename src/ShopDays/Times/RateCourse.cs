using NodaTime;
using ShopDays.Logbook;
using ShopDays.Measures;

namespace ShopDays.Times;

/// <summary>What was believed of a rate after one of its times was logged.</summary>
/// <param name="Entry">Which of its times, from 1 in the order of the log.</param>
/// <param name="On">The date of that time.</param>
/// <param name="Belief">The time for one unit as it was believed then.</param>
public sealed record RateThen(int Entry, LocalDate On, TimeBelief Belief);

/// <summary>One time of a rate, as a time for one unit at the rate's properties.</summary>
/// <param name="On">Its date.</param>
/// <param name="EachUnit">What it comes to for one unit.</param>
/// <param name="IsHeldOut">Whether it is held out.</param>
public sealed record RateTime(LocalDate On, WorkTime EachUnit, bool IsHeldOut);

/// <summary>How a rate became known: what was believed of it after each of its times, as the whole log stood then.</summary>
/// <param name="Rate">The rate.</param>
/// <param name="Times">Its times in the order of the log.</param>
/// <param name="Then">What was believed; of many times not after each, but always after the first and the last.</param>
public sealed record RateCourse(OperationRate Rate, IReadOnlyList<RateTime> Times, IReadOnlyList<RateThen> Then)
{
    /// <summary>Beliefs for one rate; more would not be seen in a picture, and each is learned from the whole log.</summary>
    private const int MostThen = 16;

    /// <summary>The courses of some rates.</summary>
    /// <param name="model">What is known now.</param>
    /// <param name="how">How it was learned.</param>
    /// <param name="rates">The rates, each with at least one time.</param>
    public static IReadOnlyList<RateCourse> Of(RateModel model, Learning how, IReadOnlyList<OperationRate> rates)
    {
        var prior = RateModel.FromPrior(model.Terms.Catalogue);
        TimedWork[] work = [.. model.Log.Select(one => one.Work)];
        var asThen = new Dictionary<int, RateModel>();
        return [.. rates.Select(CourseOf)];

        RateCourse CourseOf(OperationRate rate)
        {
            List<(JudgedWork Judged, int Place)> own = [.. model.Log
                .Select((judged, place) => (Judged: judged, Place: place))
                .Where(one => one.Judged.Work.Timing.Operation.Name == rate.Operation.Name && one.Judged.Work.Timing.Method.Name == rate.Method.Name)];
            return new(
                rate,
                [.. own.Select(one => new RateTime(one.Judged.Work.On, rate.OfEntry(model, one.Judged), one.Judged.IsHeldOut))],
                [.. Shown(own.Count).Select(entry => new RateThen(entry + 1, own[entry].Judged.Work.On, rate.By(ModelAfter(own[entry].Place))))]);
        }

        RateModel ModelAfter(int place)
        {
            if (!asThen.TryGetValue(place, out var then))
            {
                then = prior.Learn(work[..(place + 1)], how with { AsOf = work[place].On });
                asThen.Add(place, then);
            }

            return then;
        }
    }

    private static IEnumerable<int> Shown(int entries) => entries <= MostThen
        ? Enumerable.Range(0, entries)
        : Enumerable.Range(0, MostThen).Select(step => (int)Math.Round(step * (entries - 1.0) / (MostThen - 1), MidpointRounding.AwayFromZero));
}
