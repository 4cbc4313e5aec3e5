using NodaTime;
using ShopDays.Measures;
using ShopDays.Parts;

namespace ShopDays.Work;

/// <summary>Where in the making of a piece a task stands, in the usual order.</summary>
public enum Stage
{
    /// <summary>Drawings, letters, orders: before any timber is touched.</summary>
    Drawing,

    /// <summary>Timber is bought or fetched.</summary>
    BuyingTimber,

    /// <summary>Parts are chosen and chalked out on the boards.</summary>
    Layout,

    /// <summary>Sawing out.</summary>
    Sawing,

    /// <summary>Flattening, edges, thickness, width, ends.</summary>
    Dimensioning,

    /// <summary>Joints.</summary>
    Joinery,

    /// <summary>Dry fits and glue-ups.</summary>
    Assembly,

    /// <summary>Cleaning up, smoothing, coats.</summary>
    Finish,

    /// <summary>Hardware, packing, delivery.</summary>
    Delivery,
}

/// <summary>What the time of a task depends on.</summary>
public abstract record TaskTiming
{
    private TaskTiming()
    {
    }

    /// <summary>Timed by an operation of the catalogue.</summary>
    public sealed record ByOperation : TaskTiming
    {
        /// <summary>The operation.</summary>
        public required Operation Operation { get; init; }

        /// <summary>The method, one of the operation's.</summary>
        public required Method Method { get; init; }

        /// <summary>How much, in the operation's unit, above 0.</summary>
        public required double Quantity { get; init; }

        /// <summary>How many setups the task takes, 0 or more.</summary>
        public required double Setups { get; init; }

        /// <summary>
        /// Known time beside the work itself, its rest included: moves of a long piece between its passes, irons honed at
        /// the start. Zero or more.
        /// </summary>
        public WorkTime Besides { get; init; }

        /// <summary>How many like pieces are done in this run, at least 1: later ones go faster.</summary>
        public int Run { get; init; } = 1;

        /// <summary>
        /// How many like pieces the whole job has, of which this run is a part, at least 1; the gain of a batch is
        /// shared by its runs.
        /// </summary>
        public int Batch { get; init; } = 1;

        /// <summary>
        /// Whether the same pieces are worked on further in a later pass: a piece has one chance of being spoiled in all the
        /// passes together, and it is counted with the last.
        /// </summary>
        public bool MorePassesFollow { get; init; }

        /// <summary>The properties of the work: inches, lbf for hardness; a missing one stands at its reference.</summary>
        public IReadOnlyDictionary<Covariate, double> Covariates { get; init; } = new Dictionary<Covariate, double>();

        /// <summary>Factor on time beyond rates: wild grain, blending of passes; 1 for none.</summary>
        public double Factor { get; init; } = 1;
    }

    /// <summary>Timed by the maker's guess.</summary>
    public sealed record ByGuess(TimeGuess Guess) : TaskTiming;
}

/// <summary>One thing to do: some pieces taken through one operation, or work of the maker's own.</summary>
public sealed record ShopTask
{
    /// <summary>Its place in the graph's list of tasks, from 0; precedences speak of tasks by it.</summary>
    public required int Id { get; init; }

    /// <summary>What is done, as it stands on a day sheet, for example <c>rip A1 into 3</c>; one of a kind in its job.</summary>
    public required string Name { get; init; }

    /// <summary>Where in the making it stands.</summary>
    public required Stage Stage { get; init; }

    /// <summary>What its time depends on.</summary>
    public required TaskTiming Timing { get; init; }

    /// <summary>The parts, panels or glue-ups that it works on; empty for boards and free tasks.</summary>
    public IReadOnlyList<string> Parts { get; init; } = [];

    /// <summary>The pieces that it works on, as far as they are known one by one: of a cut those that it frees, spare ones among them.</summary>
    internal IReadOnlyList<Piece> Pieces { get; init; } = [];

    /// <summary>The board that it works on; null for none.</summary>
    public string? Board { get; init; }

    /// <summary>How hard it is.</summary>
    public required WorkClass WorkClass { get; init; }

    /// <summary>Whether it is barred in quiet hours.</summary>
    public bool IsNoisy { get; init; }

    /// <summary>Whether it fills the air with dust: the saw, the plane, sanding, machines; it stops while a coat is wet.</summary>
    public bool IsDusty { get; init; }

    /// <summary>How long after its end dusty work stays away, in clock time; zero for all but coats of finish.</summary>
    public Duration DustFreeAfter { get; init; }

    /// <summary>Whether it is written by the maker as it stands, under <c>work</c>, and so can be written as several smaller ones.</summary>
    public bool IsOwn { get; init; }

    /// <summary>The glue or coat that sets after it, in a shop with nights of its own; null for all other tasks, and in a heated shop.</summary>
    public Setting? Sets { get; init; }

    /// <summary>How long after its end it must not get too cold for what sets, at 20 degrees C; where it is colder, accordingly longer.</summary>
    public Duration SetsFor { get; init; }

    /// <summary>Whether it may go on in a later session; otherwise it ends in the session in which it begins.</summary>
    public bool IsSplittable { get; init; }

    /// <summary>The least piece of it that is worth beginning or leaving.</summary>
    public WorkTime LeastUseful { get; init; }

    /// <summary>People it takes, at least 1.</summary>
    public int Crew { get; init; } = 1;

    /// <summary>The first date on which it may begin; null for any.</summary>
    public LocalDate? NotBefore { get; init; }

    /// <summary>When it begins by agreement with somebody else; null when that is the shop's own affair. It is then done in one go.</summary>
    public AppointedTime? Appointed { get; init; }

    /// <summary>Clamps held from its beginning until the waits that follow it and hold them end.</summary>
    public IReadOnlyList<ClampsHeld> Clamps { get; init; } = [];

    /// <summary>Floor that is taken from its beginning until the waits that follow it and hold it end; zero for none.</summary>
    public Area Floor { get; init; }

    /// <summary>The heaviest single thing that is lifted in it; zero when it does not matter.</summary>
    public Mass Lift { get; init; }

    /// <summary>The kinds of work whose cautions go with it.</summary>
    public IReadOnlyList<string> Cautions { get; init; } = [];

    /// <summary>Remarks for the day sheet: depth to take off, setting of the gauge, where the pieces lie.</summary>
    public string Note { get; init; } = "";

    /// <summary>Edges that are honed in it; null for none.</summary>
    public Honing? Honed { get; init; }

    /// <summary>The edge that it sharpens, as work of its own; null for none.</summary>
    public CuttingEdge? Sharpens { get; init; }

    /// <summary>What tells work apart that shares one set-up of the bench: operation and method; free tasks stand alone.</summary>
    public string SetupKey => Timing is TaskTiming.ByOperation by ? by.Operation.Name + ", " + by.Method.Name : Name;
}

/// <summary>A wait in clock time, nights included.</summary>
/// <param name="Duration">How long, zero or more; of glue and coats at 20 degrees C.</param>
/// <param name="Reason">Why, for example <c>liquid hide glue sets in the clamps</c>.</param>
/// <param name="HoldsClamps">Whether the clamps of the task before it stay on.</param>
/// <param name="HoldsBench">Whether a bench stays taken.</param>
/// <param name="HoldsFloor">Whether the floor of the task before it stays taken.</param>
public sealed record Wait(Duration Duration, string Reason, bool HoldsClamps = false, bool HoldsBench = false, bool HoldsFloor = false)
{
    /// <summary>The glue or coat whose setting is waited for, in a shop with nights of its own: the wait is then longer the colder they are. Null for all other waits, and in a heated shop.</summary>
    public Setting? Sets { get; init; }

    /// <summary>When it is over.</summary>
    /// <param name="start">When it begins.</param>
    public ZonedDateTime EndFrom(ZonedDateTime start) => Sets?.EndFrom(start, Duration) ?? start + Duration;

    /// <summary>What the nights make of it; null where they change nothing.</summary>
    /// <param name="start">When it begins.</param>
    public SlowedWait? SlowedFrom(ZonedDateTime start) => Sets is { } setting && Duration > Duration.Zero ? SlowedWait.Of(setting, start, Duration) : null;
}

/// <summary>One task must come before another.</summary>
/// <param name="Before">The id of the task that comes first.</param>
/// <param name="After">The id of the task that comes later.</param>
/// <param name="Reason">Why, in words that can be printed.</param>
/// <param name="Wait">A wait between the two; null for none.</param>
/// <param name="SameSession">Whether the later task must begin in the session in which the earlier ends.</param>
public sealed record Precedence(int Before, int After, string Reason, Wait? Wait = null, bool SameSession = false)
{
    /// <summary>Whether it only keeps a plan in good order: where the two are done the other way round, nothing has been passed over.</summary>
    public bool IsForThePlan { get; init; }
}
