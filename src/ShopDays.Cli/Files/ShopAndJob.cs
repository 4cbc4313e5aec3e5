using NodaTime;
using ShopDays.Cli.Files.Jobs;
using ShopDays.Cli.Files.Variants;
using ShopDays.Layouts;
using ShopDays.Parts;
using ShopDays.Work;

namespace ShopDays.Cli.Files;

/// <summary>A shop and one of its jobs, all their files read without a mistake.</summary>
internal sealed record ShopAndJob
{
    /// <summary>The shop's folder.</summary>
    public required ShopFolder Folder { get; init; }

    /// <summary>The job's file, named from the shop's folder.</summary>
    public required string JobFileName { get; init; }

    /// <summary>What the job is called in the shop's log: its file's name without ending.</summary>
    public string LogName => Path.GetFileNameWithoutExtension(JobFileName);

    /// <summary>The name of the piece; of two pieces with one name, with the names of their files.</summary>
    /// <param name="all">The jobs among which it must be told apart, itself among them.</param>
    public string TitleAmong(IEnumerable<ShopAndJob> all) =>
        all.Count(one => string.Equals(one.Job.Name, Job.Name, StringComparison.Ordinal)) > 1 ? $"{Job.Name} ({LogName})" : Job.Name;

    /// <summary>All boards of the job's stock, sawn or not.</summary>
    public required IReadOnlyList<Board> Stock { get; init; }

    /// <summary>The same as it was before any board was sawn.</summary>
    public ShopAndJob BeforeSawing => this with { SawnBoards = [], Located = Located with { Job = Job with { Boards = Stock } } };

    /// <summary>The same for another piece: what it waits for from others is still to be asked for.</summary>
    public ShopAndJob AskedAnew => this with { Located = Located with { Job = Job with { Decisions = [.. Job.Decisions.Select(one => one with { Asked = null, Arrived = null })] } } };

    /// <summary>Where it is said which boards are sawn, whether or not there is such a file yet.</summary>
    public string SawnPath => Sawn.SawnFile.PathFor(Path.Combine(Folder.Path, JobFileName));

    /// <summary>The same place, named from the shop's folder.</summary>
    public string SawnName => Sawn.SawnFile.PathFor(JobFileName);

    /// <summary>The boards that are sawn already; those of the job are what is left, offcuts kept among them.</summary>
    public required IReadOnlyList<BoardLayout> SawnBoards { get; init; }

    /// <summary>The shop.</summary>
    public required Shop Shop { get; init; }

    /// <summary>The job, with the places of what is named in it.</summary>
    public required LocatedJob Located { get; init; }

    /// <summary>The job.</summary>
    public Job Job => Located.Job;

    /// <summary>The operations, the shop's own among them.</summary>
    public required OperationCatalogue Operations { get; init; }

    /// <summary>The timbers.</summary>
    public required SpeciesTable Species { get; init; }

    /// <summary>Adhesives, finishes and rests.</summary>
    public required WaitTable Waits { get; init; }

    /// <summary>Reads the files of a shop and one job; the mistakes of all of them come together.</summary>
    /// <param name="job">The job as typed: a path or a name.</param>
    /// <param name="currentFolder">Where the maker stands.</param>
    /// <param name="now">The moment; null where none of it matters.</param>
    /// <exception cref="FileTroubleException">A file is missing or cannot be read.</exception>
    public static ShopAndJobReading Read(string job, string currentFolder, Instant? now = null)
    {
        var (folder, jobPath) = ShopFolder.FindJob(job, currentFolder);
        var findings = new Findings();
        return Read(folder, jobPath, RatesFile.OperationsIn(folder, findings), now, findings, null);
    }

    /// <summary>Reads the same files again with something done otherwise.</summary>
    /// <param name="variant">What.</param>
    /// <param name="now">The moment; null where none of it matters.</param>
    /// <exception cref="FileTroubleException">A file is missing or cannot be read.</exception>
    public ShopAndJobReading Otherwise(Variant variant, Instant? now) => Read(Folder, Path.Combine(Folder.Path, JobFileName), Operations, now, new(), variant);

    private static ShopAndJobReading Read(ShopFolder folder, string jobPath, OperationCatalogue operations, Instant? now, Findings findings, Variant? variant)
    {
        var shop = ShopFile.Read(folder.Read(ShopFolder.ShopFileName), operations, findings, variant?.Shop);
        var source = folder.Read(jobPath);
        LocalDate? today = now is { } moment && shop.Shop is { } there ? moment.InZone(there.Place.Zone).Date : null;
        var located = JobFile.Read(source, shop, new(BuiltIn.Species, operations, BuiltIn.Waits, today), findings, variant?.Job);
        var sawnPath = Sawn.SawnFile.PathFor(jobPath);
        var sawn = located is not null && File.Exists(sawnPath) ? Sawn.SawnFile.Read(folder.Read(sawnPath), located, findings, today) : [];
        return findings.AreNone
            ? new(
                new ShopAndJob
                {
                    Folder = folder,
                    JobFileName = source.Name,
                    Shop = shop.Shop!,
                    Located = located! with { Job = located.Job with { Boards = SawnStock.Left(located.Job.Boards, sawn) } },
                    Stock = located.Job.Boards,
                    SawnBoards = sawn,
                    Operations = operations,
                    Species = BuiltIn.Species,
                    Waits = BuiltIn.Waits,
                },
                []) { Doubts = findings.Doubts }
            : new(null, findings.InOrder()) { Doubts = findings.Doubts };
    }
}

/// <summary>What reading a shop and a job gave: both, or mistakes.</summary>
/// <param name="Read">The shop and the job; null when there are mistakes.</param>
/// <param name="Findings">The mistakes of all files, in order.</param>
internal sealed record ShopAndJobReading(ShopAndJob? Read, IReadOnlyList<Finding> Findings)
{
    /// <summary>What is likely to be a slip and can still be worked with.</summary>
    public IReadOnlyList<Finding> Doubts { get; init; } = [];
}
