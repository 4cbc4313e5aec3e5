using System.Globalization;
using NodaTime;
using ShopDays.Cli.Files;
using ShopDays.Cli.Paper;
using ShopDays.Measures;
using ShopDays.Parts;
using ShopDays.Plans;
using ShopDays.Times;
using ShopDays.Work;

namespace ShopDays.Cli.Tests.Paper;

/// <summary>Plans made in the plainest way: one task after the other, each in the next session with room.</summary>
internal static class APlan
{
    private static readonly (string Verb, Stage Stage, double Minutes, bool Splits, WorkClass Class, string[] Cautions, string Note)[] Steps =
    [
        ("saw out", Stage.Sawing, 55, true, WorkClass.Heavy, ["edge tools", "heavy work"], "leave the line; start from the reference end"),
        ("plane to size", Stage.Dimensioning, 70, true, WorkClass.Heavy, ["edge tools", "heavy work"], "gauge 7/8\" from the face side; 3/16\" to come off the back"),
        ("joint", Stage.Joinery, 95, true, WorkClass.Medium, ["edge tools", "noise", "eyes and feet"], ""),
        ("glue", Stage.Assembly, 40, false, WorkClass.Light, ["adhesives"], ""),
        ("varnish", Stage.Finish, 25, false, WorkClass.Light, ["oily rags", "solvents and finishes"], "thin coat, wipe off after 10 min"),
    ];

    public static PlanPaper Of(IReadOnlyList<Part> parts, Shop shop, Func<int, Board>? boardOf = null)
    {
        var layout = ALayout.Of(parts, boardOf ?? (number => ALayout.Board(number)));
        var job = new Job
        {
            Name = "Blanket chest with a lifting till",
            Start = new LocalDate(2027, 4, 6),
            Due = new LocalDate(2027, 7, 24),
            Parts = parts,
            Boards = [.. layout.Boards.Select(board => board.Board), ALayout.Board(layout.Boards.Count + 1)],
        };
        ShopTask[] tasks = [.. Steps.SelectMany(step => parts.Select(part => (step, part))).Select((both, id) => TaskOf(id, both.step, both.part))];
        var graph = new TaskGraph(tasks, Precedences(parts.Count), [], []);
        var times = tasks.Select(task => RangeOf(((TaskTiming.ByGuess)task.Timing).Guess)).ToList();
        var plan = Schedule(shop, job, graph, times);
        return new()
        {
            Shop = shop,
            Format = shop.Format,
            Job = job,
            Layout = layout,
            Graph = graph,
            Estimate = EstimateOf(times),
            TaskTimes = times,
            Plan = plan,
            Forecast = ForecastOf(plan, tasks),
            Cautions = [.. BuiltIn.Cautions.Where(caution => caution.Kind == "always" || Steps.Any(step => step.Cautions.Contains(caution.Kind)))],
            Remarks = [new Remark(RemarkKind.Lift, "A1", "board A1 weighs more than one person lifts here", "ask somebody in for the first morning")],
            Made = Instant.FromUtc(2027, 4, 1, 12, 30),
        };
    }

    public static IReadOnlyList<Part> Parts(int kinds) =>
    [
        .. Enumerable.Range(0, kinds).Select(order => ALayout.Part(
            kinds == 1 ? "shelf" : string.Create(CultureInfo.InvariantCulture, $"{Names[order % Names.Length]} {order + 1}"),
            1 + (order % 3),
            14 + (order * 7 % 30),
            1.75 + (order % 4 * 1.25))),
    ];

    private static string[] Names => ["front rail", "stile", "muntin", "till bottom", "lid batten", "corner post", "panel"];

    private static ShopTask TaskOf(int id, (string Verb, Stage Stage, double Minutes, bool Splits, WorkClass Class, string[] Cautions, string Note) step, Part part) => new()
    {
        Id = id,
        Name = $"{step.Verb} {part.Name}",
        Stage = step.Stage,
        Timing = new TaskTiming.ByGuess(new TimeGuess(WorkTime.FromMinutes(step.Minutes * 0.7), WorkTime.FromMinutes(step.Minutes), WorkTime.FromMinutes(step.Minutes * 1.8))),
        WorkClass = step.Class,
        IsSplittable = step.Splits,
        Parts = [part.Name],
        Cautions = step.Cautions,
        Note = step.Note,
    };

    private static List<Precedence> Precedences(int parts) =>
    [
        .. Enumerable.Range(0, parts * (Steps.Length - 1)).Select(id => new Precedence(id, id + parts, Steps[(id / parts) + 1].Verb + " comes after " + Steps[id / parts].Verb)),
    ];

    private static TimeRange RangeOf(TimeGuess guess) => new(guess.Low, guess.Likely, guess.Likely * 1.4, guess.High, guess.Likely * 1.1);

    private static Plan Schedule(Shop shop, Job job, TaskGraph graph, List<TimeRange> times)
    {
        List<PlannedSession> sessions = [];
        List<PlannedWait> waits = [];
        using var next = AShop.Sessions(shop, job.Start).GetEnumerator();
        next.MoveNext();
        List<PlannedWork> work = [];
        var at = next.Current.WorkStart;
        void Turn()
        {
            if (work.Count > 0)
            {
                sessions.Add(new(next.Current, work));
            }

            work = [];
            next.MoveNext();
            at = next.Current.WorkStart;
        }

        foreach (var task in graph.Tasks)
        {
            var left = times[task.Id].P50.Minutes;
            var first = true;
            while (left > 0)
            {
                var room = (next.Current.WorkEnd - at).TotalMinutes;
                if (room < (task.IsSplittable ? Math.Min(15, left) : left))
                {
                    Turn();
                    continue;
                }

                var taken = Math.Min(left, room);
                var end = at.PlusMinutes((int)taken);
                work.Add(new() { Order = "the job", Task = task, Worker = next.Current.Worker, Start = at, End = end, HandsOn = WorkTime.FromMinutes(taken), Changeover = WorkTime.Zero, IsFirstPiece = first, IsLastPiece = taken >= left });
                (left, at, first) = (left - taken, end, false);
            }

            if (task.Stage == Stage.Assembly)
            {
                waits.Add(new("the job", task, at, at.PlusHours(16), "liquid hide glue sets in the clamps"));
            }

            if (task.Stage == Stage.Finish)
            {
                waits.Add(new("the job", task, at, at.PlusHours(60), "wiping varnish dries before the next coat"));
            }
        }

        Turn();
        var begin = job.Start.AtStartOfDayInZone(shop.Place.Zone);
        return new()
        {
            Sessions = sessions,
            Waits = [new("the job", null, begin, begin.PlusHours(120), "the client approves the drawing"), .. waits],
            Begin = begin,
            Finish = waits[^1].End,
            Finishes = [waits[^1].End],
            LowerBound = new(waits[^1].End.PlusHours(-72), "the shop is open for 42 h by then, and the work takes 41 h 20 min"),
            ShopDays = sessions.Select(session => session.Session.Date).Distinct().Count(),
            Changeovers = 0,
            Schedules = 1,
        };
    }

    private static JobEstimate EstimateOf(List<TimeRange> times)
    {
        TimeRange Sum(double share) => new(
            WorkTime.FromMinutes(times.Sum(time => time.P10.Minutes) * share),
            WorkTime.FromMinutes(times.Sum(time => time.P50.Minutes) * share),
            WorkTime.FromMinutes(times.Sum(time => time.P80.Minutes) * share),
            WorkTime.FromMinutes(times.Sum(time => time.P90.Minutes) * share),
            WorkTime.FromMinutes(times.Sum(time => time.Mean.Minutes) * share));
        return new() { HandsOn = Sum(1), Heavy = Sum(0.4), Operations = [], Tasks = times.Count, Waits = Duration.FromDays(9), Seed = 7, Draws = 2000 };
    }

    private static FinishForecast ForecastOf(Plan plan, ShopTask[] tasks)
    {
        // Finishes thin out towards the late end, as they do in life; only sessions' dates come about.
        Instant[] finishes = [.. Enumerable.Range(1, 400).Select(trial => plan.Finish.ToInstant() + Duration.FromDays(((int)(6 * Math.Pow(trial / 200.0, 2)) / 2 * 2) - 4))];
        ZonedDateTime At(double share) => finishes[(int)(share * (finishes.Length - 1))].InZone(plan.Finish.Zone);
        return new()
        {
            P50 = At(0.5),
            P80 = At(0.8),
            P90 = At(0.9),
            ChanceOfDue = 0.87,
            Deciding = [.. tasks.Take(3).Select((task, order) => new DecidingTask("the job", task, 0.3 / (order + 1), 0.6))],
            Finishes = finishes,
            Trials = 400,
            Unfinished = 0,
            Overruns = 3,
            Seed = 7,
        };
    }
}
