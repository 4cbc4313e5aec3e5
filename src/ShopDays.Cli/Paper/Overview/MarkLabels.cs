namespace ShopDays.Cli.Paper.Overview;

/// <summary>Words below marks on a line: which of them stand side by side and which lower, so that the tick of none runs through the words of another.</summary>
/// <param name="Lines">Lines of words.</param>
/// <param name="Labels">Where the words of each mark stand, in the order of the marks.</param>
internal sealed record MarkLabels(int Lines, IReadOnlyList<MarkLabels.Label> Labels)
{
    /// <summary>White between words side by side, in points.</summary>
    public const double Between = 6;

    /// <summary>White between a tick and words of another mark, in points.</summary>
    public const double Beside = 3;

    // To the middle of the tick, to the right of it, to the left of it: what the words keep on the left of it.
    private static readonly double[] Shares = [0.5, 0, 1];

    /// <summary>Words of a mark.</summary>
    /// <param name="Line">The line that they stand on, 0 for the uppermost; the tick reaches down to it.</param>
    /// <param name="Left">Their left end.</param>
    public readonly record struct Label(int Line, double Left);

    /// <summary>Finds places on as few lines as can be, and there the words as high and as near the middle of their ticks as can be.</summary>
    /// <param name="marks">The place of each mark and the width of its words, from the left.</param>
    /// <param name="left">Where words may begin.</param>
    /// <param name="right">Where they must end; a mark's words are no wider than that from <paramref name="left"/>.</param>
    public static MarkLabels Of(IReadOnlyList<(double X, double Width)> marks, double left, double right)
    {
        for (var lines = 1; lines < marks.Count; lines++)
        {
            if (Best(marks, lines, left, right) is { } found)
            {
                return new(lines, found);
            }
        }

        // A line for each, the last on top and each to the right of its tick: where even that is too narrow, words come nearest to staying apart.
        return new(marks.Count, Best(marks, marks.Count, left, right) ?? [.. marks.Select((mark, place) => new Label(marks.Count - 1 - place, Placed(mark, 0, left, right)))]);
    }

    private static List<Label>? Best(IReadOnlyList<(double X, double Width)> marks, int lines, double left, double right)
    {
        List<Label>? best = null;
        var least = double.PositiveInfinity;
        Try([], 0);
        return best;

        void Try(List<Label> placed, double cost)
        {
            if (cost >= least)
            {
                return;
            }

            if (placed.Count == marks.Count)
            {
                (best, least) = ([.. placed], cost);
                return;
            }

            var mark = marks[placed.Count];
            for (var line = 0; line < lines; line++)
            {
                foreach (var (share, order) in Shares.Select((share, order) => (share, order)))
                {
                    var label = new Label(line, Placed(mark, share, left, right));
                    if (placed.Select((other, place) => (Other: other, Mark: marks[place])).All(one => AreApart(one.Other, one.Mark, label, mark)))
                    {
                        Try([.. placed, label], cost + line + (order > 0 ? 0.3 : 0));
                    }
                }
            }
        }
    }

    private static double Placed((double X, double Width) mark, double share, double left, double right) =>
        Math.Max(left, Math.Min(mark.X - (share * mark.Width), right - mark.Width));

    private static bool AreApart(Label one, (double X, double Width) oneMark, Label other, (double X, double Width) otherMark) => one.Line == other.Line
        ? one.Left + oneMark.Width + Between <= other.Left || other.Left + otherMark.Width + Between <= one.Left
        : one.Line < other.Line ? IsClear(one, oneMark, otherMark.X) : IsClear(other, otherMark, oneMark.X);

    /// <summary>Whether a tick that goes further down than some words passes them by.</summary>
    private static bool IsClear(Label label, (double X, double Width) mark, double tick) => tick <= label.Left - Beside || tick >= label.Left + mark.Width + Beside;
}
