using NodaTime;
using ShopDays.Logbook;
using ShopDays.Measures;
using ShopDays.Times;
using ShopDays.Work;
using Xunit;

namespace ShopDays.Tests.Times;

public sealed class LearningTests
{
    private static readonly Operation Rip = AnOperation.Named("rip", slopes: new Slope(Covariate.Thickness, 1, 1.1));
    private static readonly Operation Resaw = AnOperation.Named("resaw");
    private static readonly Operation Plane = AnOperation.Named("plane", group: PaceGroup.Planing);
    private static readonly OperationCatalogue Catalogue = new([Rip, Resaw, Plane]);

    private static double Expected(RateModel model, Operation operation) => model.BeliefOf(operation.Of(1)).Median.Minutes;

    private static TimedWork[] Times(Operation operation, int count, double minutes, string worker = TimedLog.Maker) =>
        [.. Enumerable.Range(0, count).Select(at => operation.Of(1).Took(minutes * (at % 2 == 0 ? 0.9 : 1 / 0.9), worker))];

    [Fact]
    public void An_empty_log_changes_nothing()
    {
        var prior = RateModel.FromPrior(Catalogue);
        var learned = TimedLog.Learned(Catalogue);

        Assert.Equal(prior.TimeFor(Rip.Of(3)), learned.TimeFor(Rip.Of(3)));
        Assert.Equal(prior.Draw(AnOperation.Tasks(Rip.Of(3)), 20, 1).Minutes, learned.Draw(AnOperation.Tasks(Rip.Of(3)), 20, 1).Minutes);
    }

    [Fact]
    public void Many_times_of_one_operation_bring_its_expectation_to_their_middle_and_narrow_its_range()
    {
        var learned = TimedLog.Learned(Catalogue, Times(Rip, 60, minutes: 14));
        var (before, after) = (RateModel.FromPrior(Catalogue).TimeFor(Rip.Of(1)), learned.TimeFor(Rip.Of(1)));

        // Sixty times scattered by a tenth leave the prior a pull of about a hundredth.
        Assert.Equal(1, Expected(learned, Rip) / 14, 0.03);
        Assert.True(after.P90 / after.P10 < before.P90 / before.P10 * 0.8);
    }

    [Fact]
    public void One_operation_s_times_inform_the_others_and_those_of_its_own_group_more()
    {
        var learned = TimedLog.Learned(Catalogue, Times(Rip, 10, minutes: 15));

        Assert.True(Expected(learned, Rip) > Expected(learned, Resaw));
        Assert.True(Expected(learned, Resaw) > Expected(learned, Plane));
        Assert.True(Expected(learned, Plane) > 10.2, "ten minutes is what the catalogue says");
    }

    [Theory]
    [InlineData(1)]
    [InlineData(8)]
    public void However_odd_the_times_of_one_operation_are_all_others_are_little_moved(int times)
    {
        // Six times what the catalogue says. With a pace spread by a fifth its own share would be some tenths; half as long again is
        // far more than that, and far less than to believe the maker six times slower at everything.
        var learned = TimedLog.Learned(Catalogue, Times(Rip, times, minutes: 60));

        Assert.InRange(Expected(learned, Plane), 10, 15);
    }

    [Fact]
    public void A_maker_who_is_slow_at_three_things_is_believed_slow_at_the_fourth()
    {
        var fourth = AnOperation.Named("glue", group: PaceGroup.Assembly);
        var learned = TimedLog.Learned(new([Rip, Resaw, Plane, fourth]), [.. Times(Rip, 3, 60), .. Times(Resaw, 3, 60), .. Times(Plane, 3, 60)]);

        Assert.InRange(Expected(learned, fourth), 35, 75);
    }

    [Fact]
    public void Times_in_thick_and_thin_stock_teach_how_thickness_matters()
    {
        TimedWork[] log = [.. Enumerable.Range(0, 40).Select(at =>
        {
            var thickness = at % 2 == 0 ? 1.0 : 3.0;
            return (Rip.Of(1) with { Covariates = new Dictionary<Covariate, double> { [Covariate.Thickness] = thickness } }).Took(10 * Math.Pow(thickness, 1.6));
        })];

        Assert.True(TimedLog.Learned(Catalogue, log).CentralSlope(Rip, Rip.Methods[0], Covariate.Thickness) > 1.4);
    }

    [Fact]
    public void Old_times_count_less_when_the_shop_says_so()
    {
        TimedWork[] log = [.. Enumerable.Range(0, 20).Select(_ => Rip.Of(1).Took(14, daysAgo: 730)), .. Enumerable.Range(0, 5).Select(_ => Rip.Of(1).Took(10))];
        var prior = RateModel.FromPrior(Catalogue);
        var never = prior.Learn(log, TimedLog.How);
        var fast = prior.Learn(log, TimedLog.How with { HalfLife = Duration.FromDays(365) });

        Assert.True(Expected(fast, Rip) < Expected(never, Rip) - 0.5);
        Assert.Equal(0.25, (TimedLog.How with { HalfLife = Duration.FromDays(365) }).WeightOf(TimedLog.Day.PlusDays(-730)), 12);
    }

    [Fact]
    public void A_slow_helper_s_times_do_not_make_the_maker_slow()
    {
        TimedWork[] log = [.. Times(Rip, 20, minutes: 10), .. Times(Rip, 20, minutes: 16, worker: "Sam")];
        var learned = TimedLog.Learned(Catalogue, log);

        Assert.Equal(1, Expected(learned, Rip) / 10, 0.05);
        Assert.True(learned.TimeFor(Rip.Of(1), "Sam").P50.Minutes > 14);
    }

    [Fact]
    public void A_helper_s_times_still_tell_what_is_slow_for_anybody()
    {
        TimedWork[] log = [.. Times(Rip, 20, minutes: 10), .. Times(Rip, 20, minutes: 16, worker: "Sam"), .. Times(Plane, 20, minutes: 32, worker: "Sam")];

        Assert.True(Expected(TimedLog.Learned(Catalogue, log), Plane) > 15);
    }

    [Fact]
    public void A_slip_of_the_pencil_is_held_out_told_and_spoils_nothing()
    {
        TimedWork[] log = [.. Times(Rip, 12, minutes: 10), Rip.Of(1).Took(100)];
        var learned = TimedLog.Learned(Catalogue, log);

        var odd = Assert.Single(learned.Log, one => one.IsHeldOut);
        Assert.Equal(100, odd.Work.Took.Minutes);
        Assert.Equal(10, odd.Factor, 1.0);
        Assert.Equal(Expected(TimedLog.Learned(Catalogue, log[..12]), Rip), Expected(learned, Rip), 9);
    }

    [Fact]
    public void Where_dreadful_days_are_part_of_the_work_only_the_worst_one_in_a_hundred_is_asked_about()
    {
        // Nine days in ten are ordinary, each tenth takes from five to some twenty times as long.
        TimedWork[] log = [.. Enumerable.Range(0, 400).Select(at => Rip.Of(1).Took(at % 10 == 0 ? 50 + (at * 0.4) : 9.5 + (at % 7 * 0.15)))];
        var held = TimedLog.Learned(Catalogue, log).Log.Where(one => one.IsHeldOut).Select(one => one.Work.Took.Minutes).ToList();

        Assert.Equal(log.Select(one => one.Took.Minutes).OrderDescending().Take(4).Order(), held.Order());
    }

    [Fact]
    public void Several_slips_in_a_short_log_are_held_out_together()
    {
        TimedWork[] log = [.. Times(Rip, 14, minutes: 10), Rip.Of(1).Took(100), Rip.Of(1).Took(140)];

        Assert.Equal([100, 140], TimedLog.Learned(Catalogue, log).Log.Where(one => one.IsHeldOut).Select(one => one.Work.Took.Minutes));
    }

    [Fact]
    public void A_time_that_the_maker_keeps_is_learned_from_however_odd()
    {
        TimedWork[] log = [.. Times(Rip, 12, minutes: 10), Rip.Of(1).Took(100, kept: true)];
        var learned = TimedLog.Learned(Catalogue, log);

        Assert.DoesNotContain(learned.Log, one => one.IsHeldOut);
        Assert.True(Expected(learned, Rip) > Expected(TimedLog.Learned(Catalogue, log[..12]), Rip));
    }

    [Fact]
    public void A_maker_three_times_slower_than_the_catalogue_is_believed_from_the_first_time()
    {
        TimedWork[] log = [.. Times(Rip, 3, minutes: 30), .. Times(Plane, 3, minutes: 30), .. Times(Resaw, 3, minutes: 30)];
        for (var count = 1; count <= log.Length; count++)
        {
            Assert.DoesNotContain(TimedLog.Learned(Catalogue, log[..count]).Log, one => one.IsHeldOut);
        }

        Assert.True(Expected(TimedLog.Learned(Catalogue, log), Plane) > 22);
    }

    [Fact]
    public void With_few_times_only_an_absurd_one_is_held_out() =>
        Assert.True(Assert.Single(TimedLog.Learned(Catalogue, Rip.Of(1).Took(150)).Log).IsHeldOut);

    [Fact]
    public void What_the_others_make_one_expect_is_what_a_log_without_that_time_says()
    {
        TimedWork[] log = [.. Times(Rip, 7, minutes: 12), .. Times(Plane, 5, minutes: 9), .. Times(Resaw, 3, minutes: 11, worker: "Sam")];
        var learned = TimedLog.Learned(Catalogue, log);
        for (var left = 0; left < log.Length; left++)
        {
            var without = TimedLog.Learned(Catalogue, [.. log.Where((_, at) => at != left)]).BeliefOf(log[left].Timing, log[left].Worker);
            var expected = learned.Log[left].Expected;

            // Nine digits leave room for the rounding of the two ways there, and for nothing else.
            Assert.Equal(without.Location, expected.Location, 9);
            Assert.Equal(without.Scale, expected.Scale, 9);
            Assert.Equal(without.Degrees, expected.Degrees, 9);
        }
    }

    [Fact]
    public void One_more_time_gives_the_same_as_the_whole_log_anew()
    {
        TimedWork[] log = [.. Times(Rip, 9, minutes: 12), .. Times(Plane, 6, minutes: 9)];
        var anew = TimedLog.Learned(Catalogue, log);
        var more = TimedLog.Learned(Catalogue, log[..^1]).With(log[^1]);

        Assert.Equal(anew.RateOf(Plane.Of(2)).Location, more.RateOf(Plane.Of(2)).Location, 9);
        Assert.Equal(anew.RateOf(Rip.Of(2)).Scale, more.RateOf(Rip.Of(2)).Scale, 9);
        Assert.Equal(log.Length, more.Log.Count);
    }

    [Fact]
    public void Someone_the_model_has_no_pace_for_is_refused_by_name()
    {
        var error = Assert.Throws<InvalidOperationException>(() => TimedLog.Learned(Catalogue).With(Rip.Of(1).Took(10, worker: "Sam")));

        Assert.Contains("'Sam'", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_rate_is_surer_than_a_single_task()
    {
        var learned = TimedLog.Learned(Catalogue, Times(Rip, 30, minutes: 14));

        Assert.True(learned.RateOf(Rip.Of(1)).Scale < learned.BeliefOf(Rip.Of(1)).Scale / 2);
        Assert.Equal(WorkTime.FromMinutes(14).Minutes, learned.RateOf(Rip.Of(1)).Median.Minutes, 0.5);
    }
}
