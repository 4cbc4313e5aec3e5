using NodaTime;
using ShopDays.Cli.Tests.Running;
using ShopDays.Cli.Tests.Sheets;
using Xunit;

namespace ShopDays.Cli.Tests.Commands;

/// <summary>The workbook and the CSV files of a plan, beside the answer of the same run.</summary>
public sealed class PlanFilesTests
{
    private static readonly Instant Now = Instant.FromUtc(2027, 3, 1, 5, 0);

    [Fact]
    public void The_workbook_and_the_csv_files_hold_what_the_answer_says()
    {
        using var folder = new FreshFolder().WithATray();
        var answer = Typed.At(Now, "plan", folder.File("jobs", "tray.yaml"), "--effort", "quick", "--json", "--xlsx", folder.File("plan.xlsx"), "--csv", folder.File("tables")).ReadJson();
        var work = answer.List("sessions").SelectMany(session => session.List("tasks")).ToList();
        using var book = new ReadWorkbook(File.ReadAllBytes(folder.File("plan.xlsx")));
        Assert.Equal(work.Select(one => one.Text("mark")).Order(StringComparer.Ordinal), book.Rows("plan").Select(row => (string)row["mark"]!).Order(StringComparer.Ordinal));
        Assert.Equal(work.Select(one => one.Text("task")).Distinct().Order(StringComparer.Ordinal), book.Rows("work").Select(row => (string)row["task"]!).Order(StringComparer.Ordinal));

        // A shop of millimetres: sizes as they stand in the job's file.
        Assert.Equal((420.0, 60.0, 18.0), book.Rows("parts").Where(row => (string)row["part"]! == "side").Select(row => ((double)row["length, mm"]!, (double)row["width, mm"]!, (double)row["thickness, mm"]!)).First());
        Assert.Equal(["parts.csv", "plan.csv", "work.csv"], Directory.EnumerateFiles(folder.File("tables")).Select(Path.GetFileName).Order(StringComparer.Ordinal));
        Assert.Equal(work.Count + 1, File.ReadAllLines(folder.File("tables", "plan.csv")).Length);
    }

    [Fact]
    public void Where_the_shop_says_what_an_hour_has_to_earn_the_price_is_a_sheet_whose_lines_add_up_to_that_of_the_price_command()
    {
        using var folder = new FreshFolder().WithShop(ATrayShop.Shop + "money: {rate: 34 per hour, margin: 12%, tax: 20%}\n").WithJob("tray", ATrayShop.Job + "hardware: [{hardware: cup hook, count: 6, price: 0.45 each}]\n");
        Typed.At(Now, "plan", folder.File("jobs", "tray.yaml"), "--effort", "quick", "--json", "--xlsx", folder.File("plan.xlsx"));
        using var book = new ReadWorkbook(File.ReadAllBytes(folder.File("plan.xlsx")));
        Assert.Equal(["parts", "work", "plan", "price"], book.Sheets);
        var rows = book.Rows("price").Select(row => (Group: (string)row["group"]!, Line: (string)row["line"]!, Amount: (decimal)(double)row["amount, GBP"]!)).ToList();
        Assert.Equal(rows.Single(row => row.Line == "cost with what may go wrong").Amount, rows.Where(row => row.Group is not ("in all" or "asked for")).Sum(row => row.Amount));
        var total = Typed.At(Now, "price", folder.File("jobs", "tray.yaml"), "--effort", "quick", "--json").ReadJson().Text("total");
        Assert.Equal(total, rows.Single(row => row.Line == "to pay in all").Amount.ToString("0.00", System.Globalization.CultureInfo.InvariantCulture));
    }

    [Fact]
    public void A_misspelt_folder_is_told_before_the_work()
    {
        using var folder = new FreshFolder().WithATray();
        var before = folder.Everything();
        foreach (var option in (string[])["--xlsx", "--ical"])
        {
            var told = Typed.At(Now, "plan", folder.File("jobs", "tray.yaml"), option, folder.File("nowhere", "plan"));
            Assert.Equal((3, ""), (told.ExitCode, told.Out));
            Assert.Contains("has no folder to be written to", told.Error, StringComparison.Ordinal);
        }

        Assert.Equal(before, folder.Everything());
    }
}
