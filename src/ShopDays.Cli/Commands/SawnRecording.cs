using System.Text;
using NodaTime;
using ShopDays.Cli.Files;
using ShopDays.Cli.Files.Sawn;
using ShopDays.Cli.Json;
using ShopDays.Cli.Terminal;
using ShopDays.Layouts;
using ShopDays.Measures;
using ShopDays.Work;

namespace ShopDays.Cli.Commands;

/// <summary>Records boards of a layout as sawn, in the file beside the job's, each with the date of its sawing.</summary>
/// <param name="asked">What is asked.</param>
/// <param name="screen">Where complaints are printed.</param>
/// <param name="at">The moment.</param>
internal sealed class SawnRecording(Question asked, Screen screen, Instant at)
{
    private readonly ShopAndJob read = asked.Workings.Read;
    private readonly Layout layout = asked.Workings.Layout;

    /// <summary>Writes the file, unless a name is of no board that the layout cuts: then nothing is written.</summary>
    /// <param name="names">The boards.</param>
    /// <param name="draw">Draws what is still to be cut then, and says in which files; null for no drawings.</param>
    /// <returns>The exit code.</returns>
    public int Record(IReadOnlyList<string> names, Func<Workings, IReadOnlyList<string>>? draw)
    {
        List<string> complaints = [.. names.Distinct(StringComparer.Ordinal).Select(Complaint).OfType<string>()];
        if (complaints.Count > 0)
        {
            foreach (var complaint in complaints)
            {
                screen.Error.WriteLine(complaint);
            }

            screen.Error.WriteLine("nothing was recorded");
            if (asked.AsJson)
            {
                JsonAnswer.Write(asked.Screen.Out, SawnJson.Of(complaints));
            }

            return ExitCode.No;
        }

        var sawn = read.SawnBoards.ToList();
        var now = layout.ToCut.Where(board => names.Contains(board.Board.Name)).ToList();
        for (var index = 0; index < now.Count; index++)
        {
            var known = read.Job.Boards.Concat(sawn.Select(board => board.Board)).Select(board => board.Name);
            var rests = sawn.SelectMany(board => board.Offcuts).Select(offcut => offcut.Name).OfType<string>();
            now[index] = now[index].AsSawn(SawnStock.NextRest(now[index].Board.Origin, known.Concat(rests)), SawnOn(now[index].Board.Name));
            sawn.Add(now[index]);
        }

        WholeFile.Save(read.SawnPath, Encoding.UTF8.GetBytes(SawnText.Of(read.Job.Name, sawn, read.Located.Format)));
        var drawn = draw?.Invoke(asked.Workings.Once(now)) ?? [];
        if (asked.AsJson)
        {
            JsonAnswer.Write(asked.Screen.Out, SawnJson.Of(read.SawnName, now));
        }
        else
        {
            SawnPrint.Print(asked.Screen, read.SawnName, now, read.Located.Format);
            LayoutPrint.PrintWritten(asked.Screen, drawn);
        }

        return ExitCode.Done;
    }

    /// <summary>When a board was sawn: on the date of its last cut in the log, and where no cut of it is logged, today.</summary>
    private LocalDate SawnOn(string board) => asked.Workings.Rates.EntriesOf(read)
        .Where(entry => SawingOut.IsCutOf(entry.Task, board))
        .Select(entry => entry.On.Date)
        .DefaultIfEmpty(at.InZone(read.Shop.Place.Zone).Date)
        .Max();

    private string? Complaint(string name)
    {
        List<string> cut = [.. layout.ToCut.Select(board => board.Board.Name)];
        if (cut.Contains(name, StringComparer.Ordinal))
        {
            return null;
        }

        if (layout.Sawn.Any(board => string.Equals(board.Board.Name, name, StringComparison.Ordinal)))
        {
            return $"the board {QuotedText.Of(name)} is recorded as sawn already, in {read.SawnName}";
        }

        var nearest = NearestName.To(name, cut);
        return $"this layout cuts no board called {QuotedText.Of(name)}; expected {ValueMistakes.AnyOf(cut, "boards")}" + (nearest is null ? "" : "; nearest: " + nearest);
    }
}
