using ShopDays.Layouts;
using ShopDays.Prices;
using ShopDays.Tests.Layouts;
using Xunit;

namespace ShopDays.Tests.Prices;

public sealed class TimberBillTests
{
    private static readonly Lazy<IReadOnlyList<Layout>> Layouts = new(() =>
        [.. RandomJobs.Some(40).Select(job => LayoutSearch.LayOut(Timber.Asked(job.Boards, job.Parts, Timber.ByHand) with { Seed = job.Seed })).Where(layout => layout.Boards.Count > 0)]);

    [Fact]
    public void The_timber_costs_what_the_layout_says() =>
        Assert.All(Layouts.Value, layout => Assert.Equal(layout.Cost.Timber, TimberBill.Of(layout, 0).Total));

    [Fact]
    public void What_is_used_and_what_is_lost_add_up_to_the_boards() => Assert.All(Layouts.Value, layout =>
    {
        var bill = TimberBill.Of(layout, 0);
        Assert.Equal(bill.Total.Amount, bill.Lines.Sum(line => line.Used.Amount + line.Lost.Amount));
        Assert.All(bill.Lines, line => Assert.True(line.InThePiece <= line.Bought));
        Assert.Equal(layout.Boards.Count, bill.Lines.Sum(line => line.Boards));
    });

    [Fact]
    public void A_board_with_a_part_as_large_as_half_of_it_is_half_used()
    {
        var board = Timber.ABoard("A", 40, 8) with { Price = new(90, Timber.Dollars) };
        var bill = TimberBill.Of(Timber.LayOut([board], [Timber.APart("shelf", 20, 8)]), 1);
        Assert.Equal((45m, 45m), (bill.Lines.Single().Used.Amount, bill.Lines.Single().Lost.Amount));
        Assert.Equal(("A", 90m), (bill.Spares.Single().Like, bill.Spares.Single().Price.Amount));
        Assert.Null(bill.AssumedBoardFoot);
    }

    [Fact]
    public void A_spare_part_is_no_part_of_the_piece()
    {
        var board = Timber.ABoard("A", 40, 8) with { Price = new(90, Timber.Dollars) };
        var bill = TimberBill.Of(Timber.LayOut([board], [Timber.APart("shelf", 20, 8) with { Spare = 1 }]), 0);
        Assert.Equal(45m, bill.Lines.Single().Used.Amount);
    }

    [Fact]
    public void An_offcut_of_a_sawn_board_is_paid_for_with_its_board()
    {
        var board = Timber.ABoard("A", 40, 8) with { Price = new(90, Timber.Dollars) };
        var first = Timber.LayOut([board], [Timber.APart("shelf", 20, 8)]);
        var sawn = first.Boards.Single().AsSawn(1);
        var left = SawnStock.Left([board], [sawn]);
        var both = LayoutSearch.LayOut(Timber.Asked(left, [Timber.APart("shelf", 20, 8), Timber.APart("back", 18, 8)]) with { Sawn = [sawn] });
        Assert.Equal(2, both.Boards.Count);
        Assert.Equal(90m, TimberBill.Of(both, 0).Total.Amount);
    }
}
