using CsCheck;
using NodaTime;
using ShopDays.Cli.Files;
using ShopDays.Measures;
using ShopDays.Parts;
using ShopDays.Work;
using Xunit;

namespace ShopDays.Tests.Work;

public sealed class DrynessTests
{
    private static readonly LocalDate Start = new(2027, 3, 1);

    /// <summary>12 C and 65 %: timber comes to a little over 12 %.</summary>
    private static readonly YearAir Barn = new(new(Temperature.FromCelsius(12), Percent.FromPercent(65)), new Dictionary<int, Climate>());

    [Fact]
    public void A_board_that_was_read_near_its_airs_moisture_is_ready()
    {
        var one = Of(Read(12.5, new(2027, 2, 1)));

        Assert.Equal(DrynessBasis.Reading, one.Basis);
        Assert.True(one.IsReadyOn(Start));
        Assert.InRange(one.Air.Percent, 11.5, 13);
    }

    [Fact]
    public void A_board_that_is_wetter_is_ready_later_and_when_is_known_within_a_range()
    {
        var one = Of(Read(18, new(2027, 2, 15)));

        Assert.True(one.IsKnown);
        Assert.False(one.IsReadyOn(Start));
        Assert.True(one.Earliest < one.Likely && one.Likely < one.Latest);
    }

    [Fact]
    public void A_board_drier_than_its_air_need_not_wait() => Assert.True(Of(Read(7, new(2027, 2, 1))).IsReadyOn(Start));

    [Fact]
    public void The_last_reading_counts_and_one_without_a_date_is_the_oldest()
    {
        var drying = new Drying { Readings = [new(null, Moist(30)), new(new(2026, 11, 1), Moist(20)), new(new(2027, 2, 20), Moist(12))] };

        Assert.Equal(Moist(12), Of(drying).Moisture);
    }

    [Fact]
    public void Two_readings_show_a_boards_own_pace_and_narrow_the_range() =>
        Gen.Select(Gen.Double[18, 28], Gen.Double[0.3, 3], Gen.Int[20, 60]).Sample((wet, unlike, days) =>
        {
            var board = ABoard(Drying.Unknown);
            var usual = new DryingCourse(board.Species, board.Thickness, Barn.EquilibriumOn, BuiltIn.Waits, DryingPace.Usual);
            var (first, last) = (new LocalDate(2026, 11, 1), new LocalDate(2026, 11, 1).PlusDays(days));
            var its = usual.Paced(usual.HalvingDays * unlike);
            var later = its.Later(Moist(wet), first, last);
            if (later.Percent < Of(board).Air.Percent + 1.01 || wet - later.Percent < 1.01)
            {
                return;
            }

            var one = Of(board with { Drying = new Drying { Readings = [new(first, Moist(wet)), new(last, later)] } });
            Assert.True(one.IsOwnPace);
            Assert.InRange(Period.DaysBetween(its.ReadyFrom(later, last)!.Value, one.Likely!.Value), -1, 1);
            Assert.True(one.Earliest <= one.Likely && one.Likely <= one.Latest);
        });

    [Fact]
    public void Readings_that_do_not_fall_or_lie_too_near_show_no_pace()
    {
        Assert.False(Of(new Drying { Readings = [new(new(2026, 11, 1), Moist(20)), new(new(2026, 12, 1), Moist(20))] }).IsOwnPace);
        Assert.False(Of(new Drying { Readings = [new(new(2026, 11, 1), Moist(24)), new(new(2026, 11, 10), Moist(20))] }).IsOwnPace);
        Assert.False(Of(new Drying { Readings = [new(new(2026, 11, 1), Moist(60)), new(new(2026, 11, 15), Moist(13))] }).IsOwnPace);
    }

    [Fact]
    public void A_reading_without_a_date_counts_from_the_start_of_the_work()
    {
        var one = Of(new Drying { Readings = [new(null, Moist(18))] });

        Assert.Null(one.On);
        Assert.Equal(Of(Read(18, Start)).Likely, one.Likely);
    }

    [Fact]
    public void Two_equal_weights_a_week_apart_say_that_it_has_come_to_rest()
    {
        var one = Of(Weighed((new(2027, 2, 1), 4.52), (new(2027, 2, 8), 4.52)));

        Assert.Equal(DrynessBasis.Weighings, one.Basis);
        Assert.Equal(one.Air.Percent, one.Moisture!.Value.Percent, 6);
        Assert.True(one.IsReadyOn(Start));
    }

    [Fact]
    public void Weights_of_a_board_that_dries_as_the_course_has_it_give_its_moisture_back() =>
        Gen.Select(Gen.Double[13, 28], Gen.Double[0.5, 3], Gen.Int[7, 90]).Sample((wet, inches, days) =>
        {
            // One air all year, so that its moisture is a matter of days alone.
            var (first, last) = (new LocalDate(2026, 9, 1), new LocalDate(2026, 9, 1).PlusDays(days));
            var board = ABoard(Drying.Unknown) with { Thickness = Length.FromInches(inches) };
            var course = new DryingCourse(board.Species, board.Thickness, Barn.EquilibriumOn, BuiltIn.Waits, DryingPace.Usual);
            var later = course.Later(Moist(wet), first, last);
            var one = Of(board with { Drying = Weighed((first, 3 * (1 + (wet / 100))), (last, 3 * (1 + (later.Percent / 100)))) });

            Assert.Equal(later.Percent, one.Moisture!.Value.Percent, 3);
        });

    [Fact]
    public void Weights_that_say_nothing_ask_for_another_one()
    {
        // One alone; two within a week; and a fall that no timber has.
        Assert.Equal(DrynessBasis.PoorWeighings, Of(Weighed((new(2027, 2, 1), 4.5))).Basis);
        Assert.Equal(DrynessBasis.PoorWeighings, Of(Weighed((new(2027, 2, 1), 4.5), (new(2027, 2, 6), 4.4))).Basis);
        Assert.Equal(DrynessBasis.PoorWeighings, Of(Weighed((new(2027, 2, 1), 4.5), (new(2027, 2, 8), 2.4))).Basis);
    }

    [Fact]
    public void A_board_that_gains_more_than_its_air_explains_is_measured_again_and_one_that_takes_up_a_little_is_not()
    {
        Assert.Equal(DrynessBasis.PoorWeighings, Of(Weighed((new(2027, 2, 1), 3.91), (new(2027, 2, 15), 4.35))).Basis);
        Assert.Equal(DrynessBasis.Weighings, Of(Weighed((new(2027, 2, 1), 4), (new(2027, 2, 15), 4.02))).Basis);
    }

    [Fact]
    public void Of_readings_and_weights_what_was_done_last_counts()
    {
        var weighed = Weighed((new(2027, 2, 1), 4.52), (new(2027, 2, 8), 4.52));

        Assert.Equal(DrynessBasis.Reading, Of(weighed with { Readings = [new(new(2027, 2, 9), Moist(19))] }).Basis);
        Assert.Equal(DrynessBasis.Weighings, Of(weighed with { Readings = [new(new(2027, 2, 7), Moist(19))] }).Basis);
    }

    [Fact]
    public void Where_nothing_is_known_it_has_to_be_measured()
    {
        var one = Of(Drying.Unknown);

        Assert.False(one.IsKnown);
        Assert.Null(one.Likely);
    }

    [Fact]
    public void Fresh_timber_is_ready_some_time_after_it_was_stacked_and_thick_timber_later()
    {
        var board = ABoard(new Drying { Since = new(2026, 3, 1) });
        var (thin, thick) = (Of(board), Of(board with { Thickness = Length.FromInches(2.0) }));

        Assert.Equal(DrynessBasis.Stacked, thin.Basis);
        Assert.True(thin.Likely < thick.Likely);
        Assert.Null(thick.Moisture);
    }

    [Fact]
    public void Without_a_climate_air_dry_is_what_counts()
    {
        Assert.True(Dryness.Of(ABoard(Read(15, new(2027, 2, 1))), null, Start, BuiltIn.Waits).IsReadyOn(Start));
        Assert.False(Dryness.Of(ABoard(Read(25, new(2027, 2, 20))), null, Start, BuiltIn.Waits).IsReadyOn(Start));
        Assert.False(Dryness.Of(ABoard(Read(12, new(2027, 2, 1))), null, Start, BuiltIn.Waits).IsAtRestOn(Start, null, BuiltIn.Waits));
    }

    [Fact]
    public void Months_with_an_air_of_their_own_change_what_timber_comes_to()
    {
        var dampSpring = Barn with { Months = new Dictionary<int, Climate> { [3] = new(Temperature.FromCelsius(8), Percent.FromPercent(85)) } };

        Assert.True(dampSpring.EquilibriumOn(new(2027, 3, 15)) > dampSpring.EquilibriumOn(new(2027, 4, 15)));
        Assert.True(Dryness.Of(ABoard(Read(17.5, new(2027, 2, 25))), dampSpring, Start, BuiltIn.Waits).IsReadyOn(Start));
        Assert.False(Dryness.Of(ABoard(Read(17.5, new(2027, 2, 25))), Barn, Start, BuiltIn.Waits).IsReadyOn(Start));
    }

    [Fact]
    public void The_air_that_is_spoken_of_is_that_of_the_month_in_which_the_board_may_first_be_planed()
    {
        var dampAugust = Barn with { Months = new Dictionary<int, Climate> { [8] = new(Temperature.FromCelsius(18), Percent.FromPercent(85)), [4] = new(Temperature.FromCelsius(12), Percent.FromPercent(40)) } };

        Assert.Equal(dampAugust.EquilibriumOn(Start), Dryness.Of(ABoard(Read(12, new(2026, 8, 10))), dampAugust, Start, BuiltIn.Waits).Air);
        Assert.Equal(dampAugust.EquilibriumOn(Start), Dryness.Of(ABoard(new() { Since = new(2024, 1, 1) }), dampAugust, Start, BuiltIn.Waits).Air);
        var wet = Dryness.Of(ABoard(Read(24, new(2027, 2, 20))), dampAugust, Start, BuiltIn.Waits);
        Assert.True(wet.Likely > Start.PlusMonths(1), $"{wet.Likely}");
        Assert.Equal(dampAugust.EquilibriumOn(wet.Likely!.Value), wet.Air);
    }

    [Fact]
    public void Timber_dries_toward_its_air_and_never_past_it() =>
        Gen.Select(Gen.Double[0, 60], Gen.Double[0.25, 4], Gen.Int[0, 400]).Sample((moisture, inches, days) =>
        {
            var course = new DryingCourse(AJob.Oak, Length.FromInches(inches), Barn.EquilibriumOn, BuiltIn.Waits, DryingPace.Usual);
            var (air, later) = (Barn.EquilibriumOn(Start).Percent, course.Later(Moist(moisture), Start, Start.PlusDays(days)).Percent);

            Assert.InRange(later, Math.Min(moisture, air) - 1e-9, Math.Max(moisture, air) + 1e-9);
            Assert.Equal(moisture <= air + DryingCourse.Settled, course.ReadyFrom(Moist(moisture), Start) == Start);
        });

    private static Dryness Of(Drying drying) => Of(ABoard(drying));

    private static Dryness Of(Board board) => Dryness.Of(board, Barn, Start, BuiltIn.Waits);

    private static Board ABoard(Drying drying) => AJob.Boards(1, 96, 8, 1)[0] with { Drying = drying };

    private static Drying Read(double percent, LocalDate on) => new() { Readings = [new(on, Moist(percent))] };

    private static Drying Weighed(params (LocalDate On, double Kilograms)[] weights) => new() { Weighings = [.. weights.Select(one => new Weighing(one.On, Mass.FromKilograms(one.Kilograms)))] };

    private static MoistureContent Moist(double percent) => MoistureContent.FromPercent(percent);
}
