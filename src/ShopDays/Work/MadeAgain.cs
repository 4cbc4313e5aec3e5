using ShopDays.Layouts;
using ShopDays.Parts;

namespace ShopDays.Work;

/// <summary>Where a piece to be made again comes from.</summary>
public enum SpareTimber
{
    /// <summary>It is there: an extra blank, which went through saw and planes with the others.</summary>
    SpareBlank,

    /// <summary>An offcut of the layout, or a board that it leaves, is large enough.</summary>
    LeftOver,

    /// <summary>Nothing that is left would do: new timber has to be found.</summary>
    NewTimber,
}

/// <summary>
/// What it takes to make a piece again that is spoiled on its way: the work that has been done on it up to then, and timber
/// to do it on. A glue-up or a coat that fails loses no piece: see <see cref="Mending"/>.
/// </summary>
/// <remarks>
/// All that was done on a piece is its share of each task that comes before, by the number of pieces of that task; of joints
/// the mean of its part. A spare blank is sawn and planed with the others, so that only joints have to be cut again. One
/// piece of a part is looked for among what is left; that two parts might want the same offcut is left out.
/// </remarks>
public sealed class MadeAgain
{
    /// <summary>The row of the table of waits that says how long new timber takes.</summary>
    public const string NewTimberRest = "new timber for a spoiled part";

    private readonly IReadOnlyDictionary<string, IReadOnlyList<LostPiece>> byTask;
    private readonly IReadOnlyDictionary<string, PartTimber> timber;
    private readonly IReadOnlyDictionary<string, Mending> mendings;

    private MadeAgain(IReadOnlyDictionary<string, IReadOnlyList<LostPiece>> byTask, IReadOnlyDictionary<string, PartTimber> timber, IReadOnlyDictionary<string, Mending> mendings, WaitGuess newTimber)
    {
        (this.byTask, this.timber, this.mendings) = (byTask, timber, mendings);
        NewTimber = newTimber;
    }

    /// <summary>What is known of a job whose pieces cannot be told one by one: what is spoiled is done again, and that is all.</summary>
    public static MadeAgain Unknown { get; } = new(new Dictionary<string, IReadOnlyList<LostPiece>>(), new Dictionary<string, PartTimber>(), new Dictionary<string, Mending>(), default);

    /// <summary>How long new timber may be waited for, by the clock; nothing where neither the shop nor the table of waits says.</summary>
    public WaitGuess NewTimber { get; }

    /// <summary>The parts that boards yield, by name.</summary>
    public IReadOnlyCollection<string> Parts => [.. timber.Keys];

    /// <summary>Works it out.</summary>
    /// <param name="graph">All tasks of the job, those that are done among them.</param>
    /// <param name="job">The job.</param>
    /// <param name="layout">Where its parts come from.</param>
    /// <param name="operations">The operations.</param>
    /// <param name="waits">The table of waits.</param>
    /// <param name="newTimber">How long new timber takes to come in this shop; null for the table's range.</param>
    public static MadeAgain Of(TaskGraph graph, Job job, Layout layout, OperationCatalogue operations, WaitTable waits, WaitGuess? newTimber = null)
    {
        var timber = job.Parts
            .Where(part => layout.Boards.Any(board => board.Blanks.Any(placed => placed.Blank.Part.Name == part.Name)))
            .ToDictionary(part => part.Name, part => PartTimber.Of(part, job, layout, graph), StringComparer.Ordinal);
        var before = graph.Precedences.ToLookup(one => one.After, one => one.Before);
        var mendings = Mending.Of(graph, job, operations);
        var byTask = graph.Tasks
            .Where(task => !mendings.ContainsKey(task.Name) && task.Timing is TaskTiming.ByOperation && task.Pieces.Any(piece => timber.ContainsKey(piece.Of)))
            .ToDictionary(task => task.Name, task => LostIn(task, [.. Earlier(task.Id).Select(id => graph.Tasks[id])], timber), StringComparer.Ordinal);
        return new(byTask, timber, mendings, newTimber ?? (waits.TryFindRest(NewTimberRest, out var rest) ? new(rest.Low, rest.Likely, rest.High) : default));

        HashSet<int> Earlier(int task)
        {
            var found = new HashSet<int>();
            var next = new Stack<int>([task]);
            while (next.TryPop(out var one))
            {
                foreach (var earlier in before[one].Where(found.Add))
                {
                    next.Push(earlier);
                }
            }

            return found;
        }
    }

    /// <summary>How many blanks a part has beyond those that it needs, sawn or to be sawn.</summary>
    public int SparesOf(string part) => timber[part].Spares;

    /// <summary>Whether a piece of a part could be sawn out of what the layout leaves.</summary>
    public bool IsLeftOver(string part) => timber[part].IsLeftOver;

    /// <summary>The same job with one more blank of a part.</summary>
    public MadeAgain WithASpare(string part) => new(
        byTask,
        new Dictionary<string, PartTimber>(timber, StringComparer.Ordinal) { [part] = timber[part] with { Spares = timber[part].Spares + 1 } },
        mendings,
        NewTimber);

    /// <summary>The same job as if no blank were spare.</summary>
    public MadeAgain WithoutSpares() => new(byTask, timber.ToDictionary(one => one.Key, one => one.Value with { Spares = 0 }, StringComparer.Ordinal), mendings, NewTimber);

    /// <summary>What one more blank of a part takes at saw and planes: tasks by name, each with the share of it that one piece is.</summary>
    internal IReadOnlyList<(string Task, double Share)> MakingOf(string part) => timber[part].Making;

    /// <summary>The pieces that may be lost in a task, one of them at a time; none where its pieces are not known.</summary>
    internal IReadOnlyList<LostPiece> LostIn(string task) => byTask.GetValueOrDefault(task, []);

    /// <summary>How a task that fails is mended; null where it loses a piece instead, or is just done again.</summary>
    internal Mending? MendingOf(string task) => mendings.GetValueOrDefault(task);

    /// <summary>Where a piece of a part comes from when so many of it have been spoiled before.</summary>
    internal SpareTimber TimberFor(string part, int spoiledBefore) => timber[part] switch
    {
        var one when spoiledBefore < one.Spares => SpareTimber.SpareBlank,
        var one when one.IsLeftOver && spoiledBefore == one.Spares => SpareTimber.LeftOver,
        _ => SpareTimber.NewTimber,
    };

    private static IReadOnlyList<LostPiece> LostIn(ShopTask task, List<ShopTask> earlier, Dictionary<string, PartTimber> timber)
    {
        var ofParts = task.Pieces.Where(piece => timber.ContainsKey(piece.Of)).GroupBy(piece => piece.Of, StringComparer.Ordinal).ToList();
        var all = ofParts.Sum(pieces => pieces.Count());
        return
        [
            .. ofParts.Select(pieces => new LostPiece(
                pieces.Key,
                (double)pieces.Count() / all,
                task.Stage >= Stage.Joinery,
                [.. earlier.Where(IsMaking).Select(one => new DoneBefore(one, ShareOf([.. pieces], one))).Where(one => one.Share > 0)])),
        ];
    }

    private static bool IsMaking(ShopTask task) => task.Stage is Stage.Sawing or Stage.Dimensioning or Stage.Joinery;

    /// <summary>The share of a task that was spent on one of some pieces, on average.</summary>
    internal static double ShareOf(IReadOnlyList<Piece> pieces, ShopTask task) => task.Pieces.Count == 0
        ? 0
        : pieces.Average(piece => (double)task.Pieces.Count(other => other.Of == piece.Of && other.Number == piece.Number && (piece.Strip == 0 || other.Strip == piece.Strip)) / task.Pieces.Count);
}

/// <summary>A piece that may be lost in a task.</summary>
/// <param name="Part">The part that it is of.</param>
/// <param name="Share">How often it is a piece of that part, above 0 up to 1.</param>
/// <param name="IsBeyondSize">Whether it has its size by then, as a spare blank has.</param>
/// <param name="Before">What was done on it before, with the share of each task that one piece is.</param>
internal sealed record LostPiece(string Part, double Share, bool IsBeyondSize, IReadOnlyList<DoneBefore> Before);

/// <summary>Work that was done on a piece.</summary>
/// <param name="Task">The task.</param>
/// <param name="Share">The share of it that was spent on the piece, above 0 up to 1.</param>
internal readonly record struct DoneBefore(ShopTask Task, double Share);
