using CsCheck;
using NodaTime;
using ShopDays.Logbook;
using ShopDays.Measures;
using Xunit;

namespace ShopDays.Tests.Logbook;

/// <summary>Notes of where a maker stopped: which of them still hold.</summary>
public sealed class StoppedNoteTests
{
    private int written;

    [Fact]
    public void The_newest_note_of_the_job_comes_first() =>
        Assert.Equal(["at the second tenon", "at the knot"], Texts([Half("rip A", 1, "at the knot"), Half("saw tenons", 2, "at the second tenon")]));

    [Fact]
    public void A_note_is_over_when_its_task_is_done()
    {
        Assert.Empty(Texts([Half("rip A", 1, "at the knot"), Done("rip A", 2)]));
        Assert.Equal(["at the knot"], Texts([Half("rip A", 1, "at the knot"), Done("rip B", 2)]));
    }

    [Fact]
    public void A_note_is_over_when_its_task_was_gone_on_with()
    {
        Assert.Empty(Texts([Half("rip A", 1, "at the knot"), Half("rip A", 2)]));
        Assert.Equal(["past the knot"], Texts([Half("rip A", 1, "at the knot"), Half("rip A", 2, "past the knot")]));
        Assert.Empty(Texts([Half("rip A", 1, "at the knot")], new RunningWork("rip A", WorkTime.FromMinutes(5), On(2))));
    }

    [Fact]
    public void A_note_with_what_finished_a_task_holds_until_other_work_is_written_down()
    {
        Assert.Equal(["glue next"], Texts([Done("dry fit", 1, "glue next")]));
        Assert.Empty(Texts([Done("dry fit", 1, "glue next"), Half("glue up", 2)]));
        Assert.Empty(Texts([Done("dry fit", 1, "glue next")], new RunningWork("glue up", WorkTime.FromMinutes(5), On(2))));
    }

    [Fact]
    public void What_is_laid_aside_comes_before_what_is_logged() =>
        Assert.Equal(["two drawn", "at the knot"], Texts([Half("rip A", 1, "at the knot")], new RunningWork("draw", WorkTime.FromMinutes(5), On(2), "two drawn")));

    [Fact]
    public void A_note_says_its_task_and_its_date() =>
        Assert.Equal(new StoppedNote("rip A", "at the knot", On(3)), Assert.Single(StoppedNote.Of([Half("rip A", 3, "at the knot")], [])));

    // Of any log: no note of a task that was gone on with, none twice, and none that nobody wrote.
    [Fact]
    public void Each_note_that_holds_is_that_of_its_tasks_last_stretch() =>
        Gen.Select(Gen.Int[0, 3], Gen.Bool, Gen.Int[0, 2]).Array[0, 10].Sample(stretches =>
        {
            List<LogEntry> log = [.. stretches.Select((one, at) => Entry(FormattableString.Invariant($"task {one.Item1}"), at + 1, one.Item3 == 0 ? "" : FormattableString.Invariant($"note {at}"), one.Item2))];
            var notes = StoppedNote.Of(log, []);
            Assert.Distinct(notes.Select(note => note.Task));
            Assert.All(notes, note => Assert.Equal(note.Text, log.Last(entry => entry.Task == note.Task).Stopped));
            Assert.All(notes.Zip(notes.Skip(1)), pair => Assert.True(pair.First.On.Date > pair.Second.On.Date));
        });

    private static IReadOnlyList<string> Texts(IReadOnlyList<LogEntry> log, params RunningWork[] running) => [.. StoppedNote.Of(log, running).Select(note => note.Text)];

    private static WorkedOn On(int day) => new(new LocalDate(2027, 3, day), Instant.FromUtc(2027, 3, day, 15, 0));

    private LogEntry Half(string task, int day, string stopped = "") => Entry(task, day, stopped, finished: false);

    private LogEntry Done(string task, int day, string stopped = "") => Entry(task, day, stopped, finished: true);

    private LogEntry Entry(string task, int day, string stopped, bool finished) =>
        new() { Id = new(++written), Job = "chest", Task = task, Took = WorkTime.FromMinutes(30), On = On(day), Worker = "maker", Finished = finished, Stopped = stopped };
}
