using ShopDays.Layouts;
using ShopDays.Measures;
using ShopDays.Parts;

namespace ShopDays.Work;

/// <summary>What timber there is for a part beyond what its pieces take.</summary>
/// <param name="Spares">Its spare blanks.</param>
/// <param name="IsLeftOver">Whether what the layout leaves yields one piece more.</param>
/// <param name="Making">Tasks at saw and planes by name, each with the share of it that one piece is.</param>
internal sealed record PartTimber(int Spares, bool IsLeftOver, IReadOnlyList<(string Task, double Share)> Making)
{
    /// <summary>Looks for it.</summary>
    public static PartTimber Of(Part part, Job job, Layout layout, TaskGraph graph)
    {
        var placed = layout.Boards.SelectMany(board => board.Blanks.Select(blank => (board.Board, blank.Blank, blank.Region))).Where(one => one.Blank.Part.Name == part.Name).ToList();
        List<Piece> pieces = [.. placed.SelectMany(one => one.Blank.Numbers.Select(number => new Piece(part.Name, number))).Distinct()];
        return new(
            pieces.Count(piece => piece.Number > part.Count),
            IsIn(Left(part, job, layout), [.. placed.Where(one => one.Blank.Numbers[0] == placed[0].Blank.Numbers[0]).Select(one => (one.Blank, one.Region))], job.Allowances),
            [
                .. graph.Tasks
                    .Where(task => task.Stage is Stage.Sawing or Stage.Dimensioning)
                    .Select(task => (task.Name, Share: MadeAgain.ShareOf(pieces, task)))
                    .Where(one => one.Share > 0),
            ]);
    }

    /// <summary>Useful offcuts, kept ones among them, and boards of which nothing is taken, as far as they are clear.</summary>
    private static List<(Board Board, Length Length, Length Width)> Left(Part part, Job job, Layout layout)
    {
        var used = layout.Boards.Where(board => board.Blanks.Count > 0 || board.IsSawn).Select(board => board.Board.Name).ToHashSet(StringComparer.Ordinal);
        var uncut = job.Boards.Where(board => !used.Contains(board.Name)).Select(board => (Board: board, Place: Region.Usable(board, job.Allowances)));
        var offcuts = layout.ToCut
            .Where(board => board.Blanks.Count > 0)
            .SelectMany(board => board.Offcuts.Where(offcut => offcut.IsUseful).Select(offcut => (board.Board, Place: offcut.Region)));
        return
        [
            .. uncut.Concat(offcuts)
                .Where(one => one.Board.Species == part.Species && part.MayComeFrom(one.Board) && !one.Board.Flaws.Any(flaw => Region.Of(flaw).Overlaps(one.Place)))
                .Select(one => (one.Board, one.Place.Length, one.Place.Width)),
        ];
    }

    /// <summary>Whether each blank of one piece, the largest first, finds a place of its own, the smallest that will do.</summary>
    private static bool IsIn(List<(Board Board, Length Length, Length Width)> left, List<(Blank Blank, Region Region)> blanks, Allowances allowances)
    {
        foreach (var (blank, region) in blanks.OrderByDescending(one => one.Region.Area.SquareMillimetres))
        {
            var alone = blank with { Numbers = [blank.Numbers[0]] };
            var fits = left
                .Where(one => one.Length >= region.Length && one.Width >= region.Width && one.Board.Thickness >= alone.DepthNeeded(allowances) + allowances.PlaningDepth(one.Board))
                .OrderBy(one => (one.Length * one.Width).SquareMillimetres)
                .ToList();
            if (fits.Count == 0)
            {
                return false;
            }

            left.Remove(fits[0]);
        }

        return true;
    }
}
