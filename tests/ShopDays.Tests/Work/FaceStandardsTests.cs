using CsCheck;
using ShopDays.Cli.Files;
using ShopDays.Measures;
using ShopDays.Parts;
using ShopDays.Times;
using ShopDays.Work;
using Xunit;

namespace ShopDays.Tests.Work;

public sealed class FaceStandardsTests
{
    private const string FaceOne = "flatten face one";
    private const string FaceTwo = "gauge and thickness face two";
    private const string Scrub = "scrub a face";
    private const string Jack = "jack a face";
    private const string Flatten = "flatten a glued panel";

    // 36 x 8 in with the blank's inch and eighth.
    private const double BlankArea = 37 * 8.125 / 144;

    private static readonly RateModel Rates = RateModel.FromPrior(BuiltIn.Operations);

    [Theory]
    [InlineData(SurfaceStandard.Scrub, Scrub, "scrub face two: rail")]
    [InlineData(SurfaceStandard.Jack, Jack, "jack face two: rail")]
    [InlineData(SurfaceStandard.Tried, FaceTwo, FaceTwo + ": rail")]
    [InlineData(SurfaceStandard.Smoothed, FaceTwo, FaceTwo + ": rail")]
    public void The_second_face_is_planed_as_far_as_is_written(SurfaceStandard standard, string operation, string task)
    {
        var graph = AJob.With(Rail((PartSurface.Inside, standard))).Graph();
        string[] others = [.. new[] { Scrub, Jack, FaceTwo }.Except([operation])];
        Assert.Equal(task, Assert.Single(graph.Of(operation)).Name);
        Assert.Equal(BlankArea, graph.Of(operation).Quantity(), 9);
        Assert.All(others, other => Assert.Empty(graph.Of(other)));
        Assert.Single(graph.Of(FaceOne));
    }

    [Fact]
    public void A_face_that_stays_from_the_saw_is_not_planed_and_what_would_come_off_it_stays_on()
    {
        var graph = AJob.With(Rail((PartSurface.Under, SurfaceStandard.Rough))).Graph();
        Assert.Empty(graph.Of(FaceTwo));
        Assert.StartsWith("the other face stays from the saw", Assert.Single(graph.Of(FaceOne)).Note, StringComparison.Ordinal);
        Assert.Equal(Depth(AJob.With(Rail()).Graph(), FaceOne), Depth(graph, FaceOne));

        static double Depth(TaskGraph graph, string operation) => ((TaskTiming.ByOperation)Assert.Single(graph.Of(operation)).Timing).Covariates[Covariate.Depth];
    }

    [Fact]
    public void A_piece_too_thick_to_stay_from_the_saw_is_scrubbed_near_its_thickness()
    {
        var job = AJob.With(Rail((PartSurface.Under, SurfaceStandard.Rough))) with { Boards = AJob.Boards(2, 96, 12, 2) };
        var scrubbed = Assert.Single(job.Graph().Of(Scrub));
        Assert.Contains("too thick to stay from the saw", scrubbed.Note, StringComparison.Ordinal);
        // 2 in from the saw, 1/16 off the first face, 7/8 in wanted.
        Assert.Equal(2 - 0.0625 - 0.875, ((TaskTiming.ByOperation)scrubbed.Timing).Covariates[Covariate.Depth], 6);
    }

    [Fact]
    public void Where_both_names_of_the_second_face_are_written_the_finer_holds()
    {
        var graph = AJob.With(Rail((PartSurface.Inside, SurfaceStandard.Jack), (PartSurface.Under, SurfaceStandard.Rough))).Graph();
        Assert.Single(graph.Of(Jack));
    }

    [Fact]
    public void A_part_without_joints_may_keep_faces_and_edges_from_the_saw()
    {
        var graph = AJob.With(Rail((PartSurface.Face, SurfaceStandard.Rough), (PartSurface.Under, SurfaceStandard.Rough), (PartSurface.Edge, SurfaceStandard.Rough))).Graph();
        string[] planing = [FaceOne, FaceTwo, Scrub, Jack, "joint the edge", "plane to width"];
        Assert.All(planing, operation => Assert.Empty(graph.Of(operation)));
        Assert.Single(graph.Of("square ends"));
    }

    [Fact]
    public void A_joint_has_its_true_face_and_edge_whatever_is_written()
    {
        var job = AJob.With(Rail((PartSurface.Face, SurfaceStandard.Rough), (PartSurface.Edge, SurfaceStandard.Rough), (PartSurface.Inside, SurfaceStandard.Rough)), AJob.Part("post", 30, 3)) with
        {
            Joints = [new Joint { Kind = "mortise and tenon", Parts = ["post", "rail"], Count = 2 }],
        };
        var graph = job.Graph();
        Assert.Equal(2, graph.Of(FaceOne).Count);
        Assert.Equal(2, graph.Of("joint the edge").Count);
        Assert.Single(graph.Of(FaceTwo));
        Assert.Empty(graph.Of(Scrub));
    }

    [Theory]
    [InlineData("dovetail", SurfaceStandard.Jack)]
    [InlineData("dovetail, half-blind", SurfaceStandard.Jack)]
    [InlineData("bridle", SurfaceStandard.Jack)]
    [InlineData("mortise and tenon", SurfaceStandard.Rough)]
    [InlineData("groove", SurfaceStandard.Rough)]
    public void Joints_that_need_an_even_thickness_have_the_second_face_jacked_at_least(string kind, SurfaceStandard least)
    {
        var job = AJob.With(Rail(), AJob.Part("post", 30, 3)) with { Joints = [new Joint { Kind = kind, Parts = ["rail", "post"], Tails = 3 }] };
        Assert.Equal(least, FaceNeeds.Of(job, job.Parts[0], PartSurface.Inside, BuiltIn.Operations).Least);
        Assert.Equal(SurfaceStandard.Tried, FaceNeeds.Of(job, job.Parts[0], PartSurface.Face, BuiltIn.Operations).Least);
    }

    [Fact]
    public void A_hole_for_a_screw_needs_no_true_face()
    {
        var job = AJob.With(Rail()) with { Joints = [new Joint { Kind = "bore", Parts = ["rail"] }] };
        Assert.Equal(SurfaceStandard.Rough, FaceNeeds.Of(job, job.Parts[0], PartSurface.Face, BuiltIn.Operations).Least);
    }

    [Theory]
    [InlineData(null, 2, 0)]
    [InlineData(SurfaceStandard.Jack, 1, 1)]
    [InlineData(SurfaceStandard.Scrub, 1, 0)]
    [InlineData(SurfaceStandard.Rough, 1, 0)]
    public void The_underside_of_a_glued_panel_is_flattened_jacked_or_left(SurfaceStandard? under, int flattened, int jacked)
    {
        var top = AJob.Part("top", 40, 18) with { IsPanel = true, Surfaces = Written(under is { } standard ? [(PartSurface.Under, standard)] : []) };
        var graph = (AJob.With(top) with { Boards = AJob.Boards(3, 96, 9.5m, 1.25m), Allowances = new Allowances { Width = Length.FromInches(0.25m) } }).Graph();
        var face = 41 * 18.25 / 144;
        Assert.Equal(flattened * face, graph.Of(Flatten).Quantity(), 4);
        List<ShopTask> other = [.. graph.Of(Jack).Where(task => task.Name == "jack the other face: top")];
        Assert.Equal(jacked * face, other.Quantity(), 4);
        Assert.All(other, task => Assert.True(graph.Leads(Assert.Single(graph.Of(Flatten)).Id, task.Id) && graph.Leads(task.Id, Assert.Single(graph.Of("square ends")).Id)));
    }

    [Fact]
    public void A_machine_takes_a_face_all_the_way_so_that_nothing_is_spared()
    {
        var job = AJob.With(Rail((PartSurface.Inside, SurfaceStandard.Scrub))) with { Methods = new Dictionary<string, string> { [FaceTwo] = "thickness planer" } };
        Assert.Single(job.Graph().Of(FaceTwo));
        Assert.Empty(job.Graph().Of(Scrub));
    }

    [Fact]
    public void Scrubbing_goes_across_and_is_not_slowed_by_interlocked_grain()
    {
        Job Job(SurfaceStandard standard) => AJob.With(Rail((PartSurface.Under, standard))) with { Boards = [.. AJob.Boards(2, 96, 12, 1.25m).Select(board => board with { Grain = BoardGrain.Interlocked })] };
        Assert.Equal(1, Factor(Job(SurfaceStandard.Scrub).Graph(), Scrub));
        Assert.Equal(1.4, Factor(Job(SurfaceStandard.Jack).Graph(), Jack));

        static double Factor(TaskGraph graph, string operation) => ((TaskTiming.ByOperation)Assert.Single(graph.Of(operation)).Timing).Factor;
    }

    [Fact]
    public void A_surface_that_shows_and_is_written_less_than_smoothed_gets_its_coat_and_no_smoothing()
    {
        Job Job(params (PartSurface, SurfaceStandard)[] written) => AJob.With(Rail(written) with { Shows = new HashSet<PartSurface> { PartSurface.Face, PartSurface.Under } }) with
        {
            Finishes = [new FinishWork { Finish = "wax", On = ["rail"] }],
        };
        var (all, less) = (Job().Graph(), Job((PartSurface.Under, SurfaceStandard.Jack)).Graph());
        Assert.Equal(all.Of("finish coat, wiped").Quantity(), less.Of("finish coat, wiped").Quantity());
        Assert.Equal(all.Of("smooth").Quantity() / 2, less.Of("smooth").Quantity(), 9);
    }

    [Fact]
    public void What_is_written_smoothed_is_smoothed_though_it_does_not_show_and_gets_no_coat()
    {
        var rail = Rail((PartSurface.Under, SurfaceStandard.Smoothed)) with { Shows = new HashSet<PartSurface> { PartSurface.Face } };
        var finished = (AJob.With(rail) with { Finishes = [new FinishWork { Finish = "wax", On = ["rail"] }] }).Graph();
        Assert.Equal(2 * 36 * 8 / 144.0, finished.Of("smooth").Quantity(), 9);
        Assert.Equal(36 * 8 / 144.0, finished.Of("finish coat, wiped").Quantity(), 9);
        var bare = AJob.With(rail with { Shows = new HashSet<PartSurface>() }).Graph();
        Assert.Equal(36 * 8 / 144.0, bare.Of("smooth").Quantity(), 9);
        Assert.Empty(bare.Of("ease arrises"));
    }

    [Fact]
    public void Of_two_ways_to_leave_the_hidden_faces_the_rougher_never_takes_longer()
    {
        var standards = Gen.Int[0, 3].Select(step => (SurfaceStandard)step);
        Gen.Select(standards.Array[3], standards.Array[3]).Sample(
            (one, other) =>
            {
                var rougher = one.Zip(other, (left, right) => left < right ? left : right).ToArray();
                Assert.True(Time(rougher) <= Time(one) + 1e-6, string.Join(", ", one) + " against " + string.Join(", ", rougher));
            },
            iter: 60);

        static double Time(SurfaceStandard[] standards) => AJob.With(
            AJob.Part("shelf", 30, 9, 0.75m, 2) with { Surfaces = Written([(PartSurface.Under, standards[0])]) },
            AJob.Part("top", 40, 18) with { IsPanel = true, Surfaces = Written([(PartSurface.Under, standards[1])]) },
            AJob.Part("apron", 28, 4, count: 4) with { Surfaces = Written([(PartSurface.Inside, standards[2])]) }).Graph().Tasks.Sum(task => Rates.LikelyTime(task).Minutes);
    }

    private static Part Rail(params (PartSurface, SurfaceStandard)[] written) => AJob.Part("rail", 36, 8) with { Surfaces = Written(written) };

    private static Dictionary<PartSurface, SurfaceStandard> Written((PartSurface Surface, SurfaceStandard Standard)[] written) => written.ToDictionary(one => one.Surface, one => one.Standard);
}
