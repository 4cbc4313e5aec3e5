using NodaTime;
using ShopDays.Cli.Files;
using ShopDays.Measures;
using ShopDays.Parts;
using ShopDays.Work;
using Xunit;

namespace ShopDays.Tests.Work;

public sealed class OrderOfWorkTests
{
    [Fact]
    public void A_chest_of_twenty_pieces_makes_a_number_of_tasks_that_a_maker_can_survey()
    {
        var graph = AJob.Chest().Graph();
        Assert.InRange(graph.Tasks.Count, 80, 170);
        Assert.Equal(graph.Tasks.Count, graph.Tasks.Select(task => task.Name).Distinct().Count());
    }

    [Fact]
    public void The_feet_that_are_ripped_and_the_inches_that_are_crosscut_are_those_of_the_layout()
    {
        var job = AJob.Chest();
        var layout = HandLayout.Of(job);
        var graph = job.Graph();
        // Sums of some hundred terms in double: far below a thousandth.
        Assert.Equal(layout.RipLength.Feet, graph.Of("rip").Quantity() + graph.Of("straighten a live edge").Quantity(), 6);
        Assert.Equal(layout.CrosscutLength.Inches, graph.Of("crosscut").Quantity(), 6);
    }

    [Fact]
    public void Every_face_of_rough_stock_is_planed_once_on_each_side()
    {
        var job = AJob.Chest();
        var faces = HandLayout.Of(job).Boards.SelectMany(board => board.Blanks).Sum(blank => blank.Region.Area.SquareFeet);
        var graph = job.Graph();
        Assert.Equal(faces, graph.Of("flatten face one").Quantity(), 6);
        Assert.Equal(faces, graph.Of("gauge and thickness face two").Quantity(), 6);
    }

    [Fact]
    public void Every_precedence_says_why()
    {
        Assert.All(AJob.Chest().Graph().Precedences, one => Assert.True(one.Reason.Length > 10));
    }

    [Fact]
    public void Every_task_on_a_part_leads_to_the_last_coat()
    {
        var graph = AJob.Chest().Graph();
        var end = Assert.Single(graph.ClosingWaits).After;
        Assert.All(
            graph.Tasks.Where(task => task.Parts.Count > 0 && task.Stage < Stage.Finish && !task.Parts.Contains("batten")),
            task => Assert.True(graph.Leads(task.Id, end), task.Name));
    }

    [Fact]
    public void No_saw_moves_before_all_parts_are_chalked_out()
    {
        var graph = AJob.Chest().Graph();
        var chalked = graph.Of("choose and chalk out parts on boards");
        Assert.NotEmpty(chalked);
        Assert.All(graph.Of("crosscut"), cut => Assert.All(chalked, chalk => Assert.True(graph.Leads(chalk.Id, cut.Id))));
    }

    [Fact]
    public void The_true_face_comes_first_then_edge_second_face_width_and_ends()
    {
        var graph = AJob.With(AJob.Part("rail", 30, 3)).Graph();
        string[] order = ["flatten face one", "joint the edge", "gauge and thickness face two", "plane to width", "mark out a part with knife and gauge", "square ends"];
        var ids = order.Select(operation => Assert.Single(graph.Of(operation)).Id).ToList();
        Assert.All(ids.Zip(ids.Skip(1)), pair => Assert.True(graph.Leads(pair.First, pair.Second)));
    }

    [Fact]
    public void A_long_part_rests_between_the_saw_and_the_plane_and_a_short_one_does_not()
    {
        var job = AJob.With(AJob.Part("stretcher", 60, 3), AJob.Part("peg", 10, 2));
        var read = (job with { Boards = Read(job.Boards, 14) }).Graph();
        Assert.Equal(Duration.FromDays(5), RestBefore(read, "stretcher")?.Duration);
        Assert.Null(RestBefore(read, "peg"));

        // Of timber of which nothing is known also a short one: nobody can say that it has little tension left.
        Assert.Equal(Duration.FromDays(5), RestBefore(job.Graph(), "peg")?.Duration);
        var stacked = job with { Boards = [.. job.Boards.Select(board => board with { Drying = new() { Since = new(2024, 3, 1) } })] };
        Assert.Null(RestBefore(stacked.Graph(), "peg"));

        static Wait? RestBefore(TaskGraph graph, string part)
        {
            var task = graph.Of("flatten face one").Single(one => one.Parts.Contains(part));
            return graph.Precedences.Where(one => one.After == task.Id).Select(one => one.Wait).FirstOrDefault(wait => wait is not null);
        }
    }

    [Fact]
    public void Planed_stock_of_the_right_thickness_is_not_planed_again()
    {
        var job = AJob.With(AJob.Part("shelf", 30, 5)) with { Boards = AJob.Boards(1, 96, 12, 0.875m, BoardFaces.Planed) };
        var graph = job.Graph();
        Assert.Empty(graph.Of("flatten face one"));
        Assert.Empty(graph.Of("gauge and thickness face two"));
        Assert.Single(graph.Of("joint the edge"));
    }

    [Fact]
    public void What_comes_off_both_faces_is_what_the_board_has_more_than_the_part()
    {
        var graph = AJob.With(AJob.Part("rail", 30, 3, thickness: 0.875m)).Graph();
        var one = Depth("flatten face one");
        var two = Depth("gauge and thickness face two");
        // Rough faces lose 1/8 in together, so the first loses 1/16; the board is 1 1/4 in. Exact in eighths of a micrometre.
        Assert.Equal(0.0625, one, 9);
        Assert.Equal(1.25 - 0.875 - 0.0625, two, 9);

        double Depth(string operation) => ((TaskTiming.ByOperation)Assert.Single(graph.Of(operation)).Timing).Covariates[Covariate.Depth];
    }

    [Fact]
    public void A_piece_longer_than_one_pass_gets_a_move_for_each_pass_after_the_first()
    {
        var long10 = AJob.With(AJob.Part("beam", 120, 4)) with { Boards = AJob.Boards(2, 144, 12, 1.25m) };
        var reach = AJob.Shop with { LongestPass = Length.FromInches(48m) };
        // 121 in with its allowance: (121 - 48) / (48 - 12) = 2.03, so three moves for each of two faces and two edges.
        var graph = long10.Graph(reach);
        string[] moved = ["flatten face one", "joint the edge", "gauge and thickness face two", "plane to width"];
        var move = BuiltIn.Operations["turn or move a long piece"].Methods[0];
        var three = 3 * move.MinutesPerUnit * (1 + move.Rest);
        Assert.All(moved, operation => Assert.All(graph.Of(operation), task => Assert.Contains("4 passes, 3 moves", task.Note, StringComparison.Ordinal)));
        Assert.All(graph.Of("joint the edge"), task => Assert.Equal(three, ((TaskTiming.ByOperation)task.Timing).Besides.Minutes, 9));
        Assert.All(graph.Of("flatten face one"), task => Assert.Equal(1.1, ((TaskTiming.ByOperation)task.Timing).Factor));
        Assert.All(AJob.With(AJob.Part("rail", 30, 3)).Graph().Of("joint the edge"), task => Assert.Equal(WorkTime.Zero, ((TaskTiming.ByOperation)task.Timing).Besides));
    }

    [Fact]
    public void Moves_are_part_of_the_work_that_they_interrupt_and_those_for_two_are_remarked_on()
    {
        var job = AJob.With(AJob.Part("beam", 140, 10, 3)) with { Boards = AJob.Boards(1, 168, 16, 4) };
        var graph = job.Graph();
        Assert.Empty(graph.Of("turn or move a long piece"));
        Assert.All(graph.Of("rip"), rip => Assert.Contains("1 move", rip.Note, StringComparison.Ordinal));
        Assert.Contains(job.Remarks(), remark => remark.Kind == RemarkKind.Lift && remark.About == "A1" && remark.Text.Contains("between passes", StringComparison.Ordinal));
        Assert.All(graph.Of("rip"), rip => Assert.Contains("working alone", rip.Cautions));
    }

    [Fact]
    public void What_two_have_to_turn_is_turned_by_two_once_for_all_cuts_that_can_be_reached_and_sawn_and_planed_by_one()
    {
        var job = AJob.With(AJob.Part("beam", 140, 10, 3, count: 1)) with { Boards = AJob.Boards(1, 168, 16, 4) };
        var (alone, two) = (job.Graph(), job.Graph(AJob.Shop with { Workers = 2 }));
        foreach (var operation in (string[])["rip", "flatten face one", "joint the edge", "gauge and thickness face two", "plane to width"])
        {
            var passes = two.Of(operation);
            Assert.Equal(2, passes.Count);
            Assert.All(passes, pass => Assert.Equal((1, WorkTime.Zero), (pass.Crew, ((TaskTiming.ByOperation)pass.Timing).Besides - (pass.Honed?.Time ?? WorkTime.Zero))));
            Assert.Equal(alone.Of(operation).Quantity(), passes.Quantity(), 9);
            Assert.Equal(Assert.Single(alone.Of(operation)).Name, passes[1].Name);
            var turn = Assert.Single(two.Of("turn or move a long piece"), turn => turn.Name == "turn for pass 2: " + passes[1].Name);
            Assert.Equal((2, 1), (turn.Crew, ((TaskTiming.ByOperation)turn.Timing).Quantity));
            Assert.True(two.Leads(passes[0].Id, turn.Id) && two.Leads(turn.Id, passes[1].Id));
        }

        Assert.Contains(job.Remarks(AJob.Shop with { Workers = 2 }), remark => remark.About == "A1" && remark.Cure.StartsWith("the plan has two for each turn", StringComparison.Ordinal));
    }

    [Fact]
    public void Well_seasoned_and_planed_stock_needs_no_rest_for_sticks_up_to_four_feet()
    {
        var job = AJob.With(AJob.Part("stick", 42, 1.5m));
        Assert.True(Rests(job));
        Assert.False(Rests(job with { Boards = Read(job.Boards, 12) }));
        Assert.True(Rests(job with { Boards = Read(job.Boards, 13) }));
        // A dry air says what timber comes to in it, not that this timber has.
        Assert.True(Rests(job with { Boards = [.. job.Boards.Select(board => board with { Moisture = MoistureContent.FromPercent(11) })] }));
        Assert.False(Rests(job with { Boards = AJob.Boards(2, 96, 12, 1.25m, BoardFaces.Planed) }));

        static bool Rests(Job job) => job.Graph().Precedences.Any(one => one.Wait is not null);
    }

    [Fact]
    public void Mahogany_and_its_kin_keep_their_papers_with_them_and_oak_does_not()
    {
        // CITES, Appendix II: Swietenia, Cedrela and Khaya (from memory).
        Assert.All(["mahogany (true)", "Spanish-cedar", "African mahogany"], name => Assert.True(BuiltIn.Species.TryFind(name, out var species) && ProtectedTimber.Holds(species)));
        Assert.False(ProtectedTimber.Holds(AJob.Oak));
        Assert.True(BuiltIn.Species.TryFind("mahogany (true)", out var mahogany));
        var job = AJob.With(AJob.Part("rail", 30, 3, species: mahogany));
        job = job with { Boards = [.. job.Boards.Select(board => board with { Species = mahogany })] };
        Assert.Contains("protected timber", Assert.Single(job.Graph().Of("fetch and stack boards")).Cautions);
        Assert.DoesNotContain("protected timber", Assert.Single(AJob.With(AJob.Part("rail", 30, 3)).Graph().Of("fetch and stack boards")).Cautions);
    }

    [Fact]
    public void Machines_and_heavy_lifts_are_cautioned_about_where_one_works_alone()
    {
        var job = AJob.With(AJob.Part("rail", 30, 3)) with { Methods = new Dictionary<string, string> { ["rip"] = "band saw" } };
        Assert.All(job.Graph().Of("rip"), rip => Assert.True(rip.Cautions.Contains("working alone") && rip.Cautions.Contains("electricity")));
        Assert.All(job.Graph(AJob.Shop with { Workers = 2 }).Of("rip"), rip => Assert.DoesNotContain("working alone", rip.Cautions));
    }

    [Fact]
    public void Runs_of_like_pieces_follow_each_other()
    {
        var runs = AJob.With(AJob.Part("slat", 36, 3, count: 16)).Graph(session: WorkTime.FromMinutes(60));
        var faces = runs.Of("gauge and thickness face two");
        Assert.True(faces.Count > 1);
        Assert.All(faces.Zip(faces.Skip(1)), pair => Assert.Contains(runs.Precedences, one => one.Before == pair.First.Id && one.After == pair.Second.Id));
    }

    [Fact]
    public void A_part_that_nothing_is_done_with_is_remarked_on()
    {
        var remarks = AJob.Chest().Remarks().Where(remark => remark.Kind == RemarkKind.LooseEnd).Select(remark => remark.About);
        Assert.Equal(["batten"], remarks);
    }

    [Fact]
    public void Wild_grain_slows_the_plane_and_not_the_saw()
    {
        var job = AJob.With(AJob.Part("rail", 30, 3));
        job = job with { Boards = [job.Boards[0] with { Grain = BoardGrain.Interlocked }] };
        var graph = job.Graph();
        Assert.Equal(1.4, Factor("flatten face one"));
        Assert.Equal(1, Factor("rip"));

        double Factor(string operation) => ((TaskTiming.ByOperation)Assert.Single(graph.Of(operation)).Timing).Factor;
    }

    [Fact]
    public void A_method_that_the_job_chooses_is_the_method_of_its_tasks()
    {
        var job = AJob.With(AJob.Part("rail", 30, 3)) with { Methods = new Dictionary<string, string> { ["rip"] = "band saw" } };
        var rip = Assert.Single(job.Graph().Of("rip"));
        Assert.Equal("band saw", ((TaskTiming.ByOperation)rip.Timing).Method.Name);
        Assert.True(rip.IsNoisy);
        Assert.Contains("machines", rip.Cautions);
    }

    [Fact]
    public void Heavy_boards_take_two_people_where_there_are_two_and_a_remark_in_any_case()
    {
        var job = AJob.With(AJob.Part("top", 100, 12, 1.75m)) with { Boards = AJob.Boards(1, 120, 16, 2) };
        var alone = job.Graph().Of("fetch and stack boards").Single();
        Assert.Equal(1, alone.Crew);
        Assert.Contains("helper", alone.Note, StringComparison.Ordinal);
        Assert.Contains("heavy lifts", alone.Cautions);
        Assert.Equal(2, job.Graph(AJob.Shop with { Workers = 2 }).Of("fetch and stack boards").Single().Crew);
        Assert.Contains(job.Remarks(), remark => remark.Kind == RemarkKind.Lift && remark.About == "A1" && remark.Weight > AJob.Shop.LiftAlone);
    }

    [Fact]
    public void A_board_for_two_is_lifted_to_the_saw_by_two_and_sawn_by_one()
    {
        var job = AJob.With(AJob.Part("top", 100, 12, 1.75m)) with { Boards = AJob.Boards(1, 120, 16, 2) };
        var graph = job.Graph(AJob.Shop with { Workers = 2 });
        var lift = Assert.Single(graph.Of("lift a board onto the trestles"));
        Assert.Equal((2, "A1", WorkClass.Heavy), (lift.Crew, lift.Board, lift.WorkClass));
        var lifted = new HashSet<int> { lift.Id };
        foreach (var one in graph.Precedences.OrderBy(one => one.After))
        {
            lifted.UnionWith(lifted.Contains(one.Before) ? [one.After] : []);
        }

        var sawn = graph.Tasks.Where(task => task.Board == "A1" && task.Id != lift.Id).ToList();
        Assert.NotEmpty(sawn);
        Assert.All(sawn, task => Assert.True(task.Crew == (task.Name.StartsWith("turn ", StringComparison.Ordinal) ? 2 : 1) && lifted.Contains(task.Id)));
        Assert.Empty(job.Graph().Of("lift a board onto the trestles"));
        Assert.Empty(AJob.With(AJob.Part("rail", 30, 3)).Graph(AJob.Shop with { Workers = 2 }).Of("lift a board onto the trestles"));
    }

    [Fact]
    public void Identical_pieces_are_done_in_runs_and_all_runs_know_the_whole_batch()
    {
        var graph = AJob.With(AJob.Part("slat", 36, 3, count: 16)).Graph(session: WorkTime.FromMinutes(60));
        var runs = graph.Of("gauge and thickness face two");
        Assert.True(runs.Count > 1);
        Assert.Equal(16, runs.Sum(task => ((TaskTiming.ByOperation)task.Timing).Run));
        Assert.All(runs, task => Assert.Equal(16, ((TaskTiming.ByOperation)task.Timing).Batch));
    }

    private static IReadOnlyList<Board> Read(IReadOnlyList<Board> boards, double percent) =>
    [
        .. boards.Select(board => board with
        {
            Moisture = MoistureContent.FromPercent(percent),
            Drying = new() { Readings = [new(new(2027, 2, 20), MoistureContent.FromPercent(percent))] },
        }),
    ];
}
