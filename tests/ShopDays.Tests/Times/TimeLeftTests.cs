using CsCheck;
using ShopDays.Logbook;
using ShopDays.Measures;
using ShopDays.Times;
using ShopDays.Work;
using Xunit;

namespace ShopDays.Tests.Times;

public sealed class TimeLeftTests
{
    private static readonly Operation Rip = AnOperation.Named("rip");
    private static readonly RateModel Model = RateModel.FromPrior(new([Rip]));

    [Fact]
    public void What_is_left_is_above_zero_whatever_was_spent() =>
        Gen.Select(Gen.Double[0.01, 3000], Gen.Bool, Gen.Int[1, 1000]).Sample((spent, isGuess, seed) =>
        {
            var tasks = AnOperation.Tasks(isGuess ? AnOperation.Guess(20, 30, 60) : Rip.Of(4));
            var draws = Model.Draw(tasks, 20, seed, [WorkTime.FromMinutes(spent)]);
            Assert.All(draws.Minutes, trial => Assert.InRange(trial[0], 1, 1e7));
        }, iter: 400);

    [Fact]
    public void A_guess_without_doubt_that_has_run_out_has_a_minute_left() =>
        Assert.Equal(1, Model.Draw(AnOperation.Tasks(AnOperation.Guess(30, 30, 30)), 1, 1, [WorkTime.FromMinutes(45)]).Minutes[0][0]);

    [Fact]
    public void Tasks_that_are_not_begun_are_drawn_as_if_nobody_asked()
    {
        var tasks = AnOperation.Tasks(Rip.Of(4), Rip.Of(9), AnOperation.Guess(20, 30, 60));
        var plain = Model.Draw(tasks, 50, 3);
        var asked = Model.Draw(tasks, 50, 3, [WorkTime.Zero, WorkTime.FromMinutes(40), WorkTime.Zero]);
        Assert.Equal(plain.Minutes.Select(trial => (trial[0], trial[2])), asked.Minutes.Select(trial => (trial[0], trial[2])));
        Assert.NotEqual(plain.Minutes.Select(trial => trial[1]), asked.Minutes.Select(trial => trial[1]));
    }

    [Fact]
    public void A_moment_s_work_leaves_the_task_as_long_as_it_was()
    {
        var tasks = AnOperation.Tasks(Rip.Of(4));
        var whole = Model.Draw(tasks, 2000, 3).Of(0);
        var left = Model.Draw(tasks, 2000, 3, [WorkTime.FromMinutes(0.01)]).Of(0);

        // A hundredth of a minute is all that may be missing.
        Assert.Equal(whole.P50.Minutes, left.P50.Minutes, 0.02);
    }

    // The reference is counted from plain draws: of guesses, whose tasks share nothing, those longer than what was spent.
    [Theory]
    [InlineData(20)]
    [InlineData(35)]
    [InlineData(60)]
    public void The_rest_is_that_of_the_courses_that_are_longer_than_what_was_spent(double spent)
    {
        var tasks = AnOperation.Tasks(AnOperation.Guess(20, 30, 60));
        var longer = Model.Draw(tasks, 200_000, 11).Minutes.Select(trial => trial[0] - spent).Where(left => left > 1).ToArray();
        var left = Model.Draw(tasks, 40_000, 12, [WorkTime.FromMinutes(spent)]);
        var (expected, found) = (TimeRange.OfSample(longer), left.Of(0));

        // Twenty thousand draws or more on either side: a quantile is good to about 2 % of the spread; a rest below a minute counts as one, which moves it by less than that.
        Assert.Equal(expected.P50.Minutes, found.P50.Minutes, 0.06 * expected.P90.Minutes);
        Assert.Equal(expected.P90.Minutes, found.P90.Minutes, 0.06 * expected.P90.Minutes);
    }

    [Fact]
    public void The_longer_a_task_has_taken_beyond_its_range_the_more_is_to_be_feared()
    {
        var tasks = AnOperation.Tasks(Rip.Of(4));
        double Left(double spent) => Model.Draw(tasks, 4000, 5, [WorkTime.FromMinutes(spent)]).Of(0).P50.Minutes;
        Assert.True(Left(200) > Left(100));
    }

    // The reference is counted from plain draws, as above. With two hundred times logged the rates are all but certain, so that what the tasks share matters little.
    [Theory]
    [InlineData(10)]
    [InlineData(45)]
    [InlineData(90)]
    public void The_shop_s_own_luck_goes_on_in_what_is_left(double spent)
    {
        var model = Model.Learn([.. Enumerable.Range(0, 200).Select(Logged)], new(new(2027, 3, 1), "maker"));
        var tasks = AnOperation.Tasks(Rip.Of(4));
        var longer = model.Draw(tasks, 100_000, 11).Minutes.Select(trial => trial[0] - spent).Where(left => left > 0).Select(left => Math.Max(1, left)).ToArray();
        var left = model.Draw(tasks, 40_000, 12, [WorkTime.FromMinutes(spent)]);
        var (expected, found) = (TimeRange.OfSample(longer), left.Of(0));

        // Thousands of draws are good to about 2 % of the spread; the rates that are still uncertain add as much again.
        Assert.Equal(expected.P50.Minutes, found.P50.Minutes, 0.1 * expected.P90.Minutes);
        Assert.Equal(expected.P90.Minutes, found.P90.Minutes, 0.1 * expected.P90.Minutes);
    }

    /// <summary>Most days are ordinary, every eighth is dreadful.</summary>
    private static TimedWork Logged(int number) => new()
    {
        Timing = Rip.Of(4),
        Took = WorkTime.FromMinutes(number % 8 == 0 ? 95 + (number % 7) : 36 + (number % 9)),
        On = new(2027, 2, 1),
        Worker = "maker",
        Task = "rip",
        IsKept = true,
        Entries = [new(number + 1)],
    };
}
