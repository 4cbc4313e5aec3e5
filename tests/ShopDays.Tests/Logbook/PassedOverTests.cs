using ShopDays.Logbook;
using ShopDays.Tests.Plans;
using ShopDays.Work;
using Xunit;

namespace ShopDays.Tests.Logbook;

/// <summary>Work logged though what must come before it is not: dry fit, glue up, plane, wax, one after another, and a label that nothing waits for.</summary>
public sealed class PassedOverTests
{
    private static readonly TaskGraph Graph = new AJob()
        .Task("dry fit", 20).Task("glue up", 30).Task("plane", 20).Task("wax", 10).Task("label", 5)
        .Then("dry fit", "glue up").Then("glue up", "plane").Then("plane", "wax")
        .Order().Graph;

    [Fact]
    public void Work_done_in_its_order_passes_nothing_over() =>
        Assert.Empty(Of(new ALog().Done("dry fit", 20, 1, 9).Done("glue up", 30, 1, 10).Went("plane", 5, 1, 10.5).Done("label", 5, 1, 8)));

    [Fact]
    public void All_that_comes_before_work_that_is_done_is_passed_over_by_the_nearest_of_it() =>
        Assert.Equal(
            [("dry fit", "glue up"), ("plane", "wax")],
            Of(new ALog().Done("glue up", 30, 1, 9).Done("wax", 10, 1, 10)));

    [Fact]
    public void What_is_half_done_is_passed_over_by_work_that_is_done_and_not_by_work_that_is_begun()
    {
        Assert.Equal([("glue up", "wax"), ("plane", "wax")], Of(new ALog().Done("dry fit", 20, 1, 9).Went("glue up", 30, 1, 9).Done("wax", 10, 1, 10)));
        Assert.Equal([("dry fit", "glue up")], Of(new ALog().Went("glue up", 10, 1, 9)));
        Assert.Empty(Of(new ALog().Went("dry fit", 20, 1, 9).Went("glue up", 10, 1, 10)));
    }

    private static IEnumerable<(string Task, string By)> Of(ALog log) =>
        PassedOver.In(Graph, JobStanding.Of(Graph, log.Entries)).Select(one => (one.Task.Name, one.By.Task.Name));
}
