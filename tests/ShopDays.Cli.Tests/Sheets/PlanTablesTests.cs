using System.Globalization;
using System.Text;
using NodaTime;
using ShopDays.Cli.Paper.Setting;
using ShopDays.Cli.Sheets;
using ShopDays.Cli.Tests.Paper;
using ShopDays.Work;
using Xunit;

namespace ShopDays.Cli.Tests.Sheets;

/// <summary>The tables of a plan, read back field by field against the plan itself.</summary>
public sealed class PlanTablesTests
{
    private static readonly Lazy<PlanTables> Tables = new(() =>
    {
        var plan = APlan.Of(APlan.Parts(5), AShop.With(PaperSize.Letter));
        return new()
        {
            Shop = plan.Shop,
            Format = plan.Format,
            Job = plan.Job,
            Layout = plan.Layout,
            Graph = plan.Graph,
            Marks = plan.Marks,
            TaskTimes = plan.TaskTimes,
            Plan = plan.Plan,
        };
    });

    [Fact]
    public void The_sheets_have_plain_names_frozen_heads_and_widths()
    {
        using var book = new ReadWorkbook(Workbook.Write(Tables.Value.All));
        Assert.Equal(["parts", "work", "plan"], book.Sheets);
        foreach (var table in Tables.Value.All)
        {
            Assert.Equal(1, book.FrozenRows(table.Name));
            Assert.Equal(table.Columns.Select(column => column.Width), book.Widths(table.Name));
        }
    }

    [Fact]
    public void Every_piece_has_its_sizes_as_numbers_and_in_words_and_its_board()
    {
        using var book = new ReadWorkbook(Workbook.Write(Tables.Value.All));
        var rows = book.Rows("parts");
        var job = Tables.Value.Job;
        Assert.Equal(job.Parts.Sum(part => part.Count + part.Spare), rows.Select(row => (row["part"], row["number"])).Distinct().Count());
        foreach (var row in rows)
        {
            var part = job.Parts.Single(part => part.Name == (string)row["part"]!);

            // Written with three figures behind the point, so to half a thousandth.
            Assert.Equal(part.Length.Inches, (double)row["length, in"]!, 0.000501);
            Assert.Equal(part.Width.Inches, (double)row["width, in"]!, 0.000501);
            Assert.Equal(part.Thickness.Inches, (double)row["thickness, in"]!, 0.000501);
            Assert.Contains(Tables.Value.Format.Write(part.Length), (string)row["finished size"]!, StringComparison.Ordinal);
            var board = Tables.Value.Layout.Boards.Single(board => board.Board.Name == (string)row["board"]!);
            Assert.Contains(board.Blanks, blank => blank.Blank.Label == (string)row["label"]! && blank.Blank.Part == part && blank.Blank.Numbers.Contains((int)(double)row["number"]!));
        }
    }

    [Fact]
    public void Every_task_has_its_mark_its_range_and_its_time()
    {
        using var book = new ReadWorkbook(Workbook.Write(Tables.Value.All));
        var rows = book.Rows("work").ToDictionary(row => (string)row["task"]!);
        Assert.Equal(Tables.Value.Graph.Tasks.Count, rows.Count);
        foreach (var task in Tables.Value.Graph.Tasks)
        {
            var (row, time) = (rows[task.Name], Tables.Value.TaskTimes[task.Id]);
            var work = Tables.Value.Plan.Sessions.SelectMany(session => session.Work).Where(work => work.Task.Id == task.Id).ToList();
            Assert.Equal(Tables.Value.Marks.Of(task.Name), row["mark"]);
            Assert.Equal(time.P50.Minutes, (double)row["expected, min"]!, 0.0501);
            Assert.Equal(time.P80.Minutes, (double)row["80 %, min"]!, 0.0501);
            Assert.Equal(time.P90.Minutes, (double)row["90 %, min"]!, 0.0501);
            Assert.Equal(StageNames.Of(task.Stage), row["stage"]);
            Assert.Equal(ToTheMinute(work.Min(one => one.Start.LocalDateTime)), ToTheMinute(row["begins"]));
            Assert.Equal(ToTheMinute(work.Max(one => one.End.LocalDateTime)), ToTheMinute(row["ends"]));
        }
    }

    [Fact]
    public void Every_stretch_of_work_stands_in_its_session()
    {
        using var book = new ReadWorkbook(Workbook.Write(Tables.Value.All));
        var expected = Tables.Value.Plan.Sessions.SelectMany(session => session.Work, (session, work) => (
            session.Session.Date.ToDateTimeUnspecified(), ToTheMinute(session.Session.Start.LocalDateTime), ToTheMinute(work.Start.LocalDateTime), ToTheMinute(work.End.LocalDateTime), work.Task.Name, Math.Round(work.HandsOn.Minutes, 1, MidpointRounding.AwayFromZero)));
        Assert.Equal(expected, book.Rows("plan").Select(row => ((DateTime)row["date"]!, ToTheMinute(row["session begins"]), ToTheMinute(row["begins"]), ToTheMinute(row["ends"]), (string)row["task"]!, (double)row["minutes"]!)));
    }

    /// <summary>What a spreadsheet would take for a formula stays words, in the workbook by the type of its field and in CSV by an apostrophe.</summary>
    [Theory]
    [InlineData("=1+1", "'=1+1")]
    [InlineData("+leg", "'+leg")]
    [InlineData("-5", "'-5")]
    [InlineData("@top", "'@top")]
    [InlineData("leg = 4", "leg = 4")]
    [InlineData("a, \"b\"", "\"a, \"\"b\"\"\"")]
    public void Words_are_never_reckoned(string text, string inCsv)
    {
        var table = new SheetTable("parts", [new("part", 10), new("less", 10)], [[SheetCell.Of(text), SheetCell.Of(-2.5, 1)]]);
        using var book = new ReadWorkbook(Workbook.Write([table]));
        Assert.False(book.HasFormulas);
        var row = Assert.Single(book.Rows("parts"));
        Assert.Equal((text, -2.5), ((string)row["part"]!, (double)row["less"]!));
        Assert.Equal($"part,less\r\n{inCsv},-2.5\r\n", Encoding.UTF8.GetString(SheetCsv.Write(table)));
    }

    [Fact]
    public void The_tables_as_csv_have_the_same_fields()
    {
        using var book = new ReadWorkbook(Workbook.Write(Tables.Value.All));
        foreach (var table in Tables.Value.All)
        {
            var lines = Encoding.UTF8.GetString(SheetCsv.Write(table)).Split("\r\n", StringSplitOptions.RemoveEmptyEntries);
            Assert.Equal(book.Rows(table.Name).Count + 1, lines.Length);
            Assert.DoesNotContain(lines, line => line.Contains('\n', StringComparison.Ordinal));
        }

        var first = Encoding.UTF8.GetString(SheetCsv.Write(Tables.Value.All[2])).Split("\r\n")[1].Split(',');
        var session = Tables.Value.Plan.Sessions[0].Session;
        Assert.Equal((session.Date.ToString("uuuu-MM-dd", CultureInfo.InvariantCulture), session.Start.ToString("uuuu-MM-dd'T'HH:mm", CultureInfo.InvariantCulture)), (first[0], first[1]));
    }

    // A day's fraction as a number is good to far less than a second.
    private static DateTime ToTheMinute(object? time) => time switch
    {
        LocalDateTime local => ToTheMinute(local.ToDateTimeUnspecified()),
        DateTime moment => new DateTime((moment.Ticks + (TimeSpan.TicksPerSecond / 2)) / TimeSpan.TicksPerMinute * TimeSpan.TicksPerMinute, DateTimeKind.Unspecified),
        _ => throw new ArgumentException($"{time} is no time", nameof(time)),
    };
}
