using ShopDays.Measures;
using ShopDays.Parts;
using ShopDays.Work;
using Xunit;

namespace ShopDays.Tests.Work;

public sealed class LateSmoothingTests
{
    [Fact]
    public void A_face_is_smoothed_when_all_that_gets_its_coat_is_jointed_and_tried_dry()
    {
        var job = AJob.With(AJob.Part("top", 40, 8), AJob.Part("shelf", 30, 6), AJob.Part("rail", 30, 3, count: 2), AJob.Part("leg", 28, 3, count: 4)) with
        {
            Joints = [new Joint { Kind = "mortise and tenon", Parts = ["rail", "leg"], Count = 4 }, new Joint { Kind = "groove", Parts = ["shelf"], Length = Length.FromInches(30m), Depth = Length.FromInches(0.25m) }],
            GlueUps = [new GlueUp { Name = "base", Joins = ["rail", "leg"], Adhesive = "PVA, slow-set" }],
            Finishes = [new FinishWork { Finish = "wax", On = ["top", "base", "shelf"] }],
        };
        var graph = job.Graph();
        var dryFit = Assert.Single(graph.Of("dry fit"));
        var glued = Assert.Single(graph.Of("glue-up"));
        var groove = Assert.Single(graph.Of("groove"));
        int[] smoothed = [Smoothing(graph, "top"), Smoothing(graph, "shelf")];
        Assert.All(smoothed, id => Assert.True(graph.Leads(dryFit.Id, id)));
        Assert.All([.. smoothed, Smoothing(graph, "base")], id => Assert.True(graph.Leads(groove.Id, id)));

        // While the glue sets there is time for it.
        Assert.All(smoothed, id => Assert.False(graph.Leads(glued.Id, id)));

        var apart = (job with { Finishes = [new FinishWork { Finish = "wax", On = ["top"] }, new FinishWork { Finish = "boiled linseed oil (with driers)", On = ["base"] }] }).Graph();
        Assert.False(apart.Leads(Assert.Single(apart.Of("dry fit")).Id, Smoothing(apart, "top")));

        static int Smoothing(TaskGraph graph, string part) => graph.Tasks.Single(task => task.Name == "smooth: " + part).Id;
    }
}
