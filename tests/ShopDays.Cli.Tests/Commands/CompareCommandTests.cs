using System.Text.Json;
using ShopDays.Cli.Tests.Running;
using Xunit;

namespace ShopDays.Cli.Tests.Commands;

/// <summary>Ways of doing a small job side by side.</summary>
public sealed class CompareCommandTests
{
    private const string Money = "money: {rate: 40 per hour, margin: 20%}\n";

    [Fact]
    public void A_variant_in_which_nothing_changes_differs_by_nothing_at_all()
    {
        var answer = Compare("shop: {shop: Gannet Shed by another name}");
        var difference = answer.List("variants")[0].Field("difference");
        Assert.True(difference.YesOrNo("isNone"), difference.ToString());
        Assert.True(JsonElement.DeepEquals(answer.Field("asIs").Field("outcome"), answer.List("variants")[0].Field("outcome")));
    }

    [Fact]
    public void Heavy_hours_fall_by_exactly_the_difference_of_the_estimates_where_a_machine_rips()
    {
        using var folder = Priced();
        var answer = Compare(folder, "machine: {rip: band saw}");
        var (asIs, variant) = (answer.Field("asIs").Field("outcome"), answer.List("variants")[0]);
        var estimate = Typed.Run("estimate", folder.File("jobs", "tray.yaml"), "--json").ReadJson();
        var (before, after) = (estimate.Field("heavyMinutes").Number("mean"), variant.Field("outcome").Field("heavyMinutes").Number("mean"));
        Assert.Equal(before, asIs.Field("heavyMinutes").Number("mean"));
        Assert.True(after < before);

        // Minutes are written to a hundredth, each of the three rounded.
        Assert.Equal(after - before, variant.Field("difference").Number("heavyMinutes"), 0.015);
        var rip = variant.Field("difference").List("hours").Single(one => one.Field("operation").ToString() == "rip");
        Assert.Equal(("hand", "band saw"), (rip.List("before")[0].GetString(), rip.List("after")[0].GetString()));
        Assert.True(rip.Number("minutes") < 0);
    }

    [Fact]
    public void Money_besides_is_in_cost_and_price_to_the_coin()
    {
        var difference = Compare("costs: 65.40").List("variants")[0].Field("difference");
        Assert.Equal((65.40m, 65.40m), (difference.Amount("cost"), difference.Amount("leastPrice")));
        Assert.Equal(0, difference.Number("shopDays"));
    }

    [Theory]
    [InlineData("{variant: a better wage, shop: {money: {rate: 52.50 per hour}}}", "an hour has to earn 52.50 and not ")]
    [InlineData("{variant: a hired saw, costs: 65.40}", "what is bought and paid for beside the timber 65.40 higher")]
    public void Money_that_is_neither_hours_nor_timber_is_named_as_the_cause(string variant, string cause)
    {
        using var folder = Priced();
        var ran = Typed.Run("compare", folder.File("jobs", "tray.yaml"), "--schedules", "30", "--variant", variant);
        Assert.Equal((0, ""), (ran.ExitCode, ran.Error));
        Assert.Contains(cause, ran.Out.Replace("\n   ", " ", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    [Fact]
    public void Fewer_parts_take_fewer_hours()
    {
        var variant = Compare("{variant: without ends, parts: {end: ~}, job: {joints: ~, glue-ups: ~, finish: ~}}").List("variants")[0];
        Assert.Equal("without ends", variant.Text("variant"));
        Assert.True(variant.Field("difference").Number("handsOnMinutes") < -60);
        Assert.True(variant.Field("difference").Number("daysAtP80") < 0);
    }

    [Fact]
    public void A_variant_that_cannot_be_done_says_why_and_stops_no_other()
    {
        var answer = Compare("parts: {side: {count: 9}}", "{variant: a helper, helper: {monday: [\"09:00-12:30\"]}}", "shop: {clamps: [{reach: 100 mm, count: 1}]}");
        var (small, helped, clamped) = (answer.List("variants")[0], answer.List("variants")[1], answer.List("variants")[2]);
        Assert.Contains("the other parts take the room", small.List("cannotBeDone")[0].GetString(), StringComparison.Ordinal);
        Assert.Equal(JsonValueKind.Null, small.Field("outcome").ValueKind);
        Assert.Equal(JsonValueKind.Null, helped.Field("cannotBeDone").ValueKind);
        Assert.Contains("clamps", clamped.List("cannotBeDone")[0].GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public void The_file_beside_the_job_is_compared_and_fits_80_columns()
    {
        using var folder = Priced().With("jobs/tray.variants.yaml", """
            variants:
              - {variant: ripped by machine, machine: {rip: band saw}, costs: 20}
              - {variant: Tuesday evenings too, sessions: {tuesday: ["18:00-20:30"]}}
              - {variant: more than the board gives, parts: {side: {count: 9}}}
              - {variant: two coats of oil, job: {finish: [{finish: boiled linseed oil, on: [frame], coats: 2}]}}
            """);
        var ran = Typed.Run("compare", folder.File("jobs", "tray.yaml"), "--schedules", "20");
        Assert.Equal((0, ""), (ran.ExitCode, ran.Error));
        Assert.All(ran.Out.Split('\n'), line => Assert.True(line.TrimEnd().Length <= 80, line));
        Assert.Contains("ripped by machine", ran.Out, StringComparison.Ordinal);
        Assert.Contains("Cannot be done: ", ran.Out, StringComparison.Ordinal);
        Assert.Contains("rip by band saw, ", ran.Out, StringComparison.Ordinal);
        Assert.Contains("A machine brings dangers of its own", ran.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_mistake_of_what_was_typed_is_told_at_its_place()
    {
        using var folder = Priced();
        var ran = Typed.Run("compare", folder.File("jobs", "tray.yaml"), "--variant", "machine: {rip: bandsaw}", "--variant", "parts: {sides: {count: 3}}");
        Assert.Equal(1, ran.ExitCode);
        Assert.Equal("", ran.Out);
        Assert.StartsWith("--variant 1:1:16: 'bandsaw' is not a method of 'rip'; expected hand, band saw or table saw; nearest: band saw; so it is in the variant 'machine: rip: bandsaw'\n", ran.Error, StringComparison.Ordinal);
        Assert.Contains("--variant 2:1:9: no line of 'parts' is called 'sides'; expected side or end; nearest: side", ran.Error, StringComparison.Ordinal);
        Assert.EndsWith("2 mistakes; nothing was worked out or written\n", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_variants_it_is_said_how_to_come_by_some()
    {
        using var folder = Priced();
        var ran = Typed.Run("compare", folder.File("jobs", "tray.yaml"));
        Assert.Equal(1, ran.ExitCode);
        Assert.Contains("jobs/tray.variants.yaml is not there", ran.Error.ReplaceLineEndings(" "), StringComparison.Ordinal);
    }

    [Fact]
    public void Suggestions_stand_in_the_order_of_what_they_save_and_can_be_typed_as_they_are_told()
    {
        using var folder = Priced("machines: [band saw, jointer]\n");
        var path = folder.File("jobs", "tray.yaml");
        var answer = Typed.Run("compare", path, "--suggest", "--json", "--schedules", "30").ReadJson();
        var suggested = answer.List("variants");
        Assert.NotEmpty(suggested);
        Assert.True(answer.Number("singleChangesTried") > suggested.Count);
        List<(double Days, decimal Money)> saved = [.. suggested.Select(one => one.Field("difference")).Select(one => (-one.Number("daysAtP80"), -one.Amount("leastPrice")))];
        Assert.All(saved, one => Assert.True(one.Days > 0 || one.Money > 0));
        Assert.Equal(saved.OrderByDescending(one => Math.Max(0, one.Days)).ThenByDescending(one => one.Money), saved);

        var again = Compare(folder, suggested[0].Text("change")).List("variants")[0];
        Assert.True(JsonElement.DeepEquals(suggested[0].Field("outcome"), again.Field("outcome")));
    }

    [Fact]
    public void Another_glue_is_suggested_where_the_shops_nights_are_too_cold_for_the_jobs_own()
    {
        using var folder = Glued("PVA, yellow (aliphatic)", "nights: {temperature: 7 C, months: {may: 13 C, june: 14 C, july: 15 C, august: 15 C, september: 13 C}}\n");
        var path = folder.File("jobs", "tray.yaml");
        var ran = Typed.Run("compare", path, "--suggest", "--schedules", "30");
        Assert.Equal((0, ""), (ran.ExitCode, ran.Error));
        Assert.Contains("casein in place of PVA, yellow (aliphatic)", ran.Out, StringComparison.Ordinal);
        Assert.Contains("As a variant: job: {glue-ups: {frame: {adhesive: casein}}}", ran.Out, StringComparison.Ordinal);
        Assert.Contains("Another glue may bear less water", ran.Out, StringComparison.Ordinal);

        var suggested = Typed.Run("compare", path, "--suggest", "--json", "--schedules", "30").ReadJson().List("variants").Single(one => one.Text("variant").StartsWith("casein", StringComparison.Ordinal));
        Assert.True(suggested.Field("difference").Number("daysAtP80") < 0);
    }

    [Theory]
    [InlineData("PVA, slow-set")]
    [InlineData("casein")]
    public void No_other_glue_is_suggested_where_none_saves_anything(string glue)
    {
        using var folder = Glued(glue);
        Assert.DoesNotContain("in place of", Typed.Run("compare", folder.File("jobs", "tray.yaml"), "--suggest", "--schedules", "30").Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Its_sheet_has_the_figures_the_changes_and_the_suggestions_of_the_terminal()
    {
        using var folder = Priced("machines: [band saw]\n");
        var pdf = folder.File("compared.pdf");
        var ran = Typed.Run("compare", folder.File("jobs", "tray.yaml"), "--schedules", "30", "--variant", "{variant: Tuesday evenings too, sessions: {tuesday: [\"18:00-20:30\"]}}", "--variant", "parts: {side: {count: 9}}", "--suggest", "--pdf", pdf);
        Assert.Equal((0, ""), (ran.ExitCode, ran.Error));
        Assert.EndsWith($"Written: {pdf}\n", ran.Out, StringComparison.Ordinal);

        using var paper = UglyToad.PdfPig.PdfDocument.Open(File.ReadAllBytes(pdf));
        var pages = paper.GetPages().Select(page => ReadPaper.Squeezed(page.Text)).ToList();
        Assert.Equal(2, pages.Count);
        var terminal = ReadPaper.Squeezed(ran.Out);
        Assert.All((string[])["1.Tuesdayeveningstoo", "Changes:promise", "Because:", "Cannotbedone:"], words => Assert.Contains(words, pages[0], StringComparison.Ordinal));
        Assert.All((string[])["Traywhatwouldsave", "Asavariant:machine:{rip:bandsaw}", "singlechangestried"], words => Assert.Contains(words, pages[1].Replace("Tray:", "Tray", StringComparison.Ordinal), StringComparison.Ordinal));

        // What one way changes and why is told in the same words in both places.
        var changes = ran.Out[ran.Out.IndexOf("Changes: ", StringComparison.Ordinal)..];
        Assert.Contains(ReadPaper.Squeezed(changes[..changes.IndexOf("Because: ", StringComparison.Ordinal)]), pages[0], StringComparison.Ordinal);
        Assert.Contains("Tuesdayeveningstoo", terminal, StringComparison.Ordinal);
    }

    [Fact]
    public void A_sheet_that_has_no_folder_is_told_before_the_work()
    {
        using var folder = Priced();
        var ran = Typed.Run("compare", folder.File("jobs", "tray.yaml"), "--variant", "costs: 10", "--pdf", folder.File("nowhere", "compared.pdf"));
        Assert.NotEqual(0, ran.ExitCode);
        Assert.Contains("has no folder to be written to", ran.Error.ReplaceLineEndings(" "), StringComparison.Ordinal);
    }

    private static FreshFolder Glued(string glue, string more = "") => new FreshFolder().WithShop(ATrayShop.Shop + more).WithJob("tray", ATrayShop.Job[..ATrayShop.Job.IndexOf("finish:", StringComparison.Ordinal)].Replace("PVA, slow-set", glue, StringComparison.Ordinal));

    private static FreshFolder Priced(string more = "") => new FreshFolder().WithShop(ATrayShop.Shop + Money + more).WithJob("tray", ATrayShop.Job);

    private static JsonElement Compare(params string[] variants)
    {
        using var folder = Priced();
        return Compare(folder, variants);
    }

    private static JsonElement Compare(FreshFolder folder, params string[] variants) =>
        Typed.Run(["compare", folder.File("jobs", "tray.yaml"), "--json", "--schedules", "30", .. variants.SelectMany(one => (string[])["--variant", one])]).ReadJson();
}
