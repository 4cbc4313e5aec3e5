using ShopDays.Measures;
using ShopDays.Work;

namespace ShopDays.Times;

/// <summary>Draws possible courses of a job from a rate model. Each course has a stream of chance of its own, so that it does not matter on which core, or when, it is drawn.</summary>
internal sealed class CourseDraws
{
    /// <summary>Courses that a core draws at a time, so that none is left waiting for another at the end.</summary>
    private const int AtATime = 64;

    private readonly RateModel model;
    private readonly IReadOnlyList<ShopTask> tasks;
    private readonly CourseFigures figures;
    private readonly double noiseShape;
    private readonly double noiseScale;

    /// <summary>Prepares the tasks.</summary>
    public CourseDraws(RateModel model, IReadOnlyList<ShopTask> tasks)
    {
        (this.model, this.tasks) = (model, tasks);
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
        return Courses(trials, seed, cores, () =>
        {
            var hand = new Hand(figures);
            return chance => Course(Begin(chance, hand), begun, hand);
        });
    }

    /// <summary>
    /// Draws other tasks in the very courses of these: what both have in common is the same in each, the rest is drawn when
    /// these are, so that these stay as they are whatever stands behind them.
    /// </summary>
    /// <param name="behind">The other tasks, none of them begun.</param>
    /// <param name="trials">How many courses, at least 1.</param>
    /// <param name="seed">The seed of these.</param>
    public TimeDraws DrawBehind(IReadOnlyList<ShopTask> behind, int trials, int seed)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(trials, 1);
        var others = new CourseDraws(model, behind);
        var places = figures.Terms.Index().ToDictionary(one => one.Item, one => one.Index);
        int[] shared = [.. others.figures.Terms.Select(term => places.GetValueOrDefault(term, -1))];
        return Courses(trials, seed, Environment.ProcessorCount, () =>
        {
            var (before, hand) = (new Hand(figures), new Hand(others.figures));
            return chance =>
            {
                var scale = Begin(chance, before);
                for (var term = 0; term < shared.Length; term++)
                {
                    hand.Normals[term] = shared[term] >= 0 ? before.Normals[shared[term]] : chance.NextNormal();
                }

                chance.FillWithNormals(hand.Deviates);
                chance.FillWithShares(hand.Shares);
                return others.Course(scale, [], hand);
            };
        });
    }

    /// <summary>
    /// Draws the tasks of the same job done otherwise in the very courses of these: terms that both have and tasks of one name
    /// have the same chance in each, so that what differs is not luck. The rest is drawn when these are.
    /// </summary>
    /// <param name="others">The tasks of the job done otherwise, each at its id.</param>
    /// <param name="trials">How many courses, at least 1.</param>
    /// <param name="seed">The seed of these.</param>
    public TimeDraws DrawOtherwise(IReadOnlyList<ShopTask> others, int trials, int seed)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(trials, 1);
        var otherwise = new CourseDraws(model, others);
        var sameTerms = Same(figures.Terms, otherwise.figures.Terms);
        var sameTasks = Same<string>([.. figures.Tasks.Select(task => tasks[task].Name)], [.. otherwise.figures.Tasks.Select(task => others[task].Name)]);
        return Courses(trials, seed, Environment.ProcessorCount, () =>
        {
            var (before, hand) = (new Hand(figures), new Hand(otherwise.figures));
            return chance =>
            {
                var scale = Begin(chance, before);
                chance.FillWithNormals(hand.Normals);
                chance.FillWithNormals(hand.Deviates);
                chance.FillWithShares(hand.Shares);
                Keep(sameTerms, before.Normals, hand.Normals);
                Keep(sameTasks, before.Deviates, hand.Deviates);
                Keep(hand.Shares.Length == 0 ? [] : sameTasks, before.Shares, hand.Shares);
                return otherwise.Course(scale, [], hand);
            };
        });
    }

    /// <summary>For each of some, its place among those before; -1 where it is not among them.</summary>
    private static int[] Same<T>(IReadOnlyList<T> before, IReadOnlyList<T> others)
        where T : notnull
    {
        var places = before.Index().DistinctBy(one => one.Item).ToDictionary(one => one.Item, one => one.Index);
        return [.. others.Select(other => places.GetValueOrDefault(other, -1))];
    }

    private static void Keep(int[] same, double[] before, double[] now)
    {
        for (var place = 0; place < same.Length; place++)
        {
            if (same[place] >= 0)
            {
                now[place] = before[same[place]];
            }
        }
    }

    /// <summary>Makes all courses, each with a stream of its own.</summary>
    private static TimeDraws Courses(int trials, int seed, int cores, Func<Func<ChanceStream, double[]>> courseOfACore)
    {
        var minutes = new double[trials][];
        var next = 0;
        Parallel.For(0, Math.Clamp(trials / AtATime, 1, cores), Cores.OfTheCaller, _ =>
        {
            var course = courseOfACore();
            for (var begin = Interlocked.Add(ref next, AtATime) - AtATime; begin < trials; begin = Interlocked.Add(ref next, AtATime) - AtATime)
            {
                for (var trial = begin; trial < Math.Min(trials, begin + AtATime); trial++)
                {
                    minutes[trial] = course(new(seed, trial));
                }
            }
        });
        return new(minutes, seed);
    }

    /// <summary>Draws what a course begins with.</summary>
    /// <returns>Its noise scale.</returns>
    private double Begin(ChanceStream chance, Hand hand)
    {
        var scale = Math.Sqrt(noiseScale / chance.NextGamma(noiseShape));
        chance.FillWithNormals(hand.Normals);
        chance.FillWithNormals(hand.Deviates);
        chance.FillWithShares(hand.Shares);
        return scale;
    }

    private double[] Course(double scale, (int Place, double Spent)[] begun, Hand hand)
    {
        var usual = Math.Sqrt(noiseScale / noiseShape);
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
