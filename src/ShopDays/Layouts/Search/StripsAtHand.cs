using ShopDays.Measures;

namespace ShopDays.Layouts.Search;

/// <summary>Splits a panel anew, into strips as wide as what is free on the boards.</summary>
internal sealed class StripsAtHand(LayoutProblem problem, Random random)
{
    /// <summary>Takes a panel out of its boards and chooses other strips for it; they are to be placed. It keeps its way when nothing else would do.</summary>
    public void Choose(Arrangement arrangement, Want panel)
    {
        var now = arrangement.WayOf(panel);
        if (random.Next(2) == 0)
        {
            arrangement.Release([panel]);
        }
        else
        {
            arrangement.Clear([panel]);
        }

        var blank = now.Blanks[0].Blank;
        var at = WidthsAt(arrangement, blank);
        var order = random.Next(3);
        var given = order switch
        {
            0 => at.OrderByDescending(one => one.Width),
            1 => at.OrderBy(one => one.IsUncut).ThenBy(_ => random.Next()),
            _ => at.OrderBy(_ => random.Next()),
        };
        if (new StripWidths(panel.Part, problem.Allowances).From([.. given.Select(one => one.Width)], panel.MostStrips, closely: random.Next(3) > 0) is { } widths)
        {
            arrangement.Choose(panel, problem.InStrips(panel, blank.Numbers.Count, widths));
        }
    }

    /// <summary>The widths that are free over a blank's length, each as often as it is there.</summary>
    private List<(Length Width, bool IsUncut)> WidthsAt(Arrangement arrangement, Blank blank)
    {
        var widths = new List<(Length, bool)>();
        var depth = blank.DepthNeeded(problem.Allowances);
        for (var board = 0; board < arrangement.Boards; board++)
        {
            var stock = problem.Stock[board];
            if (stock.Depth < depth || !stock.Suits(blank.Part))
            {
                continue;
            }

            var cutting = arrangement.Cuttings[board];
            foreach (var region in cutting is null ? [stock.Usable] : cutting.Free.Select(piece => piece.Region))
            {
                var times = (int)((region.Length + stock.Kerf) / (blank.Length + stock.Kerf));
                widths.AddRange(stock.ClearWidths(region, blank.Length).SelectMany(width => Enumerable.Repeat((width, cutting is null), times)));
            }
        }

        return widths;
    }
}
