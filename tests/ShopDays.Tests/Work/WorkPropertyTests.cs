using CsCheck;
using ShopDays.Measures;
using ShopDays.Parts;
using ShopDays.Work;
using Xunit;

namespace ShopDays.Tests.Work;

public sealed class WorkPropertyTests
{
    private static readonly Gen<Job> RandomJob =
        from counts in Gen.Int[1, 5].Array[1, 5]
        from lengths in Gen.Int[8, 60].Array[5]
        from widths in Gen.Int[2, 9].Array[5]
        from panel in Gen.Bool.Array[5]
        from joints in Gen.Int[0, 5]
        from coats in Gen.Int[0, 3]
        select Make(counts, lengths, widths, panel, joints, coats);

    [Fact]
    public void Any_job_that_a_maker_might_write_has_an_order_and_every_task_has_work_in_it()
    {
        RandomJob.Sample(
            job =>
            {
                var graph = job.Graph();
                Assert.All(graph.Tasks, task =>
                {
                    var by = Assert.IsType<TaskTiming.ByOperation>(task.Timing);
                    Assert.True(by.Quantity > 0 && double.IsFinite(by.Quantity), task.Name);
                    Assert.True(by.Run >= 1 && by.Batch >= by.Run, task.Name);
                    Assert.All(by.Covariates.Values, value => Assert.True(value > 0, task.Name));
                });
                Assert.All(graph.Precedences, one => Assert.NotEmpty(one.Reason));
            },
            iter: 60);
    }

    [Fact]
    public void A_run_fits_its_limit_or_is_one_piece_and_no_piece_is_lost()
    {
        Gen.Select(Gen.Int[1, 40], Gen.Double[0.5, 200], Gen.Double[20, 300]).Sample(
            (count, each, limit) =>
            {
                var runs = Runs.Of([.. Enumerable.Range(1, count)], WorkTime.FromMinutes(each), WorkTime.FromMinutes(limit)).ToList();
                Assert.Equal(Enumerable.Range(1, count), runs.SelectMany(run => run));
                Assert.All(runs, run => Assert.True(run.Count == 1 || run.Count * each <= limit));
                Assert.True(runs.Max(run => run.Count) - runs.Min(run => run.Count) <= 1);
            });
    }

    [Fact]
    public void Dimensioning_loses_and_adds_no_piece()
    {
        RandomJob.Sample(
            job =>
            {
                var graph = job.Graph();
                foreach (var part in job.Parts)
                {
                    var ends = graph.Of("square ends").Where(task => task.Parts.Contains(part.Name));
                    Assert.Equal(2.0 * part.Count, ends.Quantity());
                }
            },
            iter: 40);
    }

    private static Job Make(int[] counts, int[] lengths, int[] widths, bool[] panel, int joints, int coats)
    {
        var parts = counts.Select((count, at) => AJob.Part(FormattableString.Invariant($"part {at}"), lengths[at], widths[at], count: count) with { IsPanel = panel[at] }).ToList();
        return AJob.With(parts) with
        {
            Boards = AJob.Boards(40, 96, 12, 1.25m),
            Joints = joints == 0 ? [] : [new Joint { Kind = "mortise and tenon", Parts = [parts[0].Name, parts[^1].Name], Count = joints }],
            GlueUps = [new GlueUp { Name = "whole", Joins = [.. parts.Select(part => part.Name)], Adhesive = "liquid hide glue" }],
            Finishes = coats == 0 ? [] : [new FinishWork { Finish = "shellac, brushed", On = ["whole"], Coats = coats }],
        };
    }
}
