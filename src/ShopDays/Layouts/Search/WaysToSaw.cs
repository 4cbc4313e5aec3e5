using ShopDays.Measures;
using ShopDays.Parts;

namespace ShopDays.Layouts.Search;

/// <summary>In which ways parts can be sawn out of the boards on hand: whole, in strips, resawn; or why in none.</summary>
internal sealed class WaysToSaw(IReadOnlyList<StockBoard> stock, Allowances allowances, PanelStrips panels)
{
    /// <summary>More strips than this are matchwood.</summary>
    private const int MostStrips = 60;

    /// <summary>How many of the widths that boards give are tried for all strips of a panel but the last.</summary>
    private const int MostWidths = 4;

    /// <summary>Into how many parts a piece is resawn at most.</summary>
    private const int MostResawn = 4;

    private readonly Dictionary<(string Part, Length Width, int Parts), double[]> costs = [];

    /// <summary>Why a part cannot come out of any of the boards even if it had them all to itself; null when it can.</summary>
    public UnplacedReason? WhyNever(Part part)
    {
        var reason = WhyNotFromThese(part);
        if (reason is null || part.NotFrom.Count == 0)
        {
            return reason;
        }

        // A board that is forbidden is told of only where it would have done.
        var free = part with { NotFrom = [] };
        List<string> wouldDo = [.. stock
            .Where(board => !board.Suits(part) && new WaysToSaw([board], allowances, panels).WhyNotFromThese(free) is null)
            .Select(board => board.Board.Name)];
        return wouldDo.Count > 0
            ? new UnplacedReason.OnlyForbidden(wouldDo)
            : stock.Any(board => board.Suits(part)) ? reason : WhyNotFromThese(free) ?? reason;
    }

    private UnplacedReason? WhyNotFromThese(Part part)
    {
        var same = stock.Where(board => board.Board.Species == part.Species).ToList();
        if (same.Count == 0)
        {
            return new UnplacedReason.NoSpecies(part.Species);
        }

        var pinned = same.Where(board => board.Suits(part)).ToList();
        if (pinned.Count == 0)
        {
            return new UnplacedReason.NoSuchStock(part.From ?? "");
        }

        var deep = pinned.Where(board => board.Depth >= part.Thickness).ToList();
        if (deep.Count == 0)
        {
            var best = pinned.MaxBy(board => board.Depth)!;
            return new UnplacedReason.TooThin(part.Thickness + (best.Board.Thickness - best.Depth), best.Board.Thickness);
        }

        var length = BlankLength(part);
        var longEnough = deep.Where(board => board.Usable.Length >= length && !board.Usable.IsEmpty).ToList();
        if (longEnough.Count == 0)
        {
            return new UnplacedReason.TooShort(length, deep.Max(board => board.Usable.Length));
        }

        var width = part.IsPanel ? BlankWidth(part, MostStrips) : BlankWidth(part, 1);
        if (!longEnough.Exists(board => board.Usable.Width >= width))
        {
            return new UnplacedReason.TooNarrow(width, longEnough.Max(board => board.Usable.Width));
        }

        return FewestStrips(part, deep) is null ? new UnplacedReason.NoClearPlace(length, width) : null;
    }

    /// <summary>Splits what is wanted of a part into the fewest numbers that are sawn out together.</summary>
    public IEnumerable<Want> WantsOf(Demand demand, int firstIndex)
    {
        var part = demand.Part;
        var resawn = Enumerable.Range(1, MostResawn).Last(parts => parts == 1 || FewestStrips(part, DeepEnough(part, parts)) is not null);
        foreach (var (index, numbers) in demand.Numbers.Chunk(resawn).Index())
        {
            var want = new Want(firstIndex + index, part, numbers);
            want.Ways = [.. Enumerable.Range(1, numbers.Length).SelectMany(parts => WaysOf(want, parts))];
            want.MostStrips = MostStripsOf(want);
            yield return want;
        }
    }

    /// <summary>The way that saws a part out in pieces of these widths, resawn into so many parts.</summary>
    public Way InStrips(Want want, int parts, IReadOnlyList<Length> widths) => new(
        [.. want.Numbers.Chunk(parts).SelectMany(numbers => BlanksOf(want, numbers, widths))],
        (widths.Count - 1) * want.Numbers.Count);

    /// <summary>
    /// The strips that a panel lacks, of like widths that make up what the sawn ones leave; null when a board gives none of
    /// that size. However few the strips, they are wanted as they are: the others are sawn.
    /// </summary>
    public Want? WantOf(Part part, StartedPanel panel, int index)
    {
        var width = new StripWidths(part, allowances).Lacking(panel);
        var want = new Want(index, part, [panel.Number]);
        var blanks = panel.Missing.Select(strip => new Blank
        {
            Part = part,
            Numbers = [panel.Number],
            Strip = strip,
            Strips = panel.Strips,
            Length = BlankLength(part),
            Width = width,
        });
        want.Ways = [new Way([.. blanks.Select(blank => new WantedBlank(blank, want, CostsOf(blank)))], panel.Strips - 1)];
        return want.Ways[0].Blanks.All(blank => blank.Choices > 0) ? want : null;
    }

    /// <summary>Why the strips that a panel lacks come out of no board.</summary>
    public UnplacedReason WhyNever(Part part, StartedPanel panel) =>
        WhyNever(part) ?? new UnplacedReason.NoClearPlace(BlankLength(part), (part.Width + allowances.Width + (allowances.Strip * panel.Strips) - panel.Sawn) / panel.Missing.Count);

    /// <summary>Length of a part's blank.</summary>
    private Length BlankLength(Part part) => part.Length + allowances.Length;

    /// <summary>Width of a blank, or of one of so many equal strips.</summary>
    private Length BlankWidth(Part part, int strips) => new StripWidths(part, allowances).Equal(strips)[0];

    private List<StockBoard> DeepEnough(Part part, int parts)
    {
        var blank = new Blank { Part = part, Numbers = [.. Enumerable.Range(1, parts)], Length = part.Length, Width = part.Width };
        return [.. stock.Where(board => board.Suits(part) && board.Depth >= blank.DepthNeeded(allowances))];
    }

    private int? FewestStrips(Part part, List<StockBoard> boards)
    {
        var length = BlankLength(part);
        for (var strips = 1; strips <= (part.IsPanel ? MostStrips : 1); strips++)
        {
            var width = BlankWidth(part, strips);
            if (boards.Exists(board => board.CanTake(length, width)))
            {
                return strips;
            }
        }

        return null;
    }

    private IEnumerable<Way> WaysOf(Want want, int parts)
    {
        var boards = DeepEnough(want.Part, parts);
        if (FewestStrips(want.Part, boards) is not { } fewest)
        {
            return [];
        }

        var widths = new StripWidths(want.Part, allowances);
        var more = MoreThan(fewest, want);
        var equal = Enumerable.Range(fewest, more + 1).Select(widths.Equal);
        return equal.Concat(more == 0 ? [] : WidthsGiven(want.Part, boards).Select(given => widths.Filling(given, fewest + more)).OfType<IReadOnlyList<Length>>())
            .Select(strips => InStrips(want, parts, strips));
    }

    /// <summary>The widths that boards give over a part's length, the widest few.</summary>
    private IEnumerable<Length> WidthsGiven(Part part, List<StockBoard> boards) =>
        boards.SelectMany(board => board.ClearWidths(board.Usable, BlankLength(part))).Distinct().OrderDescending().Take(MostWidths);

    private int MostStripsOf(Want want)
    {
        var fewest = FewestStrips(want.Part, DeepEnough(want.Part, 1)) ?? 0;
        var more = MoreThan(fewest, want);
        return more == 0 ? 0 : fewest + more;
    }

    /// <summary>How many more strips than the fewest there may be: strips are not made needlessly narrow.</summary>
    private int MoreThan(int fewest, Want want) => Math.Clamp(
        (int)((want.Part.Width + allowances.Width) / Blank.LeastStrip) - fewest, 0, panels.MoreThanFewest(want, fewest));

    private IEnumerable<WantedBlank> BlanksOf(Want want, int[] numbers, IReadOnlyList<Length> widths) => widths.Select((width, index) =>
    {
        var blank = new Blank
        {
            Part = want.Part,
            Numbers = numbers,
            Strip = widths.Count == 1 ? 0 : index + 1,
            Strips = widths.Count == 1 ? 0 : widths.Count,
            Length = BlankLength(want.Part),
            Width = width,
        };
        return new WantedBlank(blank, want, CostsOf(blank));
    });

    private double[] CostsOf(Blank blank)
    {
        var key = (blank.Part.Name, blank.Width, blank.Numbers.Count);
        if (!costs.TryGetValue(key, out var found))
        {
            found = [.. stock.Select(board => board.CanTake(blank.Length, blank.Width) ? board.CostOf(blank) : double.PositiveInfinity)];
            costs.Add(key, found);
        }

        return found;
    }
}
