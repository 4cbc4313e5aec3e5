using ShopDays.Measures;
using ShopDays.Work;

namespace ShopDays.Times;

/// <summary>Draws possible courses of a job from a rate model. Each course has a stream of chance of its own, so that it does not matter on which core, or when, it is drawn.</summary>
internal sealed class CourseDraws
{
    /// <summary>Courses that a core draws at a time, so that none is left waiting for another at the end.</summary>
    private const int AtATime = 64;

    private readonly IReadOnlyList<ShopTask> tasks;
    private readonly CourseFigures figures;
    private readonly double noiseShape;
    private readonly double noiseScale;

    /// <summary>Prepares the tasks.</summary>
    public CourseDraws(RateModel model, IReadOnlyList<ShopTask> tasks)
    {
        this.tasks = tasks;
        figures = new(model, tasks);
        (noiseShape, noiseScale) = (model.NoiseShape, model.NoiseScale);
    }

    /// <inheritdoc cref="RateModel.Draw"/>
    public TimeDraws Draw(int trials, int seed, IReadOnlyList<WorkTime>? spent = null) => Draw(trials, seed, spent, Environment.ProcessorCount);

    /// <summary>Draws on so many cores, which makes no difference to what is drawn.</summary>
    /// <param name="trials">How many courses, at least 1.</param>
    /// <param name="seed">The seed.</param>
    /// <param name="spent">Time that some tasks have taken already; null for none.</param>
    /// <param name="cores">How many cores at the most, at least 1.</param>
    public TimeDraws Draw(int trials, int seed, IReadOnlyList<WorkTime>? spent, int cores)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(trials, 1);
        var begun = Enumerable.Range(0, figures.Tasks.Length)
            .Select(place => (Place: place, Spent: spent?[figures.Tasks[place]].Minutes ?? 0))
            .Where(one => one.Spent > 0)
            .ToArray();
        var minutes = new double[trials][];
        var next = 0;
        Parallel.For(0, Math.Clamp(trials / AtATime, 1, cores), _ =>
        {
            var hand = new Hand(figures);
            for (var begin = Interlocked.Add(ref next, AtATime) - AtATime; begin < trials; begin = Interlocked.Add(ref next, AtATime) - AtATime)
            {
                for (var trial = begin; trial < Math.Min(trials, begin + AtATime); trial++)
                {
                    minutes[trial] = Course(new(seed, trial), begun, hand);
                }
            }
        });
        return new(minutes, seed);
    }

    private double[] Course(ChanceStream chance, (int Place, double Spent)[] begun, Hand hand)
    {
        var usual = Math.Sqrt(noiseScale / noiseShape);
        var scale = Math.Sqrt(noiseScale / chance.NextGamma(noiseShape));
        chance.FillWithNormals(hand.Normals);
        chance.FillWithNormals(hand.Deviates);
        chance.FillWithShares(hand.Shares);
        foreach (ref var normal in hand.Normals.AsSpan())
        {
            normal *= scale;
        }

        figures.WriteRates(hand.Normals, hand.Rates);
        figures.WriteLogs(hand.Rates, usual, scale, hand.Deviates, hand.Shares, hand.Times);
        figures.RaiseToMinutes(hand.Times);
        foreach (var (place, spent) in begun)
        {
            hand.Times[place] = figures.IsKnown(place)
                ? Left(new(figures.SpreadAt(place), usual, scale, hand.Deviates[place], figures.IsLuckLogged ? hand.Shares[place] : 0), hand.Rates[place], figures.NoiseAt(place), spent)
                : GuessedTime.Left(((TaskTiming.ByGuess)tasks[figures.Tasks[place]].Timing).Guess, spent, hand.Deviates[place]);
        }

        var course = GC.AllocateUninitializedArray<double>(figures.Tasks.Length);
        for (var place = 0; place < course.Length; place++)
        {
            course[figures.Tasks[place]] = hand.Times[place];
        }

        return course;
    }

    private static double Left(LuckLeft luck, double centre, double noise, double spent) =>
        TimeLeft.Minutes(least => Math.Exp(centre + (noise * luck.Beyond(least))), spent, (Math.Log(spent) - centre) / noise);

    /// <summary>What one core draws with, used again for each course.</summary>
    private sealed class Hand(CourseFigures figures)
    {
        public readonly double[] Normals = new double[figures.Normals];
        public readonly double[] Deviates = new double[figures.Tasks.Length];
        public readonly double[] Shares = new double[figures.IsLuckLogged ? figures.Tasks.Length : 0];
        public readonly double[] Rates = new double[figures.Padded];
        public readonly double[] Times = new double[figures.Padded];
    }
}
