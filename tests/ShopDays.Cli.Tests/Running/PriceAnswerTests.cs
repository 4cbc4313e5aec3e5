using System.Globalization;
using System.Text.Json;
using ShopDays.Cli.Tests.Commands;
using Xunit;

namespace ShopDays.Cli.Tests.Running;

/// <summary>The price of the samples, and of a small job with a word changed.</summary>
public sealed class PriceAnswerTests
{
    private const string Money = "money: {rate: 40 per hour, margin: 20%}\n";

    public static TheoryData<string> Shops => Sample.Shops;

    [Theory]
    [MemberData(nameof(Shops))]
    public async Task Lines_and_payments_add_up_to_the_last_coin(string shop)
    {
        var price = await Price(shop);
        var lines = price.List("lines");
        Assert.Equal(price.Amount("cost"), lines.Sum(line => line.Amount("amount")));
        Assert.Equal(price.Amount("expectedCost"), lines.Where(line => !line.YesOrNo("isContingency")).Sum(line => line.Amount("amount")));
        Assert.Equal(price.Amount("total"), price.List("stages").Sum(payment => payment.Amount("amount")));
        Assert.Equal(price.Amount("tax"), price.List("stages").Sum(payment => payment.Amount("tax")));
        Assert.Equal(price.Amount("total"), price.Amount("price") + price.Amount("tax"));
        Assert.Equal(price.Amount("profit"), price.Amount("price") - price.Amount("cost"));
    }

    [Theory]
    [MemberData(nameof(Shops))]
    public async Task Another_program_finds_the_price_under_the_names_of_the_contract(string shop)
    {
        var price = await Price(shop);
        Assert.All(price.List("lines"), line => Assert.NotEqual("", line.Text("line")));
        Assert.Equal(price.Amount("cost"), price.List("lines").Sum(line => line.Amount("amount")));
        Assert.Equal(price.Amount("total"), price.Amount("price") + price.Amount("tax"));
        Assert.Equal(price.Amount("total"), price.List("stages").Sum(stage => stage.Amount("amount")));
        Assert.Equal(("on order", "on delivery"), (price.List("stages")[0].Text("name"), price.List("stages")[^1].Text("name")));
        Assert.All(price.List("stages"), stage => Assert.Equal(10, stage.Text("date").Length));
        Assert.All(price.List("risk"), point => Assert.InRange(point.Number("chanceOfLoss"), 0, 1));
        Assert.True(price.Number("hours") > 0);
    }

    [Theory]
    [MemberData(nameof(Shops))]
    public async Task Hours_are_those_of_the_estimate_and_timber_costs_what_the_layout_says(string shop)
    {
        var lines = (await Price(shop)).List("lines");
        var hands = (await Sample.Of(shop).Run("estimate --json")).ReadJson().Field("handsOnMinutes");
        var labour = lines.Where(line => line.Text("kind") == "labour").Sum(line => line.Number("minutes"));
        Assert.Equal(hands.Number("p50"), labour, 0.5);
        Assert.Equal(labour / 60, (await Price(shop)).Number("hours"), 0.0001);
        Assert.Equal(hands.Number("p80"), labour + lines.Where(line => line.Text("kind") == "contingencyHours").Sum(line => line.Number("minutes")), 0.5);
        var cost = (await Sample.Of(shop).Run("layout --json")).ReadJson().Field("cost");
        Assert.Equal(cost.Amount("timber"), lines.Where(line => line.Text("kind") is "timberUsed" or "timberLost").Sum(line => line.Amount("amount")));
    }

    [Theory]
    [MemberData(nameof(Shops))]
    public async Task The_chance_falls_along_the_curve_and_is_the_chosen_one_at_the_least_price(string shop)
    {
        var price = await Price(shop);
        var curve = price.List("risk").Select(point => point.Number("chanceOfLoss")).ToList();
        Assert.Equal(curve.OrderDescending(), curve);
        Assert.True(curve[0] > 0.9 && curve[^1] < 0.01);
        Assert.Equal(0.1, price.Field("earning").Number("chosen"));
        var prices = price.List("risk").Select(point => point.Amount("price")).ToList();
        Assert.Equal(prices.Order(), prices);
        Assert.InRange(price.Field("earning").Amount("leastPrice"), prices[0], prices[^1]);
    }

    [Fact]
    public async Task It_fits_a_terminal_of_80_columns()
    {
        using var folder = new FreshFolder();
        Sample.Of("tidewater-commission").CopyTo(folder);
        var ran = (await Ran.In(folder.Path, "price", "writing-table", "--schedules", "20")).WentWell();
        Assert.All(ran.Out.Split('\n'), line => Assert.True(line.TrimEnd().Length <= 80, line));
    }

    [Fact]
    public async Task A_given_price_with_a_lower_chance_is_the_least_price_of_that_chance()
    {
        using var folder = new FreshFolder().WithShop(ATrayShop.Shop + Money).WithJob("tray", ATrayShop.Job);
        var least = (await Priced(folder, "--risk", "5%")).Field("earning").Amount("leastPrice");
        Assert.True(least > (await Priced(folder, "--risk", "20%")).Field("earning").Amount("leastPrice"));
        var given = await Priced(folder.WithJob("tray", $"{ATrayShop.Job}price: {least.ToString(CultureInfo.InvariantCulture)}\n"));
        Assert.Equal(least, given.Field("quoted").Amount("price"));
        Assert.True(given.YesOrNo("isGiven"));
        Assert.InRange(given.Field("earning").Number("chanceBelowRate"), 0.0499, 0.05);
    }

    [Fact]
    public async Task Payments_fall_on_the_dates_of_the_plan()
    {
        using var folder = new FreshFolder().WithShop(ATrayShop.Shop + Money).WithJob("tray", ATrayShop.Job);
        var plan = (await Ran.In(folder.Path, "plan", "tray", "--json")).ReadJson();
        var work = plan.List("sessions").SelectMany(session => session.List("tasks"));
        var dryFit = work.First(one => one.Text("task").StartsWith("dry fit", StringComparison.Ordinal)).Time("start").Date;
        var dates = (await Priced(folder)).List("stages").Select(payment => payment.Text("date"));
        Assert.Equal(["2027-03-01", dryFit.ToString("uuuu-MM-dd", CultureInfo.InvariantCulture), plan.Field("finish").Time("p80").Date.ToString("uuuu-MM-dd", CultureInfo.InvariantCulture)], dates);
    }

    [Fact]
    public async Task Margin_and_markup_of_one_figure_are_two_prices()
    {
        using var folder = new FreshFolder().WithShop(ATrayShop.Shop + Money).WithJob("tray", ATrayShop.Job);
        var margin = await Priced(folder);
        var markup = await Priced(folder.WithShop(ATrayShop.Shop + Money.Replace("margin", "markup", StringComparison.Ordinal)));
        Assert.Equal(margin.Amount("cost"), markup.Amount("cost"));
        Assert.Equal(Math.Round(margin.Amount("cost") / 0.8m, 2, MidpointRounding.AwayFromZero), margin.Amount("reckoned"));
        Assert.Equal(Math.Round(markup.Amount("cost") * 1.2m, 2, MidpointRounding.AwayFromZero), markup.Amount("reckoned"));
    }

    [Fact]
    public async Task A_shop_that_says_nothing_of_money_is_told_what_to_write()
    {
        using var folder = new FreshFolder().WithATray();
        var ran = await Ran.In(folder.Path, "price", "tray", "--quote", "quote.pdf");
        Assert.Equal((1, ""), (ran.ExitCode, ran.Out));
        Assert.StartsWith("shop.yaml does not say what an hour has to earn; expected 'money'", ran.Error, StringComparison.Ordinal);
        Assert.False(File.Exists(folder.File("quote.pdf")));
        Assert.Equal("money", (await Ran.In(folder.Path, "price", "tray", "--json")).ReadJson().Text("missing"));
    }

    [Theory]
    [InlineData("120%")]
    [InlineData("some")]
    [InlineData("-5%")]
    public async Task A_risk_that_is_none_is_wrong_use(string typed)
    {
        using var folder = new FreshFolder().WithShop(ATrayShop.Shop + Money).WithJob("tray", ATrayShop.Job);
        var ran = await Ran.In(folder.Path, "price", "tray", $"--risk={typed}");
        Assert.Equal(2, ran.ExitCode);
        Assert.Contains($"'{typed}' is no risk to take; expected a percentage from 0% to less than 100%, such as 10%", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Timber_without_a_price_and_a_price_below_the_cost_are_told()
    {
        using var folder = new FreshFolder().WithShop(ATrayShop.Shop + Money).WithJob("tray", ATrayShop.Job + "price: 20\n");
        var notes = (await Priced(folder)).List("notes").Select(note => note.GetString()!).ToList();
        Assert.Contains(notes, note => note.StartsWith("The price does not cover the cost", StringComparison.Ordinal));
        Assert.Contains(notes, note => note.StartsWith("Timber without a price is reckoned at ", StringComparison.Ordinal));
    }

    private static async Task<JsonElement> Price(string shop) => (await Sample.Of(shop).Price()).Ran.ReadJson();

    private static async Task<JsonElement> Priced(FreshFolder folder, params string[] more) => (await Ran.In(folder.Path, ["price", "tray", "--json", .. more])).WentWell().ReadJson();
}
