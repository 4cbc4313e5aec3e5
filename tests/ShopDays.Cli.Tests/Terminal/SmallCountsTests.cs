using NodaTime;
using ShopDays.Cli.Phrases;
using ShopDays.Logbook;
using ShopDays.Measures;
using Xunit;

namespace ShopDays.Cli.Tests.Terminal;

/// <summary>Little quantities and few entries, in figures and words.</summary>
public sealed class SmallCountsTests
{
    [Theory]
    [InlineData(0, "0")]
    [InlineData(17.62, "17.6")]
    [InlineData(1, "1")]
    [InlineData(0.2, "0.2")]
    [InlineData(0.25, "0.25")]
    [InlineData(0.0431, "0.043")]
    [InlineData(0.00312, "0.0031")]
    public void A_little_work_is_not_told_as_none(double quantity, string said) => Assert.Equal(said, SawnWords.Quantity(quantity));

    [Fact]
    public void One_entry_is_told_in_the_singular()
    {
        Assert.Equal(
            ["Nothing is learned from 1 entry (of a task that is not finished): shopdays rates names it"],
            new TimesBehind(4, 3, 0, [Of(LeftOutReason.NotFinished, 4)], PriorOnly: false).Notes);
        Assert.Equal(["1 entry of a task that is not finished, without a word on how much is done (4)"], LeftOutWords.Of([Of(LeftOutReason.NotFinished, 4)]));
    }

    [Fact]
    public void Several_are_told_in_the_plural_each_reason_with_its_number()
    {
        Assert.Equal(
            ["Nothing is learned from 4 entries (2 of a task that is not finished, 2 of tasks that no operation times): shopdays rates names them"],
            new TimesBehind(9, 3, 0, [Of(LeftOutReason.NotFinished, 4, 5), Of(LeftOutReason.NoOperation, 6), Of(LeftOutReason.NoOperation, 7)], PriorOnly: false).Notes);
        Assert.Equal(["2 entries of tasks that go by a guess, not by an operation (6, 7)"], LeftOutWords.Of([Of(LeftOutReason.NoOperation, 6), Of(LeftOutReason.NoOperation, 7)]));
    }

    private static LeftOut Of(LeftOutReason reason, params long[] numbers) => new(
        [.. numbers.Select(number => new LogEntry { Id = new(number), Task = "rip", Took = WorkTime.FromMinutes(5), On = new(new LocalDate(2027, 3, 1)), Worker = "maker", Finished = false })],
        reason);
}
