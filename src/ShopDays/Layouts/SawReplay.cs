using ShopDays.Measures;

namespace ShopDays.Layouts;

/// <summary>Saws a board on paper, cut by cut, and compares what is left with what the layout says.</summary>
internal static class SawReplay
{
    public static IReadOnlyList<string> Faults(BoardLayout layout, Length kerf)
    {
        var faults = new List<string>();
        List<Region> pieces = [Region.Whole(layout.Board)];
        var kerfs = 0.0;
        foreach (var (index, cut) in layout.Cuts.Index())
        {
            if (cut.Order != index + 1)
            {
                faults.Add(FormattableString.Invariant($"cut {cut.Order} is out of order"));
            }

            if (cut.Kind == CutKind.Resaw)
            {
                faults.AddRange(ResawFaults(layout, cut));
                continue;
            }

            if (!pieces.Remove(cut.Of))
            {
                faults.Add(FormattableString.Invariant($"cut {cut.Order} is of a piece that is not in hand"));
                continue;
            }

            List<Region> parts = [.. Parts(cut, kerf).Where(piece => !piece.IsEmpty)];
            pieces.AddRange(parts);
            var gone = cut.Of.Area.SquareMillimetres - parts.Sum(piece => piece.Area.SquareMillimetres);
            kerfs += gone;

            // Areas are sums of doubles; a square micrometre is far beyond their rounding and far below any kerf.
            if (parts.Contains(cut.Of) || gone < -1e-6 || gone > (cut.Length * kerf).SquareMillimetres + 1e-6)
            {
                faults.Add(FormattableString.Invariant($"cut {cut.Order} takes more or less than its kerf"));
            }

            if (cut.Length != (cut.Kind == CutKind.Crosscut ? cut.Of.Width : cut.Of.Length) || cut.Thickness != layout.Board.Thickness)
            {
                faults.Add(FormattableString.Invariant($"cut {cut.Order} does not go right across its piece"));
            }
        }

        List<Region> said = [.. layout.Blanks.Select(placed => placed.Region), .. layout.Offcuts.Select(offcut => offcut.Region)];
        if (said.Count != pieces.Count || !said.ToHashSet().SetEquals(pieces))
        {
            faults.Add("the cuts do not yield the pieces");
        }

        var kept = said.Sum(piece => piece.Area.SquareMillimetres) + kerfs;
        var whole = Region.Whole(layout.Board).Area.SquareMillimetres;

        // Relative rounding of a sum of some hundred doubles is below 1e-12.
        if (Math.Abs(kept - whole) > whole * 1e-9)
        {
            faults.Add("pieces and kerfs do not add up to the board");
        }

        return faults;
    }

    private static IEnumerable<Region> Parts(Cut cut, Length kerf)
    {
        var of = cut.Of;
        if (cut.Kind == CutKind.Crosscut)
        {
            yield return Region.Between(of.X, of.Y, cut.At, of.Top);
            yield return Region.Between(cut.At + kerf, of.Y, of.Right, of.Top);
        }
        else
        {
            yield return Region.Between(of.X, of.Y, of.Right, cut.At);
            yield return Region.Between(of.X, cut.At + kerf, of.Right, of.Top);
        }
    }

    private static IEnumerable<string> ResawFaults(BoardLayout layout, Cut cut)
    {
        var blank = layout.Blanks.FirstOrDefault(placed => placed.Region == cut.Of)?.Blank;
        var cuts = layout.Cuts.Count(other => other.Kind == CutKind.Resaw && other.Of == cut.Of);
        if (blank is null || cuts != blank.Numbers.Count - 1 || cut.Length != blank.Length || cut.Thickness != blank.Width)
        {
            yield return FormattableString.Invariant($"cut {cut.Order} does not resaw a blank into its parts");
        }

        if (cut.At <= Length.Zero || cut.At >= layout.Board.Thickness)
        {
            yield return FormattableString.Invariant($"cut {cut.Order} is not in the thickness of the board");
        }
    }
}
