using ShopDays.Cli.Files.Yaml;
using ShopDays.Parts;
using ShopDays.Work;

namespace ShopDays.Cli.Files.Jobs;

/// <summary>Reads <c>jobs/NAME.yaml</c>.</summary>
internal static class JobFile
{
    private const string Holds = "the keys of a job, such as job, start, stock and parts";
    private const int HighestPriority = 9;

    private static readonly (string Word, OrderState State)[] States = [("asked", OrderState.Asked), ("in hand", OrderState.InHand), ("set aside", OrderState.SetAside), ("delivered", OrderState.Delivered)];

    /// <summary>Reads a job file.</summary>
    /// <param name="source">The file.</param>
    /// <param name="shop">What the shop file said.</param>
    /// <param name="known">What it may name.</param>
    /// <param name="findings">Where mistakes go.</param>
    /// <param name="otherwise">What a variant says instead; null for nothing.</param>
    /// <returns>The job; null when its file has mistakes.</returns>
    public static LocatedJob? Read(SourceFile source, ShopReading shop, KnownNames known, Findings findings, YamlMap? otherwise = null)
    {
        var before = findings.Count;
        var root = Variants.Overlay.On(YamlFile.Read(source.Name, source.Bytes, Holds, findings), otherwise, findings);
        if (root is null || Section.Open(root, "a job", shop.Reading with { Findings = findings }) is not { } section)
        {
            return null;
        }

        // The figures of all other keys depend on these.
        SharedKeys.ReadUnits(section, areRequired: false);
        var name = section.Required("job", Values.Name("the name of the piece"), "the name of the piece");
        var places = new JobPlaces(name.Place);
        var start = section.Required("start", Values.Date, "the first day of work, such as 2027-03-14");
        var due = section.Optional("due", Values.Date);
        due = due.Unless(findings, date => start.IsRead && date < start.Value ? JobMistakes.DueBeforeStart(due.Place, date, start.Value) : null);

        var priority = section.Optional("priority", Values.Whole("a priority", 1, HighestPriority), 1);
        var state = section.Optional("status", Values.Choice("a status of a job", States), OrderState.InHand);
        var names = new JobNames(places, findings);
        var stockReader = new StockReader(known.Species, places, known.Today);
        var partReader = new PartReader(known.Species, names);
        var jointReader = new JointReader(known.Operations, names, places);
        var assemblyReader = new AssemblyReader(known.Waits, names, places);
        var workReader = new WorkReader(known.Operations, names, start.IsRead ? start.Value : null);
        var decisionReader = new DecisionReader(names, known.Today);
        var stock = section.Lines("stock", "a stock line", stockReader.Read);
        var written = section.Lines("parts", "a part", partReader.Read);
        var imported = section.Optional("parts-from", PartsFrom(source, known.Species, names)).Or([]);
        var settling = new PartSettling(stock, stockReader.IsWhole && section.Has("stock"), section.Reading);
        var job = new Job
        {
            Name = name.Or(""),
            Start = start.Value,
            Due = due.IsRead ? due.Value : null,
            Priority = priority,
            State = state,
            Boards = [.. stock.SelectMany(line => line.Boards)],
            Parts = [.. written.Concat(imported).Select(settling.Settle).OfType<Part>()],
            Joints = section.Lines("joints", "a joint", jointReader.Read),
            GlueUps = section.Lines("glue-ups", "a glue-up", assemblyReader.ReadGlueUp),
            Finishes = section.Lines("finish", "a finish", assemblyReader.ReadFinish),
            Work = section.Lines("work", "a task", workReader.ReadTask),
            Decisions = section.Lines("decisions", "a decision", decisionReader.Read),
            Commission = CommissionReader.Read(section),
            Air = section.Reading.Air,
            Home = HomeReader.Read(section) ?? MoistureRange.HeatedRoom,
            Allowances = SharedKeys.Allowances(section, shop.Allowances),
            Methods = Merged(shop.Methods, SharedKeys.Methods(section, known.Operations)),
        };
        names.AreAllKnown &= section.AllLinesAreRead;
        names.LookUp();
        section.Close();
        CheckWhole(job, section, [.. written, .. imported], known.Operations, places, findings, before);
        return findings.Count == before
            ? new LocatedJob { Job = job, Places = places, Units = section.Reading.Units, Format = section.Reading.Format }
            : null;
    }

    private static void CheckWhole(Job job, Section section, IReadOnlyList<PartLine> parts, OperationCatalogue operations, JobPlaces places, Findings findings, int before)
    {
        if (!section.Has("stock") && (section.Has("parts") || section.Has("parts-from")))
        {
            findings.Add(JobMistakes.NoBoards(section.Place));
        }

        // What is empty, unknown or goes round may be so because of another mistake, which has been said.
        if (findings.Count > before)
        {
            return;
        }

        if (parts.Count > 0 && job.Boards.Count == 0)
        {
            findings.Add(JobMistakes.NoBoards(section.Place));
        }
        else if (parts.Count == 0 && job.Work.Count == 0)
        {
            findings.Add(JobMistakes.NothingToMake(section.Place));
        }

        FaceCheck.Run(job, parts, operations, findings);
        DecisionReader.FindUnneeded(job, places, findings);
        new OrderCheck(job, places, findings).Run();
    }

    private static ValueReader<IReadOnlyList<PartLine>> PartsFrom(SourceFile job, SpeciesTable species, JobNames names) => (node, reading) =>
    {
        var path = Values.Text("a CSV file beside the job file")(node, reading);
        if (!path.IsRead)
        {
            return Field<IReadOnlyList<PartLine>>.Wrong(node.Place);
        }

        try
        {
            var list = job.Beside(path.Value!);
            return Field<IReadOnlyList<PartLine>>.Read(node.Place, PartsCsv.Read(list, species, names, reading));
        }
        catch (FileTroubleException trouble)
        {
            reading.Findings.Add(JobMistakes.NoPartsFile(node.Place, path.Value!, trouble.Why));
            return Field<IReadOnlyList<PartLine>>.Wrong(node.Place);
        }
    };

    private static Dictionary<string, string> Merged(IReadOnlyDictionary<string, string> shop, IReadOnlyDictionary<string, string> job)
    {
        var merged = new Dictionary<string, string>(shop, StringComparer.OrdinalIgnoreCase);
        foreach (var (operation, method) in job)
        {
            merged[operation] = method;
        }

        return merged;
    }
}
