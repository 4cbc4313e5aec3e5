using ShopDays.Cli.Commands;
using ShopDays.Cli.Files;
using Xunit;

namespace ShopDays.Cli.Tests.Commands;

public sealed class NewCommandTests
{
    public static TheoryData<string> TemplateNames => [.. Templates.JobNames];

    [Theory]
    [MemberData(nameof(TemplateNames))]
    public void A_new_job_of_each_template_has_no_mistake(string template)
    {
        using var folder = new FreshFolder();
        var begun = Typed.Run("new", "first-piece", "--from", template, "--shop", folder.Path);
        Assert.Equal((ExitCode.Done, ""), (begun.ExitCode, begun.Error));
        var read = ShopAndJob.Read("first-piece", folder.Path);
        Assert.Equal([], read.Findings.Select(one => one.ToString()));
        Assert.Equal("First piece", read.Read!.Job.Name);
    }

    [Fact]
    public void There_are_templates_of_at_least_five_kinds() => Assert.True(Templates.JobNames.Count >= 5);

    [Fact]
    public void A_new_job_starts_today_by_the_clock_of_the_shop()
    {
        using var folder = new FreshFolder();
        Typed.Run("new", "at-home", "--shop", folder.Path);
        File.WriteAllText(folder.File("shop.yaml"), Templates.Shop.Replace("53.40", "-36.85", StringComparison.Ordinal).Replace("-1.50", "174.76", StringComparison.Ordinal).Replace("Europe/London", "Pacific/Auckland", StringComparison.Ordinal));
        Typed.Run("new", "further-east", "--shop", folder.Path);
        Assert.Contains("\nstart: 2027-03-03 ", File.ReadAllText(folder.File("jobs", "at-home.yaml")), StringComparison.Ordinal);
        Assert.Contains("\nstart: 2027-03-04 ", File.ReadAllText(folder.File("jobs", "further-east.yaml")), StringComparison.Ordinal);
    }

    [Fact]
    public void A_job_that_is_there_is_not_written_over()
    {
        using var folder = new FreshFolder();
        Typed.Run("new", "stool", "--from", "stool", "--shop", folder.Path);
        var before = folder.Everything();
        var again = Typed.Run("new", "stool", "--from", "bookcase", "--shop", folder.Path);
        Assert.Equal(ExitCode.CannotReadOrWrite, again.ExitCode);
        Assert.Equal($"{folder.File("jobs", "stool.yaml")} is there already; give the new job another name\n", again.Error);
        Assert.Equal(before, folder.Everything());
    }

    [Fact]
    public void A_folder_that_is_named_is_the_shop_also_below_another_one()
    {
        using var folder = new FreshFolder();
        File.WriteAllText(folder.File("shop.yaml"), Templates.Shop.Replace("My shop", "Old forge", StringComparison.Ordinal));
        Directory.CreateDirectory(folder.File("second"));
        Typed.Run("new", "stool", "--shop", folder.File("second"));
        Assert.Contains("Old forge", File.ReadAllText(folder.File("shop.yaml")), StringComparison.Ordinal);
        Assert.True(File.Exists(folder.File("second", "shop.yaml")));
        Assert.True(File.Exists(folder.File("second", "jobs", "stool.yaml")));
        Assert.False(Directory.Exists(folder.File("jobs")));
    }

    [Fact]
    public void A_shop_file_that_is_there_is_kept()
    {
        using var folder = new FreshFolder();
        File.WriteAllText(folder.File("shop.yaml"), Templates.Shop.Replace("My shop", "Old forge", StringComparison.Ordinal));
        Typed.Run("new", "stool", "--shop", folder.Path);
        Assert.Contains("Old forge", File.ReadAllText(folder.File("shop.yaml")), StringComparison.Ordinal);
        Assert.True(File.Exists(folder.File("jobs", "stool.yaml")));
    }

    [Theory]
    [InlineData("../outside")]
    [InlineData(".hidden")]
    [InlineData("a b")]
    [InlineData("")]
    public void A_name_that_is_no_file_name_is_refused_and_nothing_is_written(string name)
    {
        using var folder = new FreshFolder();
        var refused = Typed.Run("new", name, "--shop", folder.Path);
        Assert.Equal(ExitCode.WrongUse, refused.ExitCode);
        Assert.Contains("cannot be a job's name", refused.Error, StringComparison.Ordinal);
        Assert.Empty(folder.Everything());
    }

    [Fact]
    public void A_shop_without_a_name_is_refused()
    {
        var refused = Typed.Run("new", "stool", "--shop", "");
        Assert.Equal((ExitCode.WrongUse, "'--shop' needs the name of a folder\n"), (refused.ExitCode, refused.Error));
    }

    [Fact]
    public void An_unknown_template_is_refused_with_the_nearest_one()
    {
        using var folder = new FreshFolder();
        var refused = Typed.Run("new", "stool", "--from", "stol", "--shop", folder.Path);
        Assert.Equal(ExitCode.WrongUse, refused.ExitCode);
        Assert.Equal("no template is called 'stol'; expected blanket-chest, bookcase, side-table, stool, wall-shelf or workbench; nearest: stool\n", refused.Error);
        Assert.Empty(folder.Everything());
    }
}
