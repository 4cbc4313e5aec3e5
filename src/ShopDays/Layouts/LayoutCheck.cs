using ShopDays.Measures;
using ShopDays.Parts;

namespace ShopDays.Layouts;

/// <summary>
/// Proves a layout, slowly and plainly and without the code that made it: what a maker would check with a rule and a
/// pencil before the first cut.
/// </summary>
public static class LayoutCheck
{
    /// <summary>
    /// Everything that is wrong: a part number that is not there just once, a blank of the wrong size, strips that are too
    /// narrow or do not add up to their panel, a blank that overlaps
    /// another, touches a flaw or leaves the usable place, timber or thickness that do not suit, a cut that does not go
    /// right across a piece in hand, pieces that the cuts do not yield, area that vanishes, matched parts or parts for the best
    /// face that are not as is said. Empty when all is well.
    /// </summary>
    /// <param name="boards">The boards on hand.</param>
    /// <param name="parts">The parts.</param>
    /// <param name="allowances">What is left on blanks and what the saw takes.</param>
    /// <param name="layout">The layout.</param>
    /// <param name="sawn">The boards that are sawn already; none unless given. Of their blanks only number, size and timber are looked at.</param>
    public static IReadOnlyList<string> Faults(
        IReadOnlyList<Board> boards, IReadOnlyList<Part> parts, Allowances allowances, Layout layout, IReadOnlyList<BoardLayout>? sawn = null)
    {
        var faults = new List<string>();
        foreach (var name in layout.Boards.GroupBy(board => board.Board.Name, StringComparer.Ordinal).Where(same => same.Count() > 1).Select(same => same.Key))
        {
            faults.Add($"board {name} is cut twice");
        }

        if (!layout.Sawn.SequenceEqual(sawn ?? []))
        {
            faults.Add("the boards already sawn are not those that were");
        }

        faults.AddRange(layout.Sawn.SelectMany(board => SawnFaults(board, boards).Select(fault => $"board {board.Board.Name}: {fault}")));
        foreach (var board in layout.ToCut)
        {
            var found = new List<string>();
            if (!boards.Contains(board.Board))
            {
                found.Add("it is not on hand");
            }

            found.AddRange(board.Blanks.SelectMany(placed => BlankFaults(board, placed, allowances)));
            found.AddRange(
                from first in Enumerable.Range(0, board.Blanks.Count)
                from second in Enumerable.Range(first + 1, board.Blanks.Count - first - 1)
                where board.Blanks[first].Region.Overlaps(board.Blanks[second].Region)
                select $"{board.Blanks[first].Blank.Label} overlaps {board.Blanks[second].Blank.Label}");
            found.AddRange(SawReplay.Faults(board, allowances.Kerf));
            faults.AddRange(found.Select(fault => $"board {board.Board.Name}: {fault}"));
        }

        faults.AddRange(parts.SelectMany(part => CountFaults(part, layout, allowances)));
        faults.AddRange(WishCheck.Faults(boards, parts, allowances, layout));
        var known = parts.Select(part => part.Name).ToHashSet(StringComparer.Ordinal);
        faults.AddRange(layout.Boards
            .SelectMany(board => board.Blanks)
            .Select(placed => placed.Blank.Part.Name)
            .Concat(layout.Unplaced.Select(one => one.Part.Name))
            .Where(name => !known.Contains(name))
            .Select(name => $"nobody asked for {name}"));
        return faults;
    }

    private static IEnumerable<string> SawnFaults(BoardLayout layout, IReadOnlyList<Board> boards)
    {
        if (layout.Cuts.Count > 0)
        {
            yield return "it is sawn already and has cuts";
        }

        if (boards.Any(board => board.Name == layout.Board.Name))
        {
            yield return "it is sawn already and still on hand";
        }

        foreach (var blank in layout.Blanks.Select(placed => placed.Blank))
        {
            if (blank.Part.Species != layout.Board.Species)
            {
                yield return $"{blank.Label} is of other timber";
            }

            if (blank.Length < blank.Part.Length || (blank.Strips <= 1 && blank.Width < blank.Part.Width))
            {
                yield return $"{blank.Label} is smaller than the part";
            }
        }
    }

    private static IEnumerable<string> BlankFaults(BoardLayout layout, PlacedBlank placed, Allowances allowances)
    {
        var (blank, region) = placed;
        var board = layout.Board;
        var part = blank.Part;
        if (region.Length != blank.Length || region.Width != blank.Width)
        {
            yield return $"{blank.Label} is not of its blank's size";
        }

        var isStrip = blank.Strip > 0;
        if (blank.Length != part.Length + allowances.Length || (!isStrip && blank.Width < part.Width + allowances.Width))
        {
            yield return $"{blank.Label} is smaller than the part with its allowances";
        }

        if (isStrip && blank.Width < Blank.LeastWidthOfStrip(part, blank.Strips, allowances))
        {
            yield return $"{blank.Label} is too narrow for a strip";
        }

        if (!Region.Usable(board, allowances).Holds(region))
        {
            yield return $"{blank.Label} leaves the usable place";
        }

        if (board.Flaws.Any(flaw => Region.Of(flaw).Overlaps(region)))
        {
            yield return $"{blank.Label} touches a flaw";
        }

        if (board.Species != part.Species)
        {
            yield return $"{blank.Label} is of other timber";
        }

        var newFaces = (allowances.Kerf + allowances.RoughFaces) * (blank.Numbers.Count - 1);
        if (board.Thickness - allowances.PlaningDepth(board) < (part.Thickness * blank.Numbers.Count) + newFaces)
        {
            yield return $"{blank.Label} is thicker than the board yields";
        }

        if (part.From is { } from && from != board.Line && from != board.Name && from != board.CutFrom)
        {
            yield return $"{blank.Label} must come from {from}";
        }

        foreach (var name in part.NotFrom.Where(name => name == board.Line || name == board.Name || name == board.CutFrom))
        {
            yield return $"{blank.Label} must not come from {name}";
        }

        if (blank.Strips > 0 && !part.IsPanel)
        {
            yield return $"{blank.Label} is in strips but is no panel";
        }
    }

    private static IEnumerable<string> CountFaults(Part part, Layout layout, Allowances allowances)
    {
        for (var number = 1; number <= part.Count + part.Spare; number++)
        {
            var placed = layout.Boards
                .SelectMany(board => board.Blanks, (board, one) => (one.Blank, board.IsSawn))
                .Where(one => one.Blank.Part.Name == part.Name && one.Blank.Numbers.Contains(number))
                .ToList();
            var unplaced = layout.Unplaced.Count(one => one.Part.Name == part.Name && one.Number == number);
            var strips = placed.Select(one => one.Blank.Strip).Order().ToList();
            var isWhole = strips is [0] || (strips.Count > 1 && strips.SequenceEqual(Enumerable.Range(1, placed[0].Blank.Strips)));

            // Strips that are sawn stay, though the others find no place.
            var isStarted = !isWhole && strips.Count > 0 && strips[0] > 0 && placed.TrueForAll(one => one.IsSawn);
            if (unplaced + (isWhole ? 1 : 0) != 1 || (!isWhole && !isStarted && strips.Count > 0))
            {
                yield return FormattableString.Invariant($"{part.Name} {number} is there {placed.Count} times and {unplaced} times unplaced");
            }

            // Of strips that are sawn the edges may be shot already.
            var edges = placed.Exists(one => one.IsSawn) ? Length.Zero : allowances.Width + (allowances.Strip * strips.Count);
            if (isWhole && strips.Count > 1 && placed.Aggregate(Length.Zero, (sum, one) => sum + one.Blank.Width) < part.Width + edges)
            {
                yield return FormattableString.Invariant($"the strips of {part.Name} {number} do not add up to its width");
            }
        }
    }
}
