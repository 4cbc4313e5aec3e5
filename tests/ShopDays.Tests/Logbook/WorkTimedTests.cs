using CsCheck;
using NodaTime;
using ShopDays.Logbook;
using ShopDays.Measures;
using ShopDays.Tests.Times;
using ShopDays.Work;
using Xunit;

namespace ShopDays.Tests.Logbook;

public sealed class WorkTimedTests
{
    private static readonly Operation Rip = AnOperation.Named("rip");
    private static readonly Operation Plane = AnOperation.Named("plane");
    private static readonly OperationCatalogue Catalogue = new([Rip, Plane]);
    private static readonly LocalDate Day = new(2026, 3, 2);

    private static readonly Gen<LogEntry> AnyEntry =
        from job in AnyOf<string?>("stool", "shelf", null)
        from task in AnyOf("rip the legs", "plane the top")
        from operation in AnyOf("rip", "rip", "plane", "carve", null)
        from unit in AnyOf("ft", "ft", "ft", "cord")
        from quantity in Gen.Double[0.5, 20]
        from minutes in Gen.Double[1, 200]
        from day in Gen.Int[0, 3]
        from hour in Gen.Int[0, 4]
        from worker in AnyOf("maker", "Sam")
        from finished in Gen.Bool
        from standing in AnyOf(Standing.AsLogged, Standing.AsLogged, Standing.Kept, Standing.Unusual)
        select Entry(1, minutes, finished, job, task) with
        {
            Work = operation is null ? null : Logged(quantity, operation, unit),
            On = hour == 0 ? new(Day.PlusDays(day)) : WorkedOn.At(Day.PlusDays(day).At(new(8 + hour, 0)).InUtc().ToInstant(), DateTimeZone.Utc),
            Worker = worker,
            Standing = standing,
        };

    private static readonly Gen<LogEntry[]> AnyLog = AnyEntry.Array[0, 25].Select(log => log.Select((entry, at) => entry with { Id = new(at + 1) }).ToArray());

    [Fact]
    public void Every_entry_stands_once_in_one_of_the_two() => AnyLog.Sample(log =>
    {
        var work = WorkTimed.Of(log, Catalogue);
        var all = work.Timed.SelectMany(one => one.Entries).Concat(work.LeftOut.SelectMany(one => one.Entries).Select(entry => entry.Id));

        Assert.Equal(log.Select(entry => entry.Id.Number), all.Select(id => id.Number).Order());
    });

    [Fact]
    public void No_minute_is_lost_or_told_twice() => AnyLog.Sample(log =>
    {
        var work = WorkTimed.Of(log, Catalogue);
        var sum = work.Timed.Sum(one => one.Took.Minutes) + work.LeftOut.Sum(one => one.Entries.Sum(entry => entry.Took.Minutes));

        // Sums of some dozens of doubles in another order.
        Assert.Equal(log.Sum(entry => entry.Took.Minutes), sum, 6);
    });

    [Fact]
    public void The_order_in_which_entries_are_given_does_not_matter() => AnyLog.Sample(log =>
    {
        var (one, other) = (WorkTimed.Of(log, Catalogue), WorkTimed.Of(log.Reverse(), Catalogue));

        Assert.Equal(Told(one), Told(other));

        static IEnumerable<string> Told(WorkTimed work) =>
            work.Timed.Select(one => FormattableString.Invariant($"{one.Task} {one.Took.Minutes} {one.Timing.Quantity} {string.Join(' ', one.Entries)}"))
                .Concat(work.LeftOut.Select(one => FormattableString.Invariant($"{one.Reason} {string.Join(' ', one.Entries.Select(entry => entry.Id))}")));
    });

    [Fact]
    public void A_task_over_three_sessions_is_one_time_with_the_quantity_of_the_whole()
    {
        var timed = Assert.Single(WorkTimed.Of([Entry(1, 30), Entry(2, 50), Entry(3, 20, finished: true)], Catalogue).Timed);

        Assert.Equal(100, timed.Took.Minutes, 9);
        Assert.Equal(12, timed.Timing.Quantity);
        Assert.Equal(3, timed.Entries.Count);
    }

    [Fact]
    public void A_finished_task_that_is_done_again_is_another_time()
    {
        var timed = WorkTimed.Of([Entry(1, 30, finished: true), Entry(2, 40, finished: true)], Catalogue).Timed;

        Assert.Equal([30, 40], timed.Select(one => one.Took.Minutes));
    }

    [Fact]
    public void A_half_done_task_counts_with_what_its_sessions_did()
    {
        var timed = Assert.Single(WorkTimed.Of([Entry(1, 30, work: Logged(3)), Entry(2, 50, work: Logged(5))], Catalogue).Timed);

        Assert.Equal((80, 8), (timed.Took.Minutes, timed.Timing.Quantity));
    }

    [Fact]
    public void A_part_of_a_task_has_its_share_of_the_setting_up()
    {
        var whole = Logged(20) with { Setups = 4, Besides = WorkTime.FromMinutes(10) };
        var timing = Assert.Single(WorkTimed.Of([Entry(1, 30, work: whole.Part(5)), Entry(2, 20, work: whole.Part(10))], Catalogue).Timed).Timing;

        Assert.Equal((15, 3, 7.5), (timing.Quantity, timing.Setups, timing.Besides.Minutes));
    }

    [Fact]
    public void A_half_done_task_that_changed_its_operation_on_the_way_waits_until_it_is_finished()
    {
        LogEntry[] log = [Entry(1, 30, work: Logged(3)), Entry(2, 50, work: Logged(5, "plane"))];

        Assert.Equal(LeftOutReason.NotFinished, Assert.Single(WorkTimed.Of(log, Catalogue).LeftOut).Reason);
    }

    [Fact]
    public void A_half_done_task_that_does_not_say_how_much_is_done_is_left_out_until_it_is_finished()
    {
        var half = Entry(1, 30) with { Work = null };

        Assert.Equal(LeftOutReason.NotFinished, Assert.Single(WorkTimed.Of([half], Catalogue).LeftOut).Reason);
        Assert.Equal(50, Assert.Single(WorkTimed.Of([half, Entry(2, 20, finished: true)], Catalogue).Timed).Took.Minutes, 9);
    }

    [Fact]
    public void Work_timed_by_itself_is_whole_in_each_entry()
    {
        var timed = WorkTimed.Of([Entry(1, 10, job: null, work: Logged(2)), Entry(2, 12, job: null, work: Logged(2))], Catalogue).Timed;

        Assert.Equal([10, 12], timed.Select(one => one.Took.Minutes));
    }

    [Fact]
    public void One_unusual_day_leaves_its_whole_task_out()
    {
        LogEntry[] log = [Entry(1, 30) with { Standing = Standing.Unusual }, Entry(2, 20, finished: true)];
        var left = Assert.Single(WorkTimed.Of(log, Catalogue).LeftOut);

        Assert.Equal((LeftOutReason.MarkedUnusual, 2), (left.Reason, left.Entries.Count));
    }

    [Theory]
    [InlineData("carve", "ft", LeftOutReason.UnknownOperation)]
    [InlineData("rip", "cord", LeftOutReason.UnknownOperation)]
    public void What_the_catalogue_does_not_know_any_more_is_left_out_with_the_reason(string operation, string unit, LeftOutReason reason) =>
        Assert.Equal(reason, Assert.Single(WorkTimed.Of([Entry(1, 30, finished: true, work: Logged(2, operation, unit))], Catalogue).LeftOut).Reason);

    [Fact]
    public void A_finished_task_that_no_operation_times_is_left_out_with_the_reason() =>
        Assert.Equal(LeftOutReason.NoOperation, Assert.Single(WorkTimed.Of([Entry(1, 30, finished: true) with { Work = null }], Catalogue).LeftOut).Reason);

    [Fact]
    public void The_rest_of_a_task_that_was_typed_without_a_time_of_day_follows_what_the_clock_saw_of_it()
    {
        LogEntry[] log = [At(9, Entry(1, 20)) with { Work = null }, Entry(2, 40, finished: true)];

        Assert.Equal(60, Assert.Single(WorkTimed.Of(log, Catalogue).Timed).Took.Minutes, 9);
    }

    [Fact]
    public void Of_one_date_moments_decide_where_each_entry_of_the_task_has_one_and_numbers_where_not()
    {
        LogEntry[] known = [At(11, Entry(1, 20, finished: true)), At(9, Entry(2, 30))];
        LogEntry[] typed = [At(11, Entry(1, 20)), At(9, Entry(2, 30)), Entry(3, 10, finished: true)];

        Assert.Equal([2, 1], Assert.Single(WorkTimed.Of(known, Catalogue).Timed).Entries.Select(id => id.Number));
        Assert.Equal([1, 2, 3], Assert.Single(WorkTimed.Of(typed, Catalogue).Timed).Entries.Select(id => id.Number));
    }

    [Fact]
    public void Figures_that_cannot_be_are_left_out_and_the_rest_is_learned_from() => Gen.Select(
        AnyOf(0d, -1, 1e-320, 1e300, double.NaN, double.PositiveInfinity),
        Gen.Int[0, 6]).Sample((figure, at) =>
        {
            var work = Logged(12);
            var (odd, took) = at switch
            {
                0 => (work with { Quantity = figure }, 30),
                1 => (work with { Factor = figure }, 30),
                2 => (work with { Covariates = new Dictionary<Covariate, double> { [Covariate.Thickness] = figure } }, 30),
                3 => (work with { Setups = figure == 0 ? -2 : figure }, 30),
                4 => (work with { Besides = WorkTime.FromMinutes(double.IsFinite(figure) && figure != 0 ? figure : -2) }, 30),
                5 => (work with { Run = 0 }, 30),
                _ => (work, double.IsFinite(figure) ? figure : -1),
            };
            var both = WorkTimed.Of([Entry(1, took, finished: true, work: odd), Entry(2, 30, finished: true)], Catalogue);
            Assert.Equal(LeftOutReason.ImpossibleFigures, Assert.Single(both.LeftOut).Reason);
            Assert.Equal(2, Assert.Single(Assert.Single(both.Timed).Entries).Number);
        });

    [Fact]
    public void Work_of_two_is_that_of_the_one_with_most_of_its_time_and_dates_from_the_last_day()
    {
        var later = Entry(2, 50, finished: true) with { Worker = "Sam", On = new(Day.PlusDays(2)) };
        var timed = Assert.Single(WorkTimed.Of([Entry(1, 30), later], Catalogue).Timed);

        Assert.Equal(("Sam", Day.PlusDays(2)), (timed.Worker, timed.On));
    }

    [Fact]
    public void A_task_is_kept_only_when_each_of_its_entries_is()
    {
        LogEntry[] log = [Entry(1, 30) with { Standing = Standing.Kept }, Entry(2, 20, finished: true)];

        Assert.False(Assert.Single(WorkTimed.Of(log, Catalogue).Timed).IsKept);
        Assert.True(Assert.Single(WorkTimed.Of(log.Select(entry => entry with { Standing = Standing.Kept }), Catalogue).Timed).IsKept);
    }

    private static Gen<T> AnyOf<T>(params T[] choices) => Gen.Int[0, choices.Length - 1].Select(at => choices[at]);

    private static LogEntry Entry(long number, double minutes, bool finished = false, string? job = "stool", string task = "rip the legs", LoggedWork? work = null) => new()
    {
        Id = new(number),
        Job = job,
        Task = task,
        Work = work ?? Logged(12),
        Took = WorkTime.FromMinutes(minutes),
        On = new(Day),
        Worker = "maker",
        Finished = finished,
    };

    private static LogEntry At(int hour, LogEntry entry) => entry with { On = WorkedOn.At(Day.At(new(hour, 0)).InUtc().ToInstant(), DateTimeZone.Utc) };

    private static LoggedWork Logged(double quantity, string operation = "rip", string unit = "ft") =>
        new() { Operation = operation, Method = "hand", Unit = unit, Quantity = quantity };
}
