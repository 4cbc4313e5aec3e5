using ShopDays.Cli.Tests.Commands;
using Xunit;

namespace ShopDays.Cli.Tests.Running;

/// <summary>Times that a clock shows twice when it is put back, in the files of a shop and a job.</summary>
public sealed class DoubledTimesTests
{
    private static readonly string Shop = ATrayShop.Shop.Replace("  thursday:", "  sunday: [\"01:30-03:00\"]\n  thursday:", StringComparison.Ordinal)
        + "extra: {2027-10-30: [\"09:00-12:00\"]}\nappointments: [{appointment: the mail, on: 2027-10-31, at: \"01:10-02:30\"}]\n";

    [Fact]
    public async Task Check_says_which_of_the_two_is_meant()
    {
        using var folder = new FreshFolder().WithShop(Shop).WithJob("tray", ATrayShop.Job);
        var said = string.Join(' ', (await Ran.In(folder.Path, "check", "tray")).WentWell().Out.Split((char[])[' ', '\n', '\r'], StringSplitOptions.RemoveEmptyEntries));
        Assert.Contains("01:10 comes twice on 2027-10-31, when the clock is put back; the first is meant", said, StringComparison.Ordinal);
        Assert.Contains("Sunday 01:30-03:00, on 31 Oct 2027: the clock is put back, and 01:30 comes twice: they begin with the first", said, StringComparison.Ordinal);
        Assert.DoesNotContain("02:30 comes twice", said, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Where_no_time_comes_twice_nothing_is_said()
    {
        using var folder = new FreshFolder().WithATray();
        Assert.DoesNotContain("comes twice", (await Ran.In(folder.Path, "check", "tray")).WentWell().Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_long_mistake_stands_in_one_line_where_a_program_reads_it()
    {
        using var folder = new FreshFolder().WithShop(ATrayShop.Shop + "papper: a4\n").WithJob("tray", ATrayShop.Job);
        var ran = await Ran.In(folder.Path, "plan", "tray");
        var lines = ran.Error.ReplaceLineEndings("\n").TrimEnd('\n').Split('\n');
        Assert.Matches("^shop\\.yaml:13:1: .*; nearest: paper$", lines[0]);
    }
}
