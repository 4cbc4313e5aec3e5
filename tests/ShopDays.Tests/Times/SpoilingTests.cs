using CsCheck;
using NodaTime;
using ShopDays.Cli.Files;
using ShopDays.Layouts;
using ShopDays.Logbook;
using ShopDays.Tests.Work;
using ShopDays.Times;
using ShopDays.Work;
using Xunit;

namespace ShopDays.Tests.Times;

public sealed class SpoilingTests
{
    private static readonly ShopDays.Parts.Job Chest = AJob.Chest();
    private static readonly Layout ItsLayout = HandLayout.Of(Chest);
    private static readonly TaskGraph Graph = Chest.Graph();
    private static readonly MadeAgain Again = MadeAgain.Of(Graph, Chest, ItsLayout, BuiltIn.Operations, BuiltIn.Waits);
    private static readonly RateModel Model = RateModel.FromPrior(BuiltIn.Operations);
    private static readonly TimeDraws Draws = Model.Draw(Graph.Tasks, 500, 3);

    [Fact]
    public void The_learned_chance_lies_between_the_tables_and_the_logs() =>
        Gen.Select(Gen.Double[0, 0.5], Gen.Int[1, 500], Gen.Double[0, 1]).Sample((prior, pieces, share) =>
        {
            var spoiled = Math.Floor(pieces * share);
            var learned = Chance(prior, pieces, spoiled).Mean;
            var logged = spoiled / pieces;

            // One rounding more than in either of the two.
            Assert.InRange(learned, Math.Min(prior, logged) - 1e-12, Math.Max(prior, logged) + 1e-12);
            Assert.True(Math.Abs(learned - logged) <= Math.Abs(Chance(prior, pieces / 2.0, spoiled / 2).Mean - logged) + 1e-12);
        });

    [Fact]
    public void One_spoiled_of_fifty_counts_as_much_as_the_tables() => Assert.Equal((0.01 + 0.02) / 2, Chance(0.01, 50, 1).Mean, 12);

    [Fact]
    public void What_is_harmless_and_never_spoiled_has_no_chance_at_all()
    {
        var harmless = Chance(0, 40, 0);
        Assert.Equal((0, 0), (harmless.Mean, harmless.At(0.9)));
        Assert.True(Chance(0, 40, 1).Mean > 0);
    }

    [Fact]
    public void A_run_counts_by_its_age()
    {
        var mortise = BuiltIn.Operations["mortise"];
        var timing = new TaskTiming.ByOperation { Operation = mortise, Method = mortise.Methods[0], Quantity = 8, Setups = 8, Run = 8, Batch = 8 };
        var learned = SpoilingChances.Learn(BuiltIn.Operations, [new(timing, new LocalDate(2027, 1, 4), 2), new(timing, new LocalDate(2026, 1, 4), 0)], run => run.On.Year == 2027 ? 1 : 0.25).Of(mortise, mortise.Methods[0])!;
        Assert.Equal((10, 2), (learned.Pieces, learned.Spoiled));
    }

    [Fact]
    public void What_is_sawn_and_planed_in_passes_is_spoiled_no_more_often_than_what_is_done_in_one()
    {
        var job = AJob.With(AJob.Part("beam", 140, 10, 3, count: 1)) with { Boards = AJob.Boards(1, 168, 16, 4) };
        var (alone, two) = (job.Graph(), job.Graph(AJob.Shop with { Workers = 2 }));
        Assert.True(two.Of("rip").Count > alone.Of("rip").Count);
        foreach (var operation in (string[])["rip", "flatten face one", "joint the edge"])
        {
            var chances = SpoilingChances.Learn(BuiltIn.Operations, [SpoiledOnce(operation)], _ => 1);
            Assert.Equal(ExpectedIn(alone), ExpectedIn(two), 12);

            double ExpectedIn(TaskGraph graph) => new SpoilingDraws("beam", MadeAgain.Unknown, [.. graph.Of(operation).Select((task, id) => task with { Id = id })], Model, chances).Expected;
        }

        static SpoiledRun SpoiledOnce(string operation) => new(new() { Operation = BuiltIn.Operations[operation], Method = BuiltIn.Operations[operation].Methods[0], Quantity = 10, Setups = 1, Run = 10, Batch = 10 }, new(2027, 1, 4), 1);
    }

    [Fact]
    public void Without_any_chance_the_courses_are_the_very_same() =>
        Assert.Same(Draws, With(_ => 0).On(Draws));

    [Fact]
    public void As_many_are_spoiled_as_the_chances_say()
    {
        var spoiling = With(chance => chance);
        var many = spoiling.On(Model.Draw(Graph.Tasks, 20_000, 5)).Reworks!;

        // The counts' standard deviation is a little above their root: four standard errors of 20,000.
        Assert.Equal(spoiling.Expected, many.Average(trial => trial.Length), 4 * 1.5 * Math.Sqrt(spoiling.Expected / many.Count));
        Assert.Equal(spoiling.ChanceOfNone, many.Average(trial => trial.Length == 0 ? 1.0 : 0), 4 * 0.5 / Math.Sqrt(many.Count));
    }

    [Fact]
    public void A_greater_chance_never_makes_a_course_shorter() =>
        Gen.Double[1, 6].Sample(
            factor =>
            {
                var (less, more) = (With(chance => chance).On(Draws).Reworks!, With(chance => Math.Min(0.5, chance * factor)).On(Draws).Reworks!);
                Assert.All(less.Zip(more), pair =>
                {
                    // Sums of the same doubles in another order.
                    Assert.True(pair.First.Sum(one => one.Minutes) <= pair.Second.Sum(one => one.Minutes) + 1e-9);
                    Assert.True(pair.First.Length <= pair.Second.Length);
                });
            },
            iter: 5);

    [Fact]
    public void A_spare_blank_never_makes_rework_longer_nor_a_wait_of_none()
    {
        var spoiling = With(chance => Math.Min(0.5, 5 * chance));
        var now = spoiling.On(Draws).Reworks!;
        foreach (var part in spoiling.PartsToCome)
        {
            var spared = spoiling.WithASpare(part).On(Draws).Reworks!;
            Assert.All(now.Zip(spared), pair => Assert.All(pair.First.Zip(pair.Second), one =>
            {
                Assert.Equal((one.First.Task, one.First.Part), (one.Second.Task, one.Second.Part));
                Assert.True(one.Second.Minutes <= one.First.Minutes && one.Second.Wait <= one.First.Wait);
            }));
        }
    }

    [Fact]
    public void Two_jobs_in_one_shop_are_spoiled_each_by_itself()
    {
        var chances = Chances(chance => Math.Min(0.5, 5 * chance));
        var (one, other) = (new SpoilingDraws("one", Again, Graph.Tasks, Model, chances), new SpoilingDraws("other", Again, Graph.Tasks, Model, chances));
        Assert.NotEqual(one.On(Draws).Reworks!.Select(trial => trial.Length), other.On(Draws).Reworks!.Select(trial => trial.Length));
        Assert.Equal(one.On(Draws).Reworks!.Select(trial => trial.Length), one.On(Draws).Reworks!.Select(trial => trial.Length));
    }

    [Fact]
    public void New_timber_takes_as_long_as_its_range_says_in_whole_days()
    {
        var range = new ShopDays.Parts.WaitGuess(Duration.FromDays(2), Duration.FromDays(5), Duration.FromDays(14));
        var again = MadeAgain.Of(Graph, Chest, ItsLayout with { Boards = [.. ItsLayout.Boards.Select(board => board with { Offcuts = [] })] }, BuiltIn.Operations, BuiltIn.Waits, range);
        var spoiling = new SpoilingDraws("chest", again, Graph.Tasks, Model, Chances(chance => Math.Min(0.5, 5 * chance)));
        var waits = spoiling.On(Model.Draw(Graph.Tasks, 2000, 3)).Reworks!.SelectMany(trial => trial).Where(one => one.IsForTimber).Select(one => one.Wait.TotalDays).ToList();
        Assert.True(waits.Count > 1000);
        Assert.All(waits, wait => Assert.Equal(Math.Round(wait), wait));

        // One in ten by the low end, half by the likely length, nine in ten by the high end, each rounded up to a day: four
        // standard errors of a thousand.
        Assert.Equal(0.1, Share(2), 0.05);
        Assert.Equal(0.5, Share(5), 0.065);
        Assert.Equal(0.9, Share(14), 0.05);

        double Share(double days) => waits.Count(wait => wait <= days) / (double)waits.Count;
    }

    [Fact]
    public void A_coat_that_fails_takes_its_own_time_and_the_rubbing_down_and_loses_no_part()
    {
        var coats = Graph.Tasks.Where(task => task.Timing is TaskTiming.ByOperation { Operation.Name: "finish coat, wiped" or "finish coat, brushed" }).Select(task => task.Id).ToHashSet();
        var reworks = With(chance => Math.Min(0.5, 10 * chance)).On(Draws).Reworks!;
        var failed = reworks.SelectMany((trial, number) => trial.Where(one => coats.Contains(one.Task)).Select(one => (Own: Draws.Minutes[number][one.Task], Rework: one))).ToList();
        Assert.NotEmpty(failed);
        Assert.All(failed, one =>
        {
            Assert.True(one.Rework.Minutes > one.Own);
            Assert.True(one.Rework.Wait > Duration.Zero);
            Assert.False(one.Rework.IsForTimber);
            Assert.Equal((one.Rework.Task, (string?)null), (one.Rework.DoneIn, one.Rework.Part));
        });
    }

    private static SpoilingChance Chance(double prior, double pieces, double spoiled)
    {
        var mortise = BuiltIn.Operations["mortise"];
        return new(mortise, mortise.Methods[0] with { SpoilChance = prior }, pieces, spoiled);
    }

    private static SpoilingDraws With(Func<double, double> change) => new("chest", Again, Graph.Tasks, Model, Chances(change));

    private static SpoilingChances Chances(Func<double, double> change) => SpoilingChances.FromPrior(new(BuiltIn.Operations.All
        .Select(operation => operation with { Methods = [.. operation.Methods.Select(method => method with { SpoilChance = change(method.SpoilChance) })] })));
}
