using System.Diagnostics;
using NodaTime;
using ShopDays.Work;

namespace ShopDays.Times;

/// <summary>
/// Draws which pieces are spoiled in each course of a job, and what it takes to come as far again. Every operation has a
/// stream of chance of its own, so that a greater chance in one spoils the same pieces and more, and nothing else.
/// </summary>
/// <remarks>
/// How many of an operation's pieces are spoiled in a course is drawn at once, its chance being as uncertain as it is
/// believed to be; which ones is then a draw without replacement, for beforehand all are alike. So a course in which nothing
/// is spoiled costs one look for each operation.
/// </remarks>
public sealed class SpoilingDraws
{
    /// <summary>Courses that a core draws at a time.</summary>
    private const int AtATime = 256;

    private readonly string job;
    private readonly MadeAgain again;
    private readonly IReadOnlyList<ShopTask> tasks;
    private readonly RateModel model;
    private readonly SpoilingChances chances;
    private readonly Group[] groups;
    private readonly Lost[][] lost;
    private readonly Mended?[] mended;

    /// <summary>Prepares a job.</summary>
    /// <param name="job">Its name: two jobs in one shop are spoiled each by itself.</param>
    /// <param name="again">What it takes to make its pieces again.</param>
    /// <param name="tasks">Its tasks, or those that are left, each at its id.</param>
    /// <param name="model">The rates: what is done already would take as long again as they say.</param>
    /// <param name="chances">The chances.</param>
    public SpoilingDraws(string job, MadeAgain again, IReadOnlyList<ShopTask> tasks, RateModel model, SpoilingChances chances)
    {
        (this.job, this.again, this.tasks, this.model, this.chances) = (job, again, tasks, model, chances);
        groups =
        [
            .. from task in tasks
               where task.Timing is TaskTiming.ByOperation
               let timing = (TaskTiming.ByOperation)task.Timing
               where !timing.MorePassesFollow
               group (task, timing) by (Operation: timing.Operation.Name, Method: timing.Method.Name) into alike
               let first = alike.First().timing
               let chance = chances.Of(first.Operation, first.Method)
               where chance is { Alpha: > 0 }
               select Group.Of($"{job}: {alike.Key.Operation}, {alike.Key.Method}", chance, [.. alike.Select(one => (one.task.Id, one.timing.Run))]),
        ];
        var places = tasks.ToDictionary(task => task.Name, task => task.Id, StringComparer.Ordinal);
        lost = [.. tasks.Select(task => again.LostIn(task.Name).Select(piece => Lost.Of(piece, places, model)).ToArray())];
        mended = [.. tasks.Select(task => again.MendingOf(task.Name) is { } mending ? Mended.Of(mending, places, model) : null)];
    }

    /// <summary>Pieces, glue-ups and coats that are spoiled in a course, on average.</summary>
    public double Expected => groups.Sum(group => group.Expected);

    /// <summary>The chance that nothing is spoiled.</summary>
    public double ChanceOfNone => groups.Aggregate(1.0, (chance, group) => chance * group.None);

    /// <summary>Parts of which one more blank could still be sawn and planed with the others.</summary>
    public IEnumerable<string> PartsToCome => again.Parts.Where(part => again.MakingOf(part) is { Count: > 0 } making && making.All(one => tasks.Any(task => task.Name == one.Task)));

    /// <summary>The same job with one more blank of a part.</summary>
    /// <param name="part">One of <see cref="PartsToCome"/>.</param>
    public SpoilingDraws WithASpare(string part) => new(job, again.WithASpare(part), tasks, model, chances);

    /// <summary>Parts with spare blanks, and how many of each.</summary>
    public IReadOnlyList<(string Part, int Spares)> Asked => [.. again.Parts.Select(part => (part, again.SparesOf(part))).Where(one => one.Item2 > 0)];

    /// <summary>The same job as if no blank were spare.</summary>
    public SpoilingDraws WithoutSpares() => new(job, again.WithoutSpares(), tasks, model, chances);

    /// <summary>The courses with what is spoiled in each; as they are where nothing ever is.</summary>
    /// <param name="draws">Drawn times of the tasks.</param>
    public TimeDraws On(TimeDraws draws)
    {
        if (groups.Length == 0)
        {
            return draws;
        }

        var reworks = new Rework[draws.Trials][];
        var shares = (draws.Trials + AtATime - 1) / AtATime;
        Parallel.For(0, shares, Cores.OfTheCaller, share =>
        {
            for (var trial = share * AtATime; trial < Math.Min(draws.Trials, (share + 1) * AtATime); trial++)
            {
                reworks[trial] = Course(draws, trial);
            }
        });
        return draws with { Reworks = reworks };
    }

    /// <summary>The courses with the time that one more blank of a part takes at saw and planes.</summary>
    /// <param name="part">One of <see cref="PartsToCome"/>.</param>
    /// <param name="draws">Drawn times of the tasks.</param>
    public TimeDraws WithTheMakingOf(string part, TimeDraws draws)
    {
        var factors = tasks.Select(_ => 1.0).ToArray();
        foreach (var (task, share) in again.MakingOf(part))
        {
            factors[tasks.First(one => one.Name == task).Id] += share;
        }

        return draws with { Minutes = [.. draws.Minutes.Select(trial => trial.Zip(factors, (minutes, factor) => minutes * factor).ToArray())] };
    }

    private Rework[] Course(TimeDraws draws, int trial)
    {
        List<Rework>? found = null;
        foreach (var group in groups)
        {
            var seed = draws.Seed ^ group.Seed;
            if (ChanceStream.FirstShare(seed, trial) >= group.None)
            {
                var chance = new ChanceStream(seed, trial);
                Spoil(group, CountAt(group.AtMost, chance.NextShare()), chance, draws.Minutes[trial], found ??= []);
            }
        }

        return found is null ? [] : [.. found];
    }

    private static int CountAt(double[] atMost, double share)
    {
        var count = Array.FindIndex(atMost, one => share < one);
        return count < 0 ? atMost.Length - 1 : count;
    }

    private void Spoil(Group group, int count, ChanceStream chance, double[] minutes, List<Rework> found)
    {
        var spoiled = new HashSet<int>();
        while (spoiled.Count < count)
        {
            var piece = (int)(chance.NextShare() * group.Pieces);
            if (spoiled.Add(piece))
            {
                var task = group.TaskOf(piece);
                found.Add(ReworkOf(task, group.RunOf(piece), (chance.NextShare(), chance.NextNormal()), minutes, found));
            }
        }
    }

    // Both draws are made for every piece, needed or not, so that what follows in the stream is the same.
    private Rework ReworkOf(int task, int run, (double Share, double Deviate) drawn, double[] minutes, List<Rework> before)
    {
        var own = minutes[task] / run;
        if (mended[task] is { } mending)
        {
            return new(task, task, null, own + mending.Work.Minutes(minutes), mending.Wait);
        }

        if (PieceAt(lost[task], drawn.Share) is not { } piece)
        {
            return new(task, task, null, own, Duration.Zero);
        }

        var doneIn = piece.DoneIn < 0 ? task : piece.DoneIn;
        return again.TimberFor(piece.Part, before.Count(one => one.Part == piece.Part)) switch
        {
            SpareTimber.SpareBlank => new(task, doneIn, piece.Part, piece.IsBeyondSize ? own + piece.Joints.Minutes(minutes) : 0, Duration.Zero),
            SpareTimber.LeftOver => new(task, doneIn, piece.Part, own + piece.All.Minutes(minutes), Duration.Zero),
            SpareTimber.NewTimber => new(task, doneIn, piece.Part, own + piece.All.Minutes(minutes), NewTimber(drawn.Deviate)),
            _ => throw new UnreachableException(),
        };
    }

    /// <summary>How long new timber takes to come in a course; whole days where it never comes sooner, as it is fetched or brought on one.</summary>
    private Duration NewTimber(double deviate)
    {
        var minutes = GuessedWait.Minutes(again.NewTimber, deviate);
        var grain = again.NewTimber.Low >= Duration.FromDays(1) ? Duration.FromDays(1) : Duration.FromHours(1);
        return grain * Math.Ceiling(minutes / grain.TotalMinutes);
    }

    private static Lost? PieceAt(Lost[] pieces, double share)
    {
        foreach (var piece in pieces)
        {
            share -= piece.Share;
            if (share < 0)
            {
                return piece;
            }
        }

        return pieces.Length == 0 ? null : pieces[^1];
    }

    /// <summary>All pieces of one operation and method, one task's after another's.</summary>
    private sealed record Group(int Seed, double Expected, double[] AtMost, int[] Tasks, int[] Runs, int[] Ends)
    {
        public double None { get; } = AtMost[0];

        public int Pieces => Ends[^1];

        public static Group Of(string name, SpoilingChance chance, (int Task, int Run)[] runs)
        {
            var ends = new int[runs.Length];
            var pieces = 0;
            for (var at = 0; at < runs.Length; at++)
            {
                ends[at] = pieces += runs[at].Run;
            }

            return new(SeedWords.Mix(0, name), chance.Mean * pieces, BetaBinomial.AtMost(chance.Alpha, chance.Beta, pieces), [.. runs.Select(one => one.Task)], [.. runs.Select(one => one.Run)], ends);
        }

        public int TaskOf(int piece) => Tasks[PlaceOf(piece)];

        public int RunOf(int piece) => Runs[PlaceOf(piece)];

        private int PlaceOf(int piece) => Array.FindIndex(Ends, end => piece < end);
    }

    /// <summary>A piece that may be lost in a task, with what was done on it.</summary>
    private sealed record Lost(string Part, double Share, bool IsBeyondSize, int DoneIn, DoneWork All, DoneWork Joints)
    {
        public static Lost Of(LostPiece piece, Dictionary<string, int> places, RateModel model) => new(
            piece.Part,
            piece.Share,
            piece.IsBeyondSize,
            piece.Before.Where(one => one.Task.IsSplittable && places.ContainsKey(one.Task.Name)).OrderBy(one => one.Task.Stage).ThenBy(one => one.Task.Id).Select(one => places[one.Task.Name]).LastOrDefault(-1),
            DoneWork.Of(piece.Before, places, model),
            DoneWork.Of([.. piece.Before.Where(one => one.Task.Stage == Stage.Joinery)], places, model));
    }

    /// <summary>What it takes until a task that failed can be done again, and how long it then sets once more.</summary>
    private sealed record Mended(DoneWork Work, Duration Wait)
    {
        public static Mended Of(Mending mending, Dictionary<string, int> places, RateModel model)
        {
            var again = DoneWork.Of(mending.Again, places, model);
            return new(again with { Known = again.Known + mending.Work.Sum(work => model.BeliefOf(work).Median.Minutes) }, mending.Wait);
        }
    }

    /// <summary>Shares of tasks that are drawn, and minutes of those that are done and would take as long again.</summary>
    private sealed record DoneWork(double Known, (int Task, double Share)[] Drawn)
    {
        public static DoneWork Of(IReadOnlyList<DoneBefore> before, Dictionary<string, int> places, RateModel model) => new(
            before.Where(one => !places.ContainsKey(one.Task.Name)).Sum(one => one.Share * model.LikelyTime(one.Task).Minutes),
            [.. before.Where(one => places.ContainsKey(one.Task.Name)).Select(one => (places[one.Task.Name], one.Share))]);

        public double Minutes(double[] course)
        {
            var minutes = Known;
            foreach (var (task, share) in Drawn)
            {
                minutes += share * course[task];
            }

            return minutes;
        }
    }
}
