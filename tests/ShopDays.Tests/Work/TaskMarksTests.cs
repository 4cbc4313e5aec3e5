using CsCheck;
using ShopDays.Work;
using Xunit;

namespace ShopDays.Tests.Work;

public sealed class TaskMarksTests
{
    private static readonly Gen<string[]> Names = Gen.String[Gen.Char['a', 'z'], 1, 8].Array[1, 60].Select(names => names.Distinct().ToArray());

    [Fact]
    public void No_mark_begins_another_of_the_same_job() => Names.Sample(names =>
    {
        var marks = new TaskMarks(names);
        foreach (var name in names)
        {
            var others = names.Where(other => other != name).Select(marks.Of);

            Assert.DoesNotContain(others, other => other.StartsWith(marks.Of(name), StringComparison.Ordinal));
        }
    });

    [Fact]
    public void A_mark_is_three_consonants_and_longer_only_where_two_tasks_would_share_it() => Names.Sample(names =>
    {
        var marks = new TaskMarks(names);
        foreach (var mark in names.Select(marks.Of))
        {
            Assert.All(mark, letter => Assert.Contains(letter, "BCDFGHJKLMNPQRSTVWXZ"));
            Assert.True(mark.Length >= 3);
            Assert.True(mark.Length == 3 || marks.Find(mark[..^1]).Count > 1, "one letter less would be another's too");
        }
    });

    [Fact]
    public void A_mark_finds_its_task_alone_in_small_letters_too() => Names.Sample(names =>
    {
        var marks = new TaskMarks(names);
        foreach (var name in names)
        {
            Assert.Equal([name], marks.Find(marks.Of(name)));
            Assert.Equal([name], marks.Find(marks.Of(name).ToLowerInvariant()));
        }
    });

    [Fact]
    public void A_task_keeps_the_beginning_of_its_mark_when_the_job_has_more_tasks() => Gen.Select(Names, Names).Sample((names, more) =>
    {
        var before = new TaskMarks(names);
        var after = new TaskMarks(names.Concat(more).Distinct());
        foreach (var name in names)
        {
            Assert.StartsWith(before.Of(name), after.Of(name), StringComparison.Ordinal);
        }
    });

    [Fact]
    public void The_order_of_the_tasks_does_not_matter() => Names.Sample(names =>
    {
        var (forward, backward) = (new TaskMarks(names), new TaskMarks(names.Reverse()));

        Assert.Equal(names.Select(forward.Of), names.Select(backward.Of));
    });

    [Fact]
    public void Less_than_three_letters_find_nothing()
    {
        var marks = new TaskMarks(["rip the top"]);

        Assert.Empty(marks.Find(marks.Of("rip the top")[..2]));
        Assert.Empty(marks.Find(""));
    }

    [Fact]
    public void A_task_that_the_job_lacks_is_refused_by_name()
    {
        var error = Assert.Throws<KeyNotFoundException>(() => new TaskMarks(["rip the top"]).Of("saw the sky"));

        Assert.Contains("'saw the sky'", error.Message, StringComparison.Ordinal);
    }
}
