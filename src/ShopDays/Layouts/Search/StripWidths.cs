using ShopDays.Measures;
using ShopDays.Parts;

namespace ShopDays.Layouts.Search;

/// <summary>How wide the strips of a panel may be. Widths are those of blanks, with the allowance for their glue edges.</summary>
internal sealed class StripWidths(Part part, Allowances allowances)
{
    /// <summary>What the strips yield together once their edges are shot.</summary>
    private readonly Length whole = part.Width + allowances.Width;

    /// <summary>
    /// Strips of one width, each with its share rounded up; the whole width, without glue edges, when it is one piece.
    /// </summary>
    public IReadOnlyList<Length> Equal(int strips)
    {
        var share = whole / strips;
        var width = strips == 1 ? whole : share + (share * strips < whole ? Length.FromEighthMicrometres(1) : Length.Zero) + allowances.Strip;
        return [.. Enumerable.Repeat(width, strips)];
    }

    /// <summary>The width of each strip that a started panel lacks: like shares of what the sawn ones leave, rounded up.</summary>
    public Length Lacking(StartedPanel panel)
    {
        var lacks = whole + (allowances.Strip * panel.Strips) - panel.Sawn;
        var share = lacks / panel.Missing.Count;
        return share <= allowances.Strip
            ? Equal(panel.Strips)[0]
            : share + Length.FromEighthMicrometres(share * panel.Missing.Count < lacks ? 1 : 0);
    }

    /// <summary>Strips as wide as a board gives, and one that makes up what is then lacking; null when that takes more than so many.</summary>
    public IReadOnlyList<Length>? Filling(Length given, int most) => Trimmed([.. Enumerable.Repeat(given, most)]);

    /// <summary>Strips as wide as what is at hand, taken in the order given; null when it does not reach.</summary>
    /// <param name="given">The widths at hand, each as often as it is there.</param>
    /// <param name="most">How many strips there may be.</param>
    /// <param name="closely">Whether the last strip comes from what is hardly wider, rather than from what is next.</param>
    public IReadOnlyList<Length>? From(IEnumerable<Length> given, int most, bool closely)
    {
        List<Length> wide = [.. given.Where(width => Net(width) >= Blank.LeastStrip)];
        if (!closely)
        {
            return Trimmed([.. wide.Take(most)]);
        }

        var taken = new List<Length>();
        var lacking = whole;
        while (wide.Count > 0 && taken.Count < most && lacking > Length.Zero)
        {
            var last = wide.Where(width => Net(width) >= lacking).DefaultIfEmpty(wide[0]).Min();
            wide.Remove(last);
            taken.Add(last);
            lacking -= Net(last);
        }

        return Trimmed(taken);
    }

    /// <summary>Only as many strips as are needed, the last made narrower by what is too much, and no strip too narrow; the widest first.</summary>
    private List<Length>? Trimmed(IReadOnlyList<Length> widths)
    {
        var nets = new List<Length>();
        var lacking = whole;
        foreach (var width in widths.TakeWhile(_ => lacking > Length.Zero))
        {
            nets.Add(Net(width));
            lacking -= Net(width);
        }

        if (lacking > Length.Zero || nets.Count < 2)
        {
            return null;
        }

        nets[^1] += lacking;
        var least = Blank.LeastWidthOfStrip(part, nets.Count, allowances) - allowances.Strip;
        if (nets[^1] < least)
        {
            nets[^2] -= least - nets[^1];
            nets[^1] = least;
        }

        return nets.Exists(net => net < least) ? null : [.. nets.OrderDescending().Select(net => net + allowances.Strip)];
    }

    private Length Net(Length width) => width - allowances.Strip;
}
