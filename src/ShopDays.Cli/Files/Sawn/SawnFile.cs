using NodaTime;
using ShopDays.Cli.Files.Jobs;
using ShopDays.Cli.Files.Yaml;
using ShopDays.Layouts;
using ShopDays.Parts;

namespace ShopDays.Cli.Files.Sawn;

/// <summary>
/// Reads <c>NAME.sawn.yaml</c>, which lies beside a job file and says which boards are sawn and what came of them. A blank
/// that the maker takes out is wanted again; a board that is taken out counts as whole.
/// </summary>
internal sealed class SawnFile
{
    /// <summary>How the name of the file ends.</summary>
    public const string Ending = ".sawn.yaml";

    private const string Expected = "the boards that are sawn, each a line under 'sawn:'; delete the file where none is";

    private readonly LocatedJob located;
    private readonly Dictionary<string, Board> boards;
    private readonly Dictionary<string, Place> sawn = new(StringComparer.Ordinal);
    private readonly BlankReader blankReader;
    private readonly LocalDate? today;

    private SawnFile(LocatedJob located, LocalDate? today)
    {
        (this.located, this.today) = (located, today);
        boards = located.Job.Boards.ToDictionary(board => board.Name, StringComparer.Ordinal);
        blankReader = new BlankReader(located.Job);
    }

    /// <summary>Where the file of a job lies.</summary>
    public static string PathFor(string job) => Path.ChangeExtension(job, Ending);

    /// <summary>Reads the file.</summary>
    /// <param name="source">The file.</param>
    /// <param name="located">The job, with all the boards that its file names.</param>
    /// <param name="findings">Where mistakes go.</param>
    /// <param name="today">The date at the shop, after which nothing can have been sawn; null where it is not known.</param>
    /// <returns>The boards that are sawn, in the order written.</returns>
    public static IReadOnlyList<BoardLayout> Read(SourceFile source, LocatedJob located, Findings findings, LocalDate? today = null)
    {
        var reading = new Reading { Findings = findings, Units = located.Units, Format = located.Format };
        if (YamlFile.Read(source.Name, source.Bytes, Expected, findings) is not { } root || Section.Open(root, "what is sawn", reading) is not { } section)
        {
            return [];
        }

        var file = new SawnFile(located, today);
        var sawn = section.Lines("sawn", "a board", file.ReadBoard, mayBeEmpty: true);
        section.Close();
        file.blankReader.ComparePanels(reading);
        return sawn;
    }

    private BoardLayout? ReadBoard(Section line)
    {
        var name = line.Required("board", Values.Text("the name of a board"), "the name of a board");
        name = name
            .Unless(line.Findings, one => boards.ContainsKey(one) ? null : StockMistakes.UnknownBoard(name.Place, one, [.. boards.Keys], []))
            .Unless(line.Findings, one => sawn.TryGetValue(one, out var first) ? SawnMistakes.SawnTwice(name.Place, one, first) : null);
        var on = line.Optional("on", Values.Date);
        on = on.Unless(line.Findings, date => date > today ? SawnMistakes.StillToCome(on.Place, date, today.Value) : null);
        var board = name.IsRead ? boards[name.Value!] : null;
        if (name.IsRead)
        {
            sawn.Add(name.Value!, name.Place);
        }

        var taken = new List<(string What, Region Region)>();
        var blanks = line.Lines("blanks", "a blank", blank => blankReader.Read(blank, board, taken), mayBeEmpty: true);
        var layout = board is null ? null : new BoardLayout
        {
            Board = board,
            Usable = Region.Usable(board, located.Job.Allowances),
            Blanks = blanks,
            Cuts = [],
            Offcuts = [],
            IsSawn = true,
            SawnOn = on.IsRead ? on.Value : null,
        };
        var offcuts = line.Lines("rests", "an offcut kept", rest => ReadRest(rest, layout, taken), mayBeEmpty: true);
        return layout is null ? null : layout with { Offcuts = offcuts };
    }

    private Offcut? ReadRest(Section line, BoardLayout? from, List<(string What, Region Region)> taken)
    {
        var name = line.Required("rest", Values.Name("the name of the offcut, such as A1 rest 1"), "the name of the offcut, such as A1 rest 1");
        var region = SawnPlace.Read(line);
        name = name.Unless(line.Findings, one => boards.ContainsKey(one) ? SawnMistakes.RestNameTaken(name.Place, one) : null);
        if (!name.IsRead || region is not { } place || from is null || !SawnPlace.IsFree(line, name.Value!, place, from.Board, taken))
        {
            return null;
        }

        var offcut = new Offcut(place, IsUseful: true) { Name = name.Value };
        boards.Add(name.Value!, from.AsBoard(offcut, name.Value!));
        return offcut;
    }
}
