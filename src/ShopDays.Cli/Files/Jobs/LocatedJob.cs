using ShopDays.Measures;
using ShopDays.Parts;

namespace ShopDays.Cli.Files.Jobs;

/// <summary>A job without a mistake in its file, with the places of what is named in it.</summary>
internal sealed record LocatedJob
{
    /// <summary>The job.</summary>
    public required Job Job { get; init; }

    /// <summary>Where its things are named, for what is found wrong later.</summary>
    public required JobPlaces Places { get; init; }

    /// <summary>The unit of a length without one, in this job.</summary>
    public required LengthUnit Units { get; init; }

    /// <summary>How lengths of this job are printed.</summary>
    public required LengthFormat Format { get; init; }
}

/// <summary>Where the things of a job are named.</summary>
internal sealed class JobPlaces
{
    private readonly Dictionary<string, Place> things = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Place> boards = new(StringComparer.Ordinal);
    private readonly List<Place> joints = [];
    private readonly List<Place> finishes = [];

    /// <summary>Makes the places of a job.</summary>
    /// <param name="job">Where the job is named.</param>
    public JobPlaces(Place job) => Job = job;

    /// <summary>Where the job is named.</summary>
    public Place Job { get; }

    /// <summary>Where a part, glue-up, free task or decision is named; the job's own place for anything else.</summary>
    public Place Of(string name) => things.GetValueOrDefault(name, Job);

    /// <summary>Where the stock line of a board is named, by the board's mark or the line's name.</summary>
    public Place OfBoard(string name) => boards.GetValueOrDefault(name, Job);

    /// <summary>Where a joint is written, by its place in the job's list, from 0.</summary>
    public Place OfJoint(int index) => joints[index];

    /// <summary>Where a finish is written, by its place in the job's list, from 0.</summary>
    public Place OfFinish(int index) => finishes[index];

    internal void Add(string name, Place place) => things.TryAdd(name, place);

    internal void AddBoard(string name, Place place) => boards.TryAdd(name, place);

    internal void AddJoint(Place place) => joints.Add(place);

    internal void AddFinish(Place place) => finishes.Add(place);
}

/// <summary>What the files of a shop may name that stands in the program's own tables.</summary>
/// <param name="Species">The timbers.</param>
/// <param name="Operations">The operations, the shop's own among them.</param>
/// <param name="Waits">Adhesives and finishes.</param>
/// <param name="Today">The date at the shop, for what may not lie ahead; null where it is not known.</param>
internal sealed record KnownNames(SpeciesTable Species, Work.OperationCatalogue Operations, Work.WaitTable Waits, NodaTime.LocalDate? Today = null);
