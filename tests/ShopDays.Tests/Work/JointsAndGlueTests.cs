using NodaTime;
using ShopDays.Cli.Files;
using ShopDays.Measures;
using ShopDays.Parts;
using ShopDays.Work;
using Xunit;

namespace ShopDays.Tests.Work;

public sealed class JointsAndGlueTests
{
    private static Job Frame(string adhesive = "liquid hide glue", int joints = 4) => AJob.With(
        AJob.Part("stile", 30, 3, count: 2),
        AJob.Part("rail", 20, 3, count: 2)) with
    {
        Joints =
        [
            new Joint { Kind = "mortise and tenon", Parts = ["stile", "rail"], Count = joints },
            new Joint { Kind = "groove", Parts = ["stile", "rail"] },
            new Joint { Kind = "chamfer", Parts = ["stile"], Length = Length.FromFeet(5) },
        ],
        GlueUps = [new GlueUp { Name = "frame", Joins = ["stile", "rail"], Adhesive = adhesive, Clamps = [new ClampsHeld(Length.FromInches(24m), 2)] }],
    };

    [Fact]
    public void A_tenon_is_fitted_to_its_mortise()
    {
        var graph = Frame().Graph();
        var mortises = graph.Of("mortise");
        Assert.Equal(4, mortises.Quantity());
        Assert.All(mortises, mortise => Assert.Contains("stile", mortise.Parts));
        Assert.All(graph.Of("tenon"), tenon => Assert.Contains("rail", tenon.Parts));
        Assert.True(graph.Leads(mortises[^1].Id, graph.Of("tenon")[^1].Id));
        Assert.All(mortises, mortise => Assert.Contains(graph.Of("tenon"), tenon => graph.Leads(mortise.Id, tenon.Id)));
    }

    [Fact]
    public void A_groove_comes_before_the_mortises_and_shaping_after_all_joints()
    {
        var graph = Frame().Graph();
        var groove = Assert.Single(graph.Of("groove"));
        var chamfer = Assert.Single(graph.Of("taper or chamfer"));
        Assert.All(graph.Of("mortise"), mortise => Assert.True(graph.Leads(groove.Id, mortise.Id) && graph.Leads(mortise.Id, chamfer.Id)));
    }

    [Fact]
    public void A_groove_without_a_length_goes_the_length_of_its_parts()
    {
        // Nine digits leave room for the rounding of a few operations on doubles, and for nothing else; so below.
        Assert.Equal(2 * (30 + 20) / 12.0, Frame().Graph().Of("groove").Quantity(), 9);
    }

    [Fact]
    public void A_glue_up_is_dry_fitted_first_and_checked_for_square_in_its_session()
    {
        var graph = Frame().Graph();
        var dry = Assert.Single(graph.Of("dry fit"));
        var glue = Assert.Single(graph.Of("glue-up"));
        var square = Assert.Single(graph.Of("square and check assembly"));
        Assert.True(graph.Leads(dry.Id, glue.Id));
        Assert.Contains(graph.Precedences, one => one.Before == glue.Id && one.After == square.Id && one.SameSession);
        Assert.False(glue.IsSplittable);
    }

    [Fact]
    public void Clamps_stay_on_for_the_clamp_time_and_the_joint_is_left_alone_for_a_day()
    {
        var graph = Frame("PVA, yellow").Graph();
        var glue = Assert.Single(graph.Of("glue-up"));
        var clean = Assert.Single(graph.Of("clean up glue and flush joints"));
        var held = Assert.Single(graph.Precedences, one => one.Before == glue.Id && one.After == clean.Id).Wait;
        Assert.True(held is { HoldsClamps: true } && held.Duration == Duration.FromMinutes(45));
        Assert.Contains(graph.Precedences, one => one.After == clean.Id && one.Wait is { HoldsClamps: false } wait && wait.Duration == Duration.FromHours(24));
        Assert.Equal(new ClampsHeld(Length.FromInches(24m), 2), Assert.Single(glue.Clamps));
    }

    [Theory]
    [InlineData("PVA, yellow", 4, true)] // 8.8 min against 80 % of 10
    [InlineData("PVA, yellow", 3, false)] // 6.6 min
    [InlineData("liquid hide glue", 9, false)] // 19.8 min against 80 % of 25
    [InlineData("liquid hide glue", 10, true)]
    public void A_glue_up_that_outlasts_its_adhesive_is_remarked_on(string adhesive, int joints, bool remarked)
    {
        Assert.Equal(remarked, Frame(adhesive, joints).Remarks().Any(remark => remark.Kind == RemarkKind.OpenTime && remark.About == "frame"));
    }

    [Fact]
    public void The_check_for_square_follows_the_glue_at_once()
    {
        var graph = (Frame() with { Joints = [.. Frame().Joints, new Joint { Kind = "drawbore", Parts = ["stile", "rail"], Count = 4 }] }).Graph();
        var square = Assert.Single(graph.Of("square and check assembly"));
        Assert.Equal(Assert.Single(graph.Of("glue-up")).Id, Assert.Single(graph.Precedences, one => one.After == square.Id).Before);
    }

    [Fact]
    public void A_hopeless_glue_up_says_in_how_many_stages_it_would_work()
    {
        // 2.2 min a joint against 80 % of 3: one at a time.
        var hot = Assert.Single(Frame("hide glue, hot", 60).Remarks(), remark => remark.Kind == RemarkKind.OpenTime);
        Assert.Contains("60 stages of no more than 1", hot.Cure, StringComparison.Ordinal);
        Assert.EndsWith("2.4 min", hot.Text, StringComparison.Ordinal);
        // 80 % of 10 min is three joints, 6.6 min.
        var yellow = Assert.Single(Frame("PVA, yellow", 6).Remarks(), remark => remark.Kind == RemarkKind.OpenTime);
        Assert.Contains("2 stages", yellow.Cure, StringComparison.Ordinal);
        Assert.Contains("PVA, slow-set", yellow.Cure, StringComparison.Ordinal);
    }

    [Fact]
    public void A_second_pair_of_hands_closes_a_glue_up_in_time()
    {
        var two = AJob.Shop with { Workers = 2 };
        var job = Frame("PVA, yellow", 6);
        Assert.DoesNotContain(job.Remarks(two), remark => remark.Kind == RemarkKind.OpenTime);
        Assert.Equal(2, Assert.Single(job.Graph(two).Of("glue-up")).Crew);
    }

    [Fact]
    public void A_glue_up_takes_all_the_clamps_that_it_wants_also_those_that_the_shop_lacks()
    {
        var job = Frame() with { GlueUps = [Frame().GlueUps[0] with { Clamps = [new ClampsHeld(Length.FromInches(40m), 9)] }] };
        Assert.DoesNotContain(job.Remarks(), remark => remark.Kind == RemarkKind.Clamps);
        Assert.Equal(9, Assert.Single(job.Graph().Of("glue-up")).Clamps.Sum(clamps => clamps.Count));
    }

    [Fact]
    public void Of_a_shop_that_does_not_say_which_clamps_it_has_no_account_is_kept_and_that_is_remarked_on()
    {
        var silent = AJob.Shop with { Clamps = null };
        Assert.Contains(Frame().Remarks(silent), remark => remark.Kind == RemarkKind.Clamps && remark.About == "frame");
        Assert.Empty(Assert.Single(Frame().Graph(silent).Of("glue-up")).Clamps);
    }

    [Fact]
    public void A_glue_up_that_joins_another_comes_after_it_and_does_not_count_its_joints_again()
    {
        var job = Frame() with
        {
            Parts = [.. Frame().Parts, AJob.Part("top", 30, 6)],
            Joints = [.. Frame().Joints, new Joint { Kind = "dado", Parts = ["top", "stile"], Count = 2 }],
            GlueUps = [new GlueUp { Name = "table", Joins = ["frame", "top"], Adhesive = "liquid hide glue" }, Frame().GlueUps[0]],
        };
        var graph = job.Graph();
        var first = graph.Tasks.Single(task => task.Name == "clean up and flush the joints: frame");
        Assert.True(graph.Leads(first.Id, graph.Tasks.Single(task => task.Name == "glue up: table").Id));
        Assert.Equal(2, GlueUps.JointsIn(job, job.GlueUps[0], BuiltIn.Operations));
        Assert.Equal(4, GlueUps.JointsIn(job, job.GlueUps[1], BuiltIn.Operations));
    }

    [Fact]
    public void A_panel_is_shot_glued_left_to_rest_and_then_flattened_on_both_faces()
    {
        var graph = (AJob.With(AJob.Part("top", 40, 18) with { IsPanel = true }) with
        {
            Boards = AJob.Boards(3, 96, 9.5m, 1.25m),
            Allowances = new Allowances { Width = Length.FromInches(0.25m) },
        }).Graph();
        var glue = Assert.Single(graph.Of("edge-glue panel"));
        Assert.Equal(2 * 41 / 12.0, graph.Of("match and shoot a glue joint").Quantity(), 9);
        // One clamp to ten inches of the finished 40.
        Assert.Equal(4, glue.Clamps.Sum(clamps => clamps.Count));
        var flat = Assert.Single(graph.Of("flatten a glued panel"));
        Assert.Contains(graph.Precedences, one => one.Before == glue.Id && one.After == flat.Id && one.Wait is { HoldsClamps: true });
        Assert.Contains(graph.Precedences, one => one.Before == glue.Id && one.After == flat.Id && one.Wait is { HoldsClamps: false } wait && wait.Duration == Duration.FromDays(2));
        // 41 in by 18 1/4 in, both faces; a third of the width is rounded down to an eighth of a micrometre.
        Assert.Equal(2 * 41 * 18.25 / 144, graph.Of("flatten a glued panel").Quantity(), 4);
        Assert.True(graph.Leads(flat.Id, Assert.Single(graph.Of("square ends")).Id));
    }

    [Fact]
    public void Dovetails_go_corner_by_corner()
    {
        var corners = AJob.Chest().Graph().Of("dovetail, through");
        Assert.Equal(4, corners.Count);
        Assert.All(corners, corner => Assert.Equal((6.0, 1.0, 4), Figures(corner)));

        static (double Tails, double Setups, int Batch) Figures(ShopTask task) =>
            task.Timing is TaskTiming.ByOperation by ? (by.Quantity, by.Setups, by.Batch) : default;
    }

    [Fact]
    public void Peg_holes_are_bored_when_joints_fit_pegs_driven_after_the_check_for_square_and_hinges_let_in_before_the_finish()
    {
        var job = Frame() with
        {
            Joints = [.. Frame().Joints, new Joint { Kind = "drawbore", Parts = ["stile", "rail"], Count = 4 }, new Joint { Kind = "hinge", Parts = ["frame"], Count = 2 }],
            Finishes = [new FinishWork { Finish = "wax", On = ["frame"] }],
        };
        var graph = job.Graph();
        var pegs = Assert.Single(graph.Of("drive a peg"));
        var square = Assert.Single(graph.Of("square and check assembly"));
        var bored = Assert.Single(graph.Of("bore for peg, screw or bolt"));
        Assert.Contains(graph.Precedences, one => one.Before == square.Id && one.After == pegs.Id && one.SameSession);
        Assert.Equal(8, graph.Of("bore for peg, screw or bolt").Quantity());
        Assert.All(graph.Of("tenon"), tenon => Assert.True(graph.Leads(tenon.Id, bored.Id)));
        Assert.True(graph.Leads(bored.Id, Assert.Single(graph.Of("dry fit")).Id));
        Assert.True(graph.Leads(Assert.Single(graph.Of("let in a hinge")).Id, Assert.Single(graph.Of("smooth")).Id));
    }

    [Fact]
    public void Angled_ends_are_cut_after_the_dry_fit_and_mitred_ends_after_the_joints()
    {
        var job = Frame() with { Parts = [AJob.Part("stile", 30, 3, count: 2) with { Ends = PartEnds.Angled, EndAngle = 8 }, AJob.Part("rail", 20, 3, count: 2) with { Ends = PartEnds.Mitred }] };
        var graph = job.Graph();
        var angled = graph.Tasks.Single(task => task.Name == "cut the angled ends: stile");
        var mitred = graph.Tasks.Single(task => task.Name == "mitre the ends: rail");
        Assert.True(graph.Leads(Assert.Single(graph.Of("dry fit")).Id, angled.Id));
        Assert.All(graph.Of("tenon"), tenon => Assert.True(graph.Leads(tenon.Id, mitred.Id)));
    }

    [Fact]
    public void Every_operation_on_pieces_is_a_kind_of_joint_and_dovetails_need_their_tails()
    {
        var names = JointKinds.Names(BuiltIn.Operations);
        Assert.Contains("mortise and tenon", names);
        Assert.Contains("bridle joint", names);
        Assert.DoesNotContain("finish coat, wiped", names);
        Assert.All(names, name => Assert.True(JointKinds.TryFind(name, BuiltIn.Operations, out _)));
        Assert.True(JointKinds.TryFind("Dovetail", BuiltIn.Operations, out var dovetail));
        Assert.Equal([JointFigure.Tails], dovetail.Needs);
    }
}
