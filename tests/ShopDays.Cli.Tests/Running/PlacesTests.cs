using ShopDays.Cli.Tests.Commands;
using UglyToad.PdfPig;
using Xunit;

namespace ShopDays.Cli.Tests.Running;

/// <summary>Where a maker stands, how a job is named, and folders and names of every script.</summary>
public sealed class PlacesTests
{
    [Fact]
    public async Task A_job_is_found_by_its_path_from_another_folder_and_by_its_name_from_below_the_shop()
    {
        using var elsewhere = new FreshFolder();
        using var folder = new FreshFolder().WithATray();
        Directory.CreateDirectory(folder.File("notes", "old"));
        var byName = (await Ran.In(folder.Path, "check", "tray")).WentWell();
        Assert.Equal(byName, await Ran.In(elsewhere.Path, "check", folder.File("jobs", "tray.yaml")));
        Assert.Equal(byName, await Ran.In(folder.File("notes", "old"), "check", "tray"));
        Assert.Equal(byName, await Ran.In(folder.File("jobs"), "check", "tray.yaml"));
        Assert.Equal(byName, await Ran.In(folder.File("notes"), "check", Path.Combine("..", "jobs", "tray.yaml")));
    }

    [Fact]
    public async Task Folders_and_names_of_every_script_are_as_good_as_plain_ones()
    {
        using var elsewhere = new FreshFolder();
        using var folder = new FreshFolder();
        var shop = folder.File("Möbel & Söhne", "作業場 №2");
        folder.With("Möbel & Söhne/作業場 №2/shop.yaml", ATrayShop.Shop.Replace("Gannet Shed", "Ångström's bødverk", StringComparison.Ordinal))
            .With("Möbel & Söhne/作業場 №2/jobs/plateau à thé.yaml", ATrayShop.Job
                .Replace("job: Tray", "job: Plateau à thé ½", StringComparison.Ordinal)
                .Replace("part: side", "part: côté", StringComparison.Ordinal).Replace("[side, end]", "[côté, end]", StringComparison.Ordinal));
        var plan = (await Ran.In(elsewhere.Path, "plan", Path.Combine(shop, "jobs", "plateau à thé.yaml"), "--json", "--pdf", "plan à thé.pdf")).WentWell();
        Assert.Contains("flatten face one: côté", plan.Out, StringComparison.Ordinal);
        using var paper = PdfDocument.Open(elsewhere.File("plan à thé.pdf"));
        Assert.Equal("Plateau à thé ½", paper.Information.Title);
        Assert.Contains(paper.GetPages(), page => page.Text.Contains("côté", StringComparison.Ordinal));
        Assert.Contains("côté", (await Ran.In(shop, "check", "plateau à thé")).WentWell().Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_name_with_brackets_is_printed_as_it_is()
    {
        using var folder = new FreshFolder().WithShop(ATrayShop.Shop)
            .WithJob("tray", ATrayShop.Job.Replace("part: side", "part: \"side [red]\"", StringComparison.Ordinal).Replace("[side, end]", "[\"side [red]\", end]", StringComparison.Ordinal));
        foreach (var command in new[] { "check", "layout" })
        {
            Assert.Contains("side [red]", (await Ran.In(folder.Path, command, "tray")).WentWell().Out, StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task Options_may_stand_anywhere_and_behind_two_hyphens_all_is_a_name()
    {
        using var folder = new FreshFolder().WithATray().WithJob("-odd", ATrayShop.Job);
        var plain = (await Ran.In(folder.Path, "layout", "tray", "--json", "--effort", "quick")).WentWell();
        Assert.Equal(plain, await Ran.In(folder.Path, "layout", "--effort=quick", "--json", "tray"));
        Assert.Equal(plain, await Ran.In(folder.Path, "layout", "--json", "--effort", "quick", "--", "-odd"));
    }
}
