using NodaTime;
using ShopDays.Logbook;
using ShopDays.Times;
using ShopDays.Work;
using Xunit;

namespace ShopDays.Tests.Times;

public sealed class RateCourseTests
{
    private static readonly Operation Rip = AnOperation.Named("rip", minutes: 2, low: 1.2, high: 3.4, slopes: new Slope(Covariate.Thickness, 1, 1.1));
    private static readonly Operation Plane = AnOperation.Named("plane", group: PaceGroup.Planing, rest: 0.25, learning: 0.9);
    private static readonly LocalDate First = new(2027, 1, 4);
    private static readonly Learning How = new(First.PlusDays(60), "maker");

    [Fact]
    public void A_rate_is_the_time_for_one_unit_with_its_rest_and_without_setting_up()
    {
        var plane = Rates(Learned(0)).Single(rate => rate.Operation == Plane);

        Assert.Equal(10 * 1.25, plane.Prior.Median.Minutes, 9);
        Assert.Equal(0, plane.Entries);
    }

    [Fact]
    public void A_rate_is_stated_for_a_board_that_was_timed_unless_another_is_asked_for()
    {
        Assert.Equal(1.5, Rates(Learned(3)).Single(rate => rate.Operation == Rip).At[Covariate.Thickness]);
        var thick = OperationRate.All(Learned(3), new Dictionary<Covariate, double> { [Covariate.Thickness] = 3 }).Single(rate => rate.Operation == Rip);
        Assert.Equal(3, thick.At[Covariate.Thickness]);
        Assert.Equal(2 * Math.Pow(3, 1.1), thick.Prior.Median.Minutes, 9);
    }

    [Fact]
    public void A_rate_narrows_with_its_times_and_ends_as_it_is_known_now()
    {
        var model = Learned(12);
        var rip = Rates(model).Single(rate => rate.Operation == Rip);
        var course = Assert.Single(RateCourse.Of(model, How, [rip]));

        Assert.Equal(12, course.Times.Count);
        Assert.Equal(Enumerable.Range(1, 12), course.Then.Select(then => then.Entry));
        Assert.Equal(rip.Learned.Location, course.Then[^1].Belief.Location, 9);
        Assert.True(Width(course.Then[0].Belief) < Width(rip.Prior));
        Assert.True(Width(course.Then[^1].Belief) < Width(course.Then[0].Belief));
    }

    [Fact]
    public void Of_many_times_some_are_shown_the_first_and_the_last_among_them()
    {
        var model = Learned(70);
        var course = Assert.Single(RateCourse.Of(model, How, [Rates(model).Single(rate => rate.Operation == Rip)]));

        Assert.Equal(70, course.Times.Count);
        Assert.Equal(16, course.Then.Count);
        Assert.Equal((1, 70), (course.Then[0].Entry, course.Then[^1].Entry));
    }

    [Fact]
    public void A_time_is_told_for_the_stated_board_and_keeps_what_it_was_off_by()
    {
        var model = Learned(4);
        var rip = Rates(model).Single(rate => rate.Operation == Rip);
        var each = Assert.Single(RateCourse.Of(model, How, [rip])).Times[0].EachUnit;
        var judged = model.Log[0];

        Assert.Equal(judged.Work.Took / model.RateOf(judged.Work.Timing).Median, each / rip.Learned.Median, 9);
    }

    [Fact]
    public void What_was_never_timed_goes_by_the_pace_of_what_was()
    {
        var paces = OperationRate.Paces(Learned(12)).ToDictionary(one => one.Group, one => one.Factor);

        // Ripping takes a half longer: planing, which shares the pace alone, is believed slower, by less than that.
        Assert.InRange(paces[PaceGroup.Planing], 1.02, 1.49);
        Assert.False(paces.ContainsKey(PaceGroup.Sawing));
    }

    private static double Width(TimeBelief belief) => Math.Log(belief.At(0.9) / belief.At(0.1));

    private static IReadOnlyList<OperationRate> Rates(RateModel model) => OperationRate.All(model, new Dictionary<Covariate, double>());

    private static RateModel Learned(int rips)
    {
        var prior = RateModel.FromPrior(new([Rip, Plane]));
        var timing = Rip.Of(10) with { Covariates = new Dictionary<Covariate, double> { [Covariate.Thickness] = 1.5 } };
        return prior.Learn(
            [.. Enumerable.Range(0, rips).Select(number => new TimedWork
            {
                Timing = timing,
                Took = prior.TimeFor(timing).P50 * (1.5 * Math.Exp(0.1 * ((number % 3) - 1))),
                On = First.PlusDays(number / 2),
                Worker = "maker",
                Task = "rip",
                Entries = [new EntryId(number + 1)],
            })],
            How);
    }
}
