using ShopDays.Logbook;
using ShopDays.Measures;
using ShopDays.Tests.Times;
using ShopDays.Work;
using Xunit;

namespace ShopDays.Tests.Logbook;

public sealed class JobStandingTests
{
    private static readonly TaskTiming.ByOperation Rip = AnOperation.Named("rip").Of(10);
    private static readonly TaskGraph Graph = new(AnOperation.Tasks(Rip, Rip, Rip), [], [], []);

    [Fact]
    public void A_task_is_done_when_an_entry_finished_it_and_half_done_before()
    {
        var standing = Of(new ALog().Went("task 0", 20, 1, 10).Done("task 0", 15, 2, 10).Went("task 1", 5, 2, 11));
        Assert.Equal([TaskState.Done, TaskState.HalfDone, TaskState.ToDo], standing.Tasks.Select(one => one.State));
        Assert.Equal([35.0, 5, 0], standing.Tasks.Select(one => one.Spent.Minutes));
        Assert.Equal(2, standing.Tasks[0].Last!.Value.Date.Day);
        Assert.Null(standing.Tasks[2].Last);
    }

    [Fact]
    public void Time_after_the_finish_still_counts_and_leaves_the_task_done()
    {
        var task = Of(new ALog().Done("task 0", 30, 1, 10).Went("task 0", 10, 3, 10)).Tasks[0];
        Assert.Equal((TaskState.Done, 40.0, 1), (task.State, task.Spent.Minutes, task.Last!.Value.Date.Day));
    }

    [Fact]
    public void What_is_done_of_a_quantity_is_known_when_every_entry_says_it()
    {
        Assert.Equal(7, Of(new ALog().Went("task 0", 20, 1, 10, Feet(4)).Went("task 0", 20, 1, 11, Feet(3))).Tasks[0].QuantityDone);
        Assert.Null(Of(new ALog().Went("task 0", 20, 1, 10, Feet(4)).Went("task 0", 20, 1, 11)).Tasks[0].QuantityDone);
    }

    [Fact]
    public void More_than_the_whole_quantity_says_nothing_of_what_is_left() =>
        Assert.Null(Of(new ALog().Went("task 0", 20, 1, 10, Feet(10))).Tasks[0].QuantityDone);

    [Fact]
    public void A_quantity_in_another_unit_says_nothing_of_what_is_left() =>
        Assert.Null(Of(new ALog().Went("task 0", 20, 1, 10, Feet(4) with { Unit = "m" })).Tasks[0].QuantityDone);

    [Fact]
    public void Time_of_a_task_that_the_job_does_not_have_is_kept_apart_and_not_lost()
    {
        var standing = Of(new ALog().Done("task 0", 30, 1, 10).Done("rip the old board", 25, 1, 11));
        var stray = Assert.Single(standing.Strays);
        Assert.Equal(("rip the old board", 25.0, true), (stray.Task, stray.Spent.Minutes, stray.IsDone));
        Assert.Equal(55, standing.Spent.Minutes);
    }

    [Fact]
    public void Work_that_goes_on_now_is_half_done_with_its_time_so_far()
    {
        var log = new ALog();
        var now = WorkedOn.At(log.Moment(1, 10), log.Zone);
        var standing = JobStanding.Of(Graph, log.Went("task 1", 5, 1, 9).Entries, [new("task 0", WorkTime.FromMinutes(12), now), new("task 1", WorkTime.FromMinutes(3), now)]);
        Assert.Equal([(TaskState.HalfDone, 12.0), (TaskState.HalfDone, 8), (TaskState.ToDo, 0)], standing.Tasks.Select(one => (one.State, one.Spent.Minutes)));
    }

    private static LoggedWork Feet(double feet) => LoggedWork.Of(Rip) with { Quantity = feet };

    private static JobStanding Of(ALog log) => JobStanding.Of(Graph, log.Entries);
}
