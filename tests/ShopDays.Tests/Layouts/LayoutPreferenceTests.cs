using ShopDays.Layouts;
using ShopDays.Measures;
using ShopDays.Parts;
using Xunit;

namespace ShopDays.Tests.Layouts;

public sealed class LayoutPreferenceTests
{
    /// <summary>
    /// Four legs come out of one wide and dear board with three long rips, or out of four sticks that are just as wide as a
    /// leg and only need cutting to length.
    /// </summary>
    private static readonly IReadOnlyList<Board> Stock =
    [
        Timber.ABoard("wide", 80, 13, 2) with { Price = Dollars(60) },
        .. Timber.Boards(4, name => Timber.ABoard(name, 84, 3, 2) with { Price = Dollars(24) }),
    ];

    private static readonly IReadOnlyList<Part> Legs = [Timber.APart("leg", 80, 3, 2, 4)];

    [Fact]
    public void Who_would_rather_save_sawing_saws_less_and_who_would_rather_save_timber_spends_less_on_it()
    {
        var (timber, sawing) = (LayOut(LayoutPreference.Timber), LayOut(LayoutPreference.Sawing));
        Assert.True(sawing.SawingTime < timber.SawingTime);
        Assert.True(Timbered(timber) < Timbered(sawing));
        Assert.True(timber.Fits && sawing.Fits);
    }

    [Fact]
    public void The_least_cost_is_found_when_both_count_as_priced()
    {
        var asPriced = LayOut(LayoutPreference.AsPriced).Cost.Total.Amount;
        Assert.All(
            [LayoutPreference.Timber, LayoutPreference.Sawing],
            preference => Assert.True(asPriced <= LayOut(preference).Cost.Total.Amount));
    }

    [Fact]
    public void A_preference_changes_no_price()
    {
        IReadOnlyList<Board> one = [Timber.ABoard("A", 100, 10)];
        IReadOnlyList<Part> shelf = [Timber.APart("shelf", 40, 8, 0.5m)];
        var costs = Enum.GetValues<LayoutPreference>().Select(preference => LayoutSearch.LayOut(Timber.Asked(one, shelf) with { Preference = preference }).Cost);
        Assert.Single(costs.Distinct());
    }

    private static decimal Timbered(Layout layout) => layout.Cost.Timber.Amount - layout.Cost.Offcuts.Amount;

    private static Layout LayOut(LayoutPreference preference) =>
        LayoutSearch.LayOut(Timber.Asked(Stock, Legs, Timber.ByHand with { Length = Length.Zero, Width = Length.Zero }) with { Preference = preference });

    private static Money Dollars(decimal amount) => new(amount, Timber.Dollars);
}
