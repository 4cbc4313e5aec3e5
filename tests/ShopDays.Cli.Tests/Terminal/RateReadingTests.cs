using ShopDays.Cli.Files;
using ShopDays.Cli.Phrases;
using ShopDays.Measures;
using ShopDays.Times;
using ShopDays.Work;
using Xunit;

namespace ShopDays.Cli.Tests.Terminal;

public sealed class RateReadingTests
{
    private static readonly IReadOnlyList<OperationRate> Rates = OperationRate.All(RateModel.FromPrior(BuiltIn.Operations), new Dictionary<Covariate, double>());

    [Theory]
    [InlineData("rip", "ft/min", "m/min")]
    [InlineData("crosscut", "in/min", "m/min")]
    [InlineData("joint the edge", "ft/min", "m/min")]
    [InlineData("flatten face one", "ft2/h", "m2/h")]
    [InlineData("resaw", "ft2/h", "m2/h")]
    [InlineData("mortise", "min each", "min each")]
    [InlineData("dado", "min/ft", "min/m")]
    public void A_rate_is_read_as_a_maker_would_say_it(string operation, string inches, string metric)
    {
        var rate = Rates.First(one => one.Operation.Name == operation);

        Assert.Equal((inches, metric), (RateReading.Of(rate, LengthFormat.Inches(16)).Unit, RateReading.Of(rate, LengthFormat.Millimetres).Unit));
    }

    [Fact]
    public void The_figures_are_those_of_the_table_with_its_rest()
    {
        // The table: 0.83 minutes for a foot at the references, a quarter of rest on it.
        var rip = Rates.First(one => one.Operation.Name == "rip");
        Assert.Equal(1 / (0.83 * 1.25), RateReading.Of(rip, LengthFormat.Inches(16)).Middle(rip.Prior), 9);
        Assert.Equal(0.3048 / (0.83 * 1.25), RateReading.Of(rip, LengthFormat.Millimetres).Middle(rip.Prior), 9);

        // 18 minutes for a mortise, 15 % of rest: a practised piece, no gain of a batch.
        var mortise = Rates.First(one => one.Operation.Name == "mortise");
        Assert.Equal(18 * 1.15, RateReading.Of(mortise, LengthFormat.Inches(16)).Middle(mortise.Prior), 9);
    }

    [Theory]
    [InlineData(0.00162, "0.0016")]
    [InlineData(0.0162, "0.016")]
    [InlineData(0.0996, "0.10")]
    [InlineData(0.838, "0.84")]
    [InlineData(0.996, "1.0")]
    [InlineData(1.23, "1.2")]
    [InlineData(9.96, "10")]
    [InlineData(160.4, "160")]
    public void Two_figures_count_however_small_a_rate_is(double figure, string written) => Assert.Equal(written, RateReading.Write(figure));

    [Fact]
    public void The_smaller_figure_of_a_range_comes_first_whichever_way_it_is_read() => Assert.All(Rates, rate =>
    {
        var reading = RateReading.Of(rate, LengthFormat.Millimetres);
        var (low, high) = reading.Range80(rate.Learned);
        Assert.True(low < reading.Middle(rate.Learned) && reading.Middle(rate.Learned) < high);
    });

    [Fact]
    public void Every_operation_that_can_be_tried_is_in_the_catalogue_and_what_is_no_use_by_itself_is_not_among_them()
    {
        Assert.All(BuiltIn.Trials.Keys, name => Assert.True(BuiltIn.Operations.TryFind(name, out var found) && found.Name == name));
        Assert.All(
            (string[])["glue-up", "edge-glue panel", "dry fit", "finish coat, wiped", "finish coat, brushed", "draw full-size or working drawing", "fit a drawer to its opening"],
            name => Assert.False(ToldTrial.CanBeTried(BuiltIn.Operations[name])));
    }
}
