using ShopDays.Cli.Files;
using ShopDays.Parts;
using ShopDays.Tests.Work;
using ShopDays.Times;
using ShopDays.Work;
using Xunit;

namespace ShopDays.Tests.Times;

public sealed class FaceSavingsTests
{
    private static readonly RateModel Rates = RateModel.FromPrior(BuiltIn.Operations);

    [Fact]
    public void What_is_written_saves_the_difference_between_two_whole_orders_of_work()
    {
        var job = Table(SurfaceStandard.Jack);
        var savings = Of(job);
        Assert.Equal(Time(Table(SurfaceStandard.Tried)) - Time(job), savings.Already.Minutes, 6);
        Assert.True(savings.Already.Minutes > 10, $"{savings.Already}");
        Assert.Equal(["top", "apron"], savings.Written.Select(face => face.Part.Name));
    }

    [Fact]
    public void Finer_hidden_faces_are_told_with_what_the_jack_and_the_scrub_plane_would_save()
    {
        var job = Table(SurfaceStandard.Tried);
        var further = Of(job).Further;
        Assert.Equal([SurfaceStandard.Jack, SurfaceStandard.Scrub], further.Select(one => one.Standard));
        Assert.Equal(Time(job) - Time(Table(SurfaceStandard.Jack)), further[0].Saved.Minutes, 6);
        Assert.True(further[1].Saved > further[0].Saved);
    }

    [Fact]
    public void No_face_is_told_below_what_its_joints_need()
    {
        var job = AJob.With(Side(), Side() with { Name = "end" }) with { Joints = [new Joint { Kind = "dovetail", Parts = ["side", "end"], Count = 4, Tails = 3 }] };
        Assert.Equal([SurfaceStandard.Jack], Of(job).Further.Select(one => one.Standard));

        static Part Side() => AJob.Part("side", 30, 9, 0.75m) with { Shows = new HashSet<PartSurface> { PartSurface.Face } };
    }

    [Theory]
    [InlineData(4, 1, true)]
    [InlineData(2, 1.25, false)]
    public void A_squarish_part_is_seen_from_all_sides(double width, double thickness, bool isHidden)
    {
        var job = AJob.With(AJob.Part("leg", 28, (decimal)width, (decimal)thickness) with { Shows = new HashSet<PartSurface> { PartSurface.Face } }) with { Boards = AJob.Boards(2, 96, 9, 1.5m) };
        Assert.Equal(isHidden, HiddenFaces.Of(job, BuiltIn.Operations).Count == 1);
    }

    [Fact]
    public void What_shows_or_is_finished_all_round_is_not_hidden()
    {
        var shelf = AJob.Part("shelf", 30, 9);
        var finished = AJob.With(shelf) with { Finishes = [new FinishWork { Finish = "wax", On = ["shelf"] }] };
        Assert.Empty(HiddenFaces.Of(finished, BuiltIn.Operations));
        Assert.Empty(HiddenFaces.Of(AJob.With(shelf with { Shows = new HashSet<PartSurface> { PartSurface.Under } }), BuiltIn.Operations));
        Assert.Single(HiddenFaces.Of(finished with { Parts = [shelf with { Surfaces = new Dictionary<PartSurface, SurfaceStandard> { [PartSurface.Under] = SurfaceStandard.Rough } }] }, BuiltIn.Operations));
    }

    [Fact]
    public void Where_nothing_is_hidden_nothing_is_told()
    {
        var savings = Of(AJob.With(AJob.Part("post", 30, 1.5m, 1)));
        Assert.Empty(savings.Further);
        Assert.Equal(0, savings.Already.Minutes);
    }

    private static Job Table(SurfaceStandard hidden)
    {
        var surfaces = new Dictionary<PartSurface, SurfaceStandard> { [PartSurface.Under] = hidden };
        var shows = new HashSet<PartSurface> { PartSurface.Face };
        return AJob.With(
            AJob.Part("top", 40, 18) with { IsPanel = true, Shows = shows, Surfaces = surfaces },
            AJob.Part("apron", 30, 4, count: 4) with { Shows = shows, Surfaces = surfaces });
    }

    private static FaceSavings Of(Job job) => FaceSavings.Of(job, BuiltIn.Operations, job.Graph(), other => other.Ordered(), Rates);

    private static double Time(Job job) => job.Graph().Tasks.Sum(task => Rates.LikelyTime(task).Minutes);
}
