using System.Text.Json;
using ShopDays.Cli.Commands;
using ShopDays.Cli.Tests.Running;
using Xunit;

namespace ShopDays.Cli.Tests.Commands;

public sealed class RatesAndTrialTests
{
    [Fact]
    public async Task A_shop_without_a_log_is_told_how_to_begin_and_no_log_is_made()
    {
        using var folder = new FreshFolder().WithATray();
        var told = (await Ran.In(folder.Path, "rates")).WentWell().Out;

        Assert.Contains("Nothing is learned yet", told, StringComparison.Ordinal);
        Assert.Contains("shopdays log add", told, StringComparison.Ordinal);
        Assert.False(File.Exists(folder.File("shop.db")));
    }

    [Fact]
    public async Task The_rates_for_other_programs_keep_their_contract()
    {
        using var tray = new ATrayUnderWay().Done(12, 1.3);
        var told = (await Ran.In(tray.Folder.Path, "rates", "--json")).WentWell().ReadJson();

        Assert.Equal(12, told.GetProperty("entries").GetInt32());
        Assert.InRange(told.GetProperty("coverage80").GetDouble(), 0, 1);
        var rates = told.GetProperty("rates").EnumerateArray().ToList();
        Assert.Equal(12, rates.Sum(rate => rate.GetProperty("entries").GetInt32() + rate.GetProperty("heldOut").GetInt32()));
        Assert.All(rates, rate =>
        {
            Assert.All((string[])["operation", "method", "unit", "readAs", "at"], name => Assert.Equal(JsonValueKind.String, rate.GetProperty(name).ValueKind));
            var (low, learned, high) = (rate.GetProperty("low80").GetDouble(), rate.GetProperty("learned").GetDouble(), rate.GetProperty("high80").GetDouble());
            Assert.True(low < learned && learned < high && rate.GetProperty("prior").GetDouble() > 0);
            Assert.Contains(rate.GetProperty("per").GetString(), (string?[])["minute", "hour", "each"]);
        });

        // All took 1.3 times as long: no rate may have become quicker than the tables.
        Assert.All(rates, rate => Assert.True(rate.GetProperty("minutesPerUnit").GetProperty("learned").GetDouble() > rate.GetProperty("minutesPerUnit").GetProperty("prior").GetDouble()));
    }

    [Fact]
    public async Task Rates_are_printed_within_eighty_columns_and_the_paper_and_drawings_are_written()
    {
        using var tray = new ATrayUnderWay().Done(14, 0.8);
        var told = (await Ran.In(tray.Folder.Path, "rates", "--all", "--pdf", "rates.pdf", "--svg", "pictures")).WentWell().Out;

        Assert.All(told.Split('\n'), line => Assert.True(line.Length <= 80, line));
        Assert.DoesNotContain('\u001b', told);
        Assert.Contains("Of 14 timed tasks", told, StringComparison.Ordinal);
        Assert.True(File.Exists(tray.Folder.File("rates.pdf")));
        Assert.Equal(["expected-and-taken.svg", "rates-over-time.svg"], Directory.EnumerateFiles(tray.Folder.File("pictures")).Select(Path.GetFileName).Order(StringComparer.Ordinal));
    }

    [Theory]
    [InlineData("no operation is called 'ripp'", "ripp")]
    [InlineData("no timber is called 'white ok'", "--species", "white ok")]
    [InlineData("--thickness", "--thickness", "thick")]
    public async Task What_is_not_known_is_wrong_use_and_nothing_is_written(string complaint, params string[] typed)
    {
        using var folder = new FreshFolder().WithATray();
        var before = folder.Everything();
        var ran = await Ran.In(folder.Path, ["rates", "--pdf", "rates.pdf", "--svg", "pictures", .. typed]);

        Assert.Equal(ExitCode.WrongUse, ran.ExitCode);
        Assert.Contains(complaint, ran.Error, StringComparison.Ordinal);
        Assert.Equal(before, folder.Everything());
    }

    [Fact]
    public void Trials_of_a_begun_job_are_about_what_is_left_of_it_and_a_finished_one_has_none()
    {
        using var tray = new ATrayUnderWay();
        Assert.StartsWith("Tray takes between", tray.Type("trial").Out, StringComparison.Ordinal);
        tray.Done(4, 1);
        Assert.StartsWith("What is left of Tray takes between", tray.Type("trial").Out, StringComparison.Ordinal);
        tray.Done(tray.InOrder.Count, 1);
        Assert.StartsWith("Every task of Tray is done", tray.Type("trial").Out, StringComparison.Ordinal);
        Assert.Empty(tray.Type("trial", "--json").ReadJson().GetProperty("trials").EnumerateArray());
    }

    [Fact]
    public void A_trial_is_told_with_its_worth_its_cautions_and_what_to_type_afterwards()
    {
        using var tray = new ATrayUnderWay();
        var told = tray.Type("trial", "--json").ReadJson();

        var (now, trials) = (told.GetProperty("handsOnMinutes").GetProperty("width").GetDouble(), told.GetProperty("trials").EnumerateArray().ToList());
        Assert.InRange(trials.Count, 2, 5);
        var widths = trials.Select(trial => trial.GetProperty("widthTogether").GetDouble()).Prepend(now).ToList();
        Assert.All(widths.Zip(widths.Skip(1)), pair => Assert.True(pair.Second < pair.First));
        Assert.All(trials, trial =>
        {
            Assert.StartsWith("shopdays log add --timed ", trial.GetProperty("log").GetString(), StringComparison.Ordinal);
            Assert.NotEmpty(trial.GetProperty("how").GetString()!);
            Assert.True(trial.GetProperty("quantity").GetDouble() > 0);
        });
        Assert.Contains(told.GetProperty("cautions").EnumerateArray(), caution => caution.GetProperty("kind").GetString() == "edge tools");
    }

    [Fact]
    public void Trials_are_printed_within_eighty_columns_with_the_cautions_of_the_plan()
    {
        using var tray = new ATrayUnderWay();
        var told = tray.Type("trial");

        Assert.Equal((ExitCode.Done, ""), (told.ExitCode, told.Error));
        Assert.All(told.Out.Split('\n'), line => Assert.True(line.Length <= 80, line));
        Assert.Contains("Cautions for these trials", told.Out, StringComparison.Ordinal);
        Assert.Contains("In doubt, stop.", told.Out, StringComparison.Ordinal);
    }
}
