using System.Text.Json;
using ShopDays.Cli.Commands;
using ShopDays.Cli.Tests.Files;
using Xunit;

namespace ShopDays.Cli.Tests.Commands;

public sealed class CheckCommandTests
{
    [Fact]
    public void A_job_without_mistakes_is_summed_up()
    {
        var check = Typed.Run("check", Repository.Folder("sample-projects", "elm-workbench", "jobs", "bench.yaml"));
        Assert.Equal((ExitCode.Done, ""), (check.ExitCode, check.Error));
        Assert.StartsWith("Elm workbench: no mistakes in jobs/bench.yaml\n", check.Out, StringComparison.Ordinal);
        Assert.Contains("S1 to S4", check.Out, StringComparison.Ordinal);
        Assert.Contains("* over 23 kg, what one person lifts alone in this shop", check.Out, StringComparison.Ordinal);
        Assert.All(check.Out.Split('\n'), line => Assert.True(line.Length <= 80 || line.StartsWith('*'), line));
    }

    [Fact]
    public void The_mistakes_of_all_files_are_printed_together_and_nothing_is_written()
    {
        using var folder = ABrokenShop();
        var before = folder.Everything();
        var check = Typed.Run("check", folder.File("jobs", "box.yaml"));
        Assert.Equal(ExitCode.No, check.ExitCode);
        Assert.Equal(
            """
            rates.yaml:2:29: 'sawyer' is not a pace group; expected sawing, planing, joinery, assembly, finishing or other
            rates.yaml:2:44: 'hard' is not a class of work; expected light, medium or heavy
            rates.yaml:2:56: '130%' cannot be the share of rest; expected 0% to 100%
            rates.yaml:2:68: 'none' is not a number; expected a whole number from 1 to 10
            shop.yaml:4:11: 'GPB' is not a currency's code; expected three letters of ISO 4217, such as EUR; nearest: GBP
            jobs/box.yaml:3:6: the job is due on 2027-02-24 and starts on 2027-03-01; expected a day after the start
            6 mistakes

            """.ReplaceLineEndings("\n"),
            check.Out);
        Assert.Equal(before, folder.Everything());
    }

    [Fact]
    public void Mistakes_are_told_to_other_programs_by_their_parts()
    {
        using var folder = ABrokenShop();
        var check = Typed.Run("check", folder.File("jobs", "box.yaml"), "--json");
        Assert.Equal(ExitCode.No, check.ExitCode);
        var currency = JsonDocument.Parse(check.Out).RootElement.GetProperty("mistakes")[4];
        Assert.Equal("shop.yaml", currency.GetProperty("file").GetString());
        Assert.Equal(4, currency.GetProperty("line").GetInt32());
        Assert.Equal(11, currency.GetProperty("column").GetInt32());
        Assert.Equal("GBP", currency.GetProperty("nearest").GetString());
    }

    [Fact]
    public void Boards_and_parts_are_told_to_other_programs_with_their_weights()
    {
        var check = Typed.Run("check", Repository.Folder("sample-projects", "elm-workbench", "jobs", "bench.yaml"), "--json");
        var board = JsonDocument.Parse(check.Out).RootElement.GetProperty("boards")[0];
        Assert.Equal("S1", board.GetProperty("board").GetString());
        Assert.Equal(3050, board.GetProperty("lengthMm").GetDouble());
        Assert.True(board.GetProperty("heavy").GetBoolean());
    }

    [Fact]
    public void What_stands_against_a_plan_is_told_before_any_board_is_laid_out()
    {
        using var folder = new FreshFolder();
        Typed.Run("new", "wall-shelf", "--shop", folder.Path, "--from", "wall-shelf");
        File.AppendAllText(folder.File("shop.yaml"), "floor: 2 sq ft\n");
        File.AppendAllText(folder.File("jobs", "wall-shelf.yaml"), "  - {task: the customer chooses the oil, minutes: 30, date: 2027-03-20, at: \"07:00\", before: finish}\n");
        var check = Typed.Run("check", folder.File("jobs", "wall-shelf.yaml"));
        Assert.Equal((ExitCode.Done, ""), (check.ExitCode, check.Error));
        Assert.Contains("glue up: case: it stands on 4.6 sq ft of floor, and the shop has 2 sq ft free;", check.Out, StringComparison.Ordinal);

        File.WriteAllText(folder.File("shop.yaml"), File.ReadAllText(folder.File("shop.yaml")).Replace("floor: 2 sq ft", "floor: 4.6 sq ft", StringComparison.Ordinal));
        check = Typed.Run("check", folder.File("jobs", "wall-shelf.yaml"), "--json");
        var reason = Assert.Single(JsonDocument.Parse(check.Out).RootElement.GetProperty("cannotBePlanned").EnumerateArray());
        Assert.Equal(("the customer chooses the oil", "appointmentNotKept"), (reason.GetProperty("task").GetString(), reason.GetProperty("kind").GetString()));
        Assert.Contains("hours from 06:50 to 08:00 on 2027-03-20", reason.GetProperty("cure").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_job_that_is_not_there_is_named_with_the_nearest_one()
    {
        using var folder = new FreshFolder();
        Typed.Run("new", "chest", "--shop", folder.Path);
        Typed.Run("new", "table", "--shop", folder.Path);
        var trouble = Assert.Throws<ShopDays.Cli.Files.FileTroubleException>(() => ShopDays.Cli.Files.ShopAndJob.Read("chset", folder.Path));
        Assert.Equal($"no job is called 'chset' in {folder.File("jobs")}; expected chest or table; nearest: chest", trouble.Message);
    }

    [Fact]
    public void A_job_without_a_shop_file_above_it_says_what_to_do()
    {
        using var folder = new FreshFolder();
        File.WriteAllText(folder.File("box.yaml"), "job: Box\n");
        var check = Typed.Run("check", folder.File("box.yaml"));
        Assert.Equal(ExitCode.CannotReadOrWrite, check.ExitCode);
        Assert.Equal($"there is no shop.yaml in {folder.Path} or in a folder above it; go to the shop's folder, or begin one with: shopdays new NAME\n", check.Error);
    }

    [Fact]
    public void A_folder_in_the_place_of_a_file_is_said_in_a_line()
    {
        using var folder = new FreshFolder();
        Typed.Run("new", "chest", "--shop", folder.Path);
        File.Delete(folder.File("jobs", "chest.yaml"));
        Directory.CreateDirectory(folder.File("jobs", "chest.yaml"));
        var check = Typed.Run("check", folder.File("jobs", "chest.yaml"));
        Assert.Equal(ExitCode.CannotReadOrWrite, check.ExitCode);
        Assert.Single(check.Error.TrimEnd().Split('\n'));
    }

    private static FreshFolder ABrokenShop()
    {
        var folder = new FreshFolder();
        Directory.CreateDirectory(folder.File("jobs"));
        File.Copy(Path.Combine(BrokenFiles.Folder, "shop", "unknown-currency.yaml"), folder.File("shop.yaml"));
        File.Copy(Path.Combine(BrokenFiles.Folder, "rates", "unknown-words.yaml"), folder.File("rates.yaml"));
        File.Copy(Path.Combine(BrokenFiles.Folder, "job", "due-before-start.yaml"), folder.File("jobs", "box.yaml"));
        return folder;
    }
}
