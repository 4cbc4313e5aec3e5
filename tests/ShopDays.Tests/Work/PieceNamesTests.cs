using ShopDays.Work;
using Xunit;

namespace ShopDays.Tests.Work;

public sealed class PieceNamesTests
{
    [Theory]
    [InlineData(1, 2, "seat, 1 of 2 strips, from 1.1")]
    [InlineData(2, 2, "seat, both strips")]
    [InlineData(3, 3, "seat, all 3 strips")]
    [InlineData(2, 3, "seat, 2 of 3 strips, from 1.1")]
    public void Strips_are_named_by_how_many_and_two_of_two_are_both(int run, int all, string name) =>
        Assert.Equal(name, PieceNames.Of([.. Enumerable.Range(1, run).Select(strip => new Piece("seat", 1, strip))], all));
}
