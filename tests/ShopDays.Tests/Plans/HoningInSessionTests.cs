using ShopDays.Cli.Files;
using ShopDays.Measures;
using ShopDays.Plans;
using ShopDays.Work;
using Xunit;

namespace ShopDays.Tests.Plans;

public sealed class HoningInSessionTests
{
    private static readonly Operation Mortise = BuiltIn.Operations["mortise"];
    private static readonly CuttingEdge Chisel = Mortise.Methods[0].Edge!;

    [Fact]
    public void An_edge_that_was_honed_for_the_task_before_is_honed_again_only_when_it_is_dull() =>
        Assert.Equal(
            ["hone the mortise chisel first", "the mortise chisel is honed already: again only when it is dull"],
            Said(Chopping("one", 4, hones: 1), Chopping("two", 4, hones: 1)));

    [Fact]
    public void An_edge_whose_minutes_are_used_up_by_then_is_honed_first() =>
        Assert.Equal(
            ["hone the mortise chisel first", "", "hone the mortise chisel first"],
            Said(Chopping("one", 4, hones: 1), Chopping("two", 5, hones: 0), Chopping("three", 4, hones: 1)));

    [Fact]
    public void Work_with_another_edge_between_changes_nothing() =>
        Assert.Equal(
            ["hone the mortise chisel first", "hone 2 chisels first", "the mortise chisel is honed already: again only when it is dull"],
            Said(Chopping("one", 3, hones: 1), Chopping("tenon", 3, hones: 1, "tenon") with { Honed = new("chisels", 2, 1, WorkTime.FromMinutes(12)) }, Chopping("two", 3, hones: 1)));

    [Fact]
    public void What_goes_on_in_another_session_is_not_honed_first_again()
    {
        var first = Chopping("one", 12, hones: 2);
        Assert.Equal(["hone the mortise chisel when dull"], Session([Work(first) with { IsFirstPiece = false }]).Select(work => work.Honing));
        Assert.Equal([""], Session([Work(first with { Honed = first.Honed! with { Times = 1 } }) with { IsFirstPiece = false }]).Select(work => work.Honing));
    }

    [Fact]
    public void A_saw_that_was_just_touched_up_for_one_job_is_touched_up_for_the_next_only_when_it_is_dull()
    {
        const string Sharp = "the rip saw is sharp already: again only when it is dull";
        Assert.Equal(["", Sharp], Said(TouchUp("one"), TouchUp("two")));
        Assert.Equal(["", "", Sharp], Said(TouchUp("one"), Ripping(60), TouchUp("two")));
        Assert.Equal(["", "", ""], Said(TouchUp("one"), Ripping(160), TouchUp("two")));
    }

    [Fact]
    public void A_plan_says_it_in_its_sessions()
    {
        var job = new AJob().Task("one", 60, task => Chopping(task, 3)).Task("two", 60, task => Chopping(task, 3)).Then("one", "two").Worker("08:00-12:00");
        Assert.Equal(["hone the mortise chisel first", "the mortise chisel is honed already: again only when it is dull"], job.Plan().Sessions.SelectMany(session => session.Work).Select(work => work.Honing));
    }

    private static IEnumerable<string> Said(params ShopTask[] tasks) => Session([.. tasks.Select(Work)]).Select(work => work.Honing);

    private static IReadOnlyList<PlannedWork> Session(IReadOnlyList<PlannedWork> session) =>
        HoningInSession.In(session, [.. session.Select(_ => 1.0)]);

    private static PlannedWork Work(ShopTask task) => new()
    {
        Order = "stool",
        Task = task,
        Worker = "maker",
        Start = default,
        End = default,
        HandsOn = WorkTime.FromMinutes(60),
        Changeover = WorkTime.Zero,
        IsFirstPiece = true,
        IsLastPiece = true,
    };

    private static ShopTask TouchUp(string name) => Chopping(name, 1, hones: 0, "file and set a saw") with { Sharpens = BuiltIn.Operations["rip"].Methods[0].Edge };

    private static ShopTask Ripping(double minutes) => Chopping("rip", minutes / BuiltIn.Operations["rip"].Methods[0].MinutesPerUnit, hones: 0, "rip");

    // As many mortises of 18 min as are said: the chisel lasts 145.
    private static ShopTask Chopping(string name, double count, int hones, string operation = "mortise") => new()
    {
        Id = 0,
        Name = name,
        Stage = Stage.Joinery,
        Timing = Timing(operation, count),
        WorkClass = WorkClass.Medium,
        Honed = hones == 0 ? null : new(Chisel.Name, 1, hones, WorkTime.FromMinutes(10)),
    };

    private static ShopTask Chopping(ShopTask task, double count) => task with { Timing = Timing("mortise", count), Honed = new(Chisel.Name, 1, 1, WorkTime.FromMinutes(10)) };

    private static TaskTiming.ByOperation Timing(string operation, double count) =>
        new() { Operation = BuiltIn.Operations[operation], Method = BuiltIn.Operations[operation].Methods[0], Quantity = count, Setups = count };
}
