using ShopDays.Parts;
using ShopDays.Tests.Work;
using Xunit;

namespace ShopDays.Tests.Parts;

public sealed class BoardMarksTests
{
    private static readonly IReadOnlyList<Board> Stock = [.. AJob.Boards(5, 96, 8, 1).Select(board => board with { Line = "A" }), .. AJob.Boards(1, 96, 8, 1).Select(board => board with { Name = "P1", Line = "P" })];

    [Theory]
    [InlineData("A1 to A5", "A1", "A2", "A3", "A4", "A5")]
    [InlineData("A1 to A3, A5, P1", "P1", "A2", "A5", "A3", "A1")]
    [InlineData("A1, A2, A4", "A4", "A1", "A2")]
    [InlineData("A5, P1", "P1", "A5")]
    [InlineData("", new string[0])]
    public void Boards_are_named_in_the_order_of_the_stock_and_a_row_of_one_line_by_its_ends(string words, params string[] names) =>
        Assert.Equal(words, BoardMarks.Of(names.Select(name => Stock.Single(board => board.Name == name)), Stock));

    [Fact]
    public void A_board_that_is_no_longer_in_the_stock_comes_first_by_itself() =>
        Assert.Equal("A1, A2, A3", BoardMarks.Of(Stock.Take(3), [.. Stock.Skip(1)]));
}
