using CsCheck;
using ShopDays.Choices;
using Xunit;

namespace ShopDays.Tests.Choices;

/// <summary>The order of what may be chosen: days of the promise first, then money.</summary>
public sealed class GainTests
{
    private static readonly Gen<Gain> Any = Gen.Select(Gen.Int[-5, 5], Gen.Int[-3, 3]).Select((days, amount) => new Gain(days, amount));

    [Fact]
    public void What_saves_more_days_stands_before_what_saves_more_money() =>
        Assert.Equal([new(9, -40), new(2, 300), new(2, 20), new(0, 80), new(-3, 60)], Order([new(2, 20), new(-3, 60), new(0, 80), new(9, -40), new(2, 300)]));

    [Fact]
    public void What_saves_neither_is_not_there() =>
        Assert.Equal([new(1, 0), new(0, 1)], Order([new(0, 0), new(0, 1), new(-4, 0), new(0, -7), new(1, 0)]));

    [Fact]
    public void Nothing_that_gains_is_lost_and_each_gains_no_less_than_the_next() => Any.Array[0, 8].Sample(gains =>
    {
        var ordered = Order(gains);
        Assert.Equal(gains.Count(one => one.IsAny), ordered.Count);
        Assert.All(ordered.Zip(ordered.Skip(1)), pair => Assert.True(pair.First >= pair.Second));
        Assert.All(ordered.Zip(ordered.Skip(1)), pair => Assert.True(Math.Max(0, pair.First.Days) >= Math.Max(0, pair.Second.Days)));
    });

    private static IReadOnlyList<Gain> Order(Gain[] gains) => Gain.InOrder(gains, one => one);
}
