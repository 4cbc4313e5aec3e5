using CsCheck;
using NodaTime;
using ShopDays.Cli.Files;
using ShopDays.Cli.Store;
using ShopDays.Cli.Tests.Commands;
using ShopDays.Logbook;
using ShopDays.Measures;
using Xunit;

namespace ShopDays.Cli.Tests.Store;

public sealed class ShopLogTests : IDisposable
{
    private readonly FreshFolder folder = new();

    [Fact]
    public void Reading_makes_no_file()
    {
        using var nothing = ShopLog.OpenToRead(new(folder.Path));
        Assert.Null(nothing);
        Assert.Empty(folder.Everything());
    }

    [Fact]
    public void Any_entry_is_read_as_it_was_written()
    {
        using var log = Open();
        AnEntry.Any.Sample(
            entry =>
            {
                var number = log.Add(entry, AnEntry.Noon);
                return log.Find(number) == entry with { Id = number };
            },
            iter: 300,
            threads: 1);
    }

    [Fact]
    public void Entries_come_in_the_order_of_their_times_and_those_without_a_time_of_day_first()
    {
        using var log = Open();
        var date = new LocalDate(2027, 4, 17);
        log.AddAll(
            [
                AnEntry.Of("late") with { On = new(date, AnEntry.Noon + Duration.FromMilliseconds(500)) },
                AnEntry.Of("early") with { On = new(date, AnEntry.Noon) },
                AnEntry.Of("from paper"),
                AnEntry.Of("next day", date: "2027-04-18"),
                AnEntry.Of("from paper too"),
            ],
            AnEntry.Noon);
        string[] inOrder = ["from paper", "from paper too", "early", "late", "next day"];
        Assert.Equal(inOrder, log.All().Select(entry => entry.Task));
        Assert.Equal(inOrder[2..], log.Last(3).Select(entry => entry.Task));
        Assert.Equal(inOrder[4..], log.Last(1, "tray").Select(entry => entry.Task));
        Assert.Empty(log.Last(1, "chest"));
        Assert.Equal(5, log.Count("tray"));
    }

    [Fact]
    public void All_entries_read_again_are_those_of_a_fresh_reading_whatever_became_of_them()
    {
        using var log = Open();
        var read = EntriesRead.None;
        Gen.Select(Gen.Int[0, 9], AnEntry.Any, Gen.Int[0, 1000]).Sample(
            (what, entry, which) =>
            {
                var all = log.All();
                EntryId? chosen = all.Count == 0 ? null : all[which % all.Count].Id;
                _ = (what, chosen) switch
                {
                    (0, { } number) => log.Delete(number, AnEntry.Noon, "") is not null,
                    (1, { } number) => log.Change(number, _ => entry, AnEntry.Noon, "") is not null,
                    (2, { } number) => log.Delete(number, AnEntry.Noon, "") is not null && log.Restore(number, AnEntry.Noon, "") is not null,
                    (< 6, _) => log.Add(entry, AnEntry.Noon).Number > 0,
                    // As a maker does it: at the end of what is there.
                    _ => log.Add(entry with { On = all is [.., var last] ? last.On : entry.On }, AnEntry.Noon).Number > 0,
                };
                var before = read;
                read = log.AllAfter(before);
                var isKept = !read.Follows(before) || before.All.All(one => read.All.Contains(one));
                return isKept && read.All.SequenceEqual(log.All()) && ReferenceEquals(read, log.AllAfter(read));
            },
            iter: 300,
            threads: 1);
    }

    [Fact]
    public void Entries_that_come_after_the_last_are_read_alone()
    {
        using var log = Open();
        log.AddAll([AnEntry.Of("first"), AnEntry.Of("second")], AnEntry.Noon);
        var before = log.AllAfter(EntriesRead.None);
        log.Add(AnEntry.Of("third", date: "2027-04-18"), AnEntry.Noon);
        var after = log.AllAfter(before);
        Assert.True(after.Follows(before));
        Assert.Equal(3, after.All.Count);
        Assert.Same(before.All[0], after.All[0]);

        log.Change(after.All[0].Id, entry => entry with { Note = "knot" }, AnEntry.Noon, "");
        Assert.False(log.AllAfter(after).Follows(after));
    }

    [Fact]
    public void A_number_is_never_given_twice()
    {
        using var log = Open();
        var first = log.Add(AnEntry.Of("a"), AnEntry.Noon);
        log.Delete(first, AnEntry.Noon, "");
        Assert.Equal(first.Number + 1, log.Add(AnEntry.Of("b"), AnEntry.Noon).Number);
    }

    [Fact]
    public void A_correction_keeps_what_was_before()
    {
        using var log = Open();
        var number = log.Add(AnEntry.Of("a"), AnEntry.Noon);
        log.Change(number, entry => entry with { Took = WorkTime.FromMinutes(50) }, AnEntry.Noon, "read wrong");
        log.Change(number, entry => entry with { Note = "knots" }, AnEntry.Noon + Duration.FromHours(1), "");
        Assert.Equal(AnEntry.Of("a", 50) with { Id = number, Note = "knots" }, log.Find(number));
        Assert.Collection(
            log.TraceOf(number),
            line => Assert.Equal((TraceKind.Corrected, AnEntry.Noon, "read wrong", 45d), (line.What, line.At, line.Why, line.Before.Took.Minutes)),
            line => Assert.Equal((TraceKind.Corrected, 50d, ""), (line.What, line.Before.Took.Minutes, line.Before.Note)));
    }

    [Fact]
    public void A_change_to_the_same_leaves_no_trace()
    {
        using var log = Open();
        var number = log.Add(AnEntry.Of("a"), AnEntry.Noon);
        log.Change(number, entry => entry with { Took = WorkTime.FromMinutes(45) }, AnEntry.Noon, "");
        Assert.Empty(log.TraceOf(number));
    }

    [Fact]
    public void A_deleted_entry_is_gone_until_it_is_put_back()
    {
        using var log = Open();
        var number = log.Add(AnEntry.Of("a"), AnEntry.Noon);
        Assert.Equal("a", log.Delete(number, AnEntry.Noon, "twice")?.Task);
        Assert.Null(log.Find(number));
        Assert.Empty(log.All());
        Assert.Null(log.Delete(number, AnEntry.Noon, ""));
        Assert.Equal(AnEntry.Of("a") with { Id = number }, log.Restore(number, AnEntry.Noon, ""));
        Assert.Equal(AnEntry.Of("a") with { Id = number }, log.Find(number));
        Assert.Null(log.Restore(number, AnEntry.Noon, ""));
        Assert.Equal([TraceKind.Deleted, TraceKind.Restored], log.TraceOf(number).Select(line => line.What));
    }

    [Fact]
    public void A_change_of_no_entry_is_none()
    {
        using var log = Open();
        Assert.Null(log.Change(new(7), entry => entry with { Note = "x" }, AnEntry.Noon, ""));
        Assert.Null(log.Restore(new(7), AnEntry.Noon, ""));
    }

    [Fact]
    public void A_log_closed_in_order_leaves_one_file()
    {
        using (var log = Open())
        {
            log.Add(AnEntry.Of("a"), AnEntry.Noon);
        }

        Assert.Equal([ShopLog.FileName], Directory.GetFiles(folder.Path).Select(Path.GetFileName));
    }

    [Fact]
    public void Two_who_have_it_open_see_what_the_other_wrote()
    {
        using var one = Open();
        using var other = Open();
        one.Add(AnEntry.Of("a"), AnEntry.Noon);
        other.Add(AnEntry.Of("b"), AnEntry.Noon);
        Assert.Equal(["a", "b"], one.All().Select(entry => entry.Task));
        Assert.Equal([1, 2], other.All().Select(entry => entry.Id.Number));
    }

    public void Dispose() => folder.Dispose();

    private ShopLog Open() => ShopLog.Open(new ShopFolder(folder.Path));
}
