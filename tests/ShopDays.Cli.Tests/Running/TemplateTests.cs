using System.Text.RegularExpressions;
using ShopDays.Cli.Files;
using ShopDays.Cli.Tests.Commands;
using UglyToad.PdfPig;
using Xunit;

namespace ShopDays.Cli.Tests.Running;

/// <summary>From an empty folder to a printed plan with each template, as on a maker's first evening.</summary>
public sealed class TemplateTests
{
    public static TheoryData<string> TemplateNames => [.. Templates.JobNames];

    [Theory]
    [MemberData(nameof(TemplateNames))]
    public async Task A_new_shop_checks_and_plans_its_first_job(string template)
    {
        using var folder = new FreshFolder();
        var begun = (await Ran.In(folder.Path, "new", "first-piece", "--from", template)).WentWell();
        Assert.Contains("shopdays check first-piece", begun.Out, StringComparison.Ordinal);

        // A new job starts on the day of its making; the test must not depend on that day.
        var job = folder.File("jobs", "first-piece.yaml");
        var text = await File.ReadAllTextAsync(job, TestContext.Current.CancellationToken);
        Assert.Matches(@"(?m)^start: 20\d\d-\d\d-\d\d", text);
        await File.WriteAllTextAsync(job, Regex.Replace(text, @"(?m)^start: \S+", "start: 2027-03-01"), TestContext.Current.CancellationToken);

        (await Ran.In(folder.Path, "check", "first-piece")).WentWell();
        var plan = (await Ran.In(folder.Path, "plan", "first-piece", "--json", "--pdf", "first-piece.pdf")).WentWell().ReadJson();
        Assert.NotEmpty(plan.List("sessions"));
        Assert.Contains(plan.List("cautions"), caution => caution.Text("kind") == "always");
        using var paper = PdfDocument.Open(folder.File("first-piece.pdf"));
        Assert.Equal("First piece", paper.Information.Title);
        Assert.True(paper.NumberOfPages > plan.Number("shopDays"));
    }
}
