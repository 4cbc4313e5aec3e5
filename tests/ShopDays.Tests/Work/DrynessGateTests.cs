using NodaTime;
using ShopDays.Measures;
using ShopDays.Parts;
using ShopDays.Work;
using Xunit;

namespace ShopDays.Tests.Work;

public sealed class DrynessGateTests
{
    private static readonly YearAir Barn = new(new(Temperature.FromCelsius(12), Percent.FromPercent(65)), new Dictionary<int, Climate>());

    [Fact]
    public void No_piece_of_a_wet_board_is_planed_before_the_board_is_ready_and_sawing_need_not_wait()
    {
        var job = Shelf(18);
        var graph = job.Graph();
        var wait = Assert.Single(graph.Awaited);

        Assert.Equal(Duration.FromDays(Period.DaysBetween(wait.Decision.Asked!.Value, ReadyFrom(job))), wait.Wait.Likely);
        Assert.True(wait.Wait.Low < wait.Wait.Likely && wait.Wait.Likely < wait.Wait.High);
        Assert.Equal(graph.Tasks.Where(task => task.Name.StartsWith("flatten", StringComparison.Ordinal)).Select(task => task.Id).First(), wait.Holds[0]);
        Assert.All(wait.Holds, id => Assert.Equal(Stage.Dimensioning, graph.Tasks[id].Stage));
        Assert.DoesNotContain(graph.Tasks, task => task.Stage == Stage.Sawing && wait.Holds.Contains(task.Id));
    }

    [Fact]
    public void A_ready_board_holds_nothing_back() => Assert.Empty(Shelf(12).Graph().Awaited);

    [Fact]
    public void Pieces_of_dry_boards_do_not_wait_for_those_of_wet_ones()
    {
        var job = Shelf(12);
        job = job with { Boards = [.. job.Boards.Select((board, place) => place < 2 ? board with { Drying = Read(18) } : board)], Parts = [AJob.Part("shelf", 90, 11, count: 4)] };
        var graph = job.Graph();

        var held = Assert.Single(graph.Awaited).Holds;
        Assert.Contains(graph.Tasks, task => task.Name.StartsWith("flatten face one", StringComparison.Ordinal) && held.Contains(task.Id));
        Assert.Contains(graph.Tasks, task => task.Name.StartsWith("flatten face one", StringComparison.Ordinal) && !held.Contains(task.Id));
    }

    [Fact]
    public void It_is_said_which_boards_are_too_wet_and_from_when_their_pieces_are_planed()
    {
        var job = Shelf(18);
        var said = Assert.Single(job.Remarks(), one => one.Kind == RemarkKind.Dryness);

        Assert.Contains(ReadyFrom(job).ToString("d MMM uuuu", System.Globalization.CultureInfo.InvariantCulture), said.Text, StringComparison.Ordinal);
        Assert.Contains("A1", said.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_boards_that_nobody_measured_it_is_said_that_they_should_be_before_the_start()
    {
        var job = Shelf(12);
        job = job with { Boards = [.. job.Boards.Select(board => board with { Drying = Drying.Unknown })] };

        Assert.Empty(job.Graph().Awaited);
        Assert.Contains("1 Mar 2027", Assert.Single(job.Remarks(), one => one.Kind == RemarkKind.Dryness).Cure, StringComparison.Ordinal);
    }

    [Fact]
    public void Timber_that_is_at_rest_in_its_air_rests_shorter_between_saw_and_plane()
    {
        Assert.Equal(Duration.FromDays(2), RestOf(Shelf(12)));
        Assert.Equal(Duration.FromDays(5), RestOf(Shelf(13.7)));
        Assert.Equal(Duration.FromDays(5), RestOf(Shelf(12) with { Air = null }));

        static Duration RestOf(Job job) => job.Graph().Precedences.Select(one => one.Wait).First(wait => wait is { } rest && rest.Reason.StartsWith("at rest", StringComparison.Ordinal))!.Duration;
    }

    [Fact]
    public void Air_that_keeps_timber_far_above_the_room_it_will_stand_in_is_spoken_of()
    {
        var damp = Shelf(15) with { Air = new(new(Temperature.FromCelsius(10), Percent.FromPercent(84)), new Dictionary<int, Climate>()) };

        Assert.Contains(damp.Remarks(), one => one.Kind == RemarkKind.Dryness && one.Text.StartsWith("the shop's air brings", StringComparison.Ordinal));
        Assert.DoesNotContain((damp with { Home = new(MoistureContent.FromPercent(12), MoistureContent.FromPercent(18)) }).Remarks(), one => one.Kind == RemarkKind.Dryness);
    }

    private static Job Shelf(double percent)
    {
        var job = AJob.With(AJob.Part("shelf", 90, 11, count: 2));
        return job with { Air = Barn, Home = new(MoistureContent.FromPercent(9), MoistureContent.FromPercent(13)), Boards = [.. job.Boards.Select(board => board with { Drying = Read(percent) })] };
    }

    private static Drying Read(double percent) => new() { Readings = [new(new(2027, 2, 20), MoistureContent.FromPercent(percent))] };

    private static LocalDate ReadyFrom(Job job) => Dryness.Of(job.Boards[0], job.Air, job.Start, ShopDays.Cli.Files.BuiltIn.Waits).Likely!.Value;
}
