using ShopDays.Cli.Paper.Setting;
using ShopDays.Cli.Phrases;
using ShopDays.Times;

namespace ShopDays.Cli.Paper.Rates;

/// <summary>
/// What each time of the log was expected to be, from all the others, against what it was: a mark for each, on two equal
/// logarithmic axes, with its 80 % range as a bar. The bar crosses the line of equality where the time is inside its range.
/// </summary>
internal sealed class EstimatePicture
{
    private const double Left = 46;
    private const double Right = 8;
    private const double Foot = 66;
    private const double Share = 0.8;

    /// <summary>With more times than this the bars of those inside would be one grey cloud.</summary>
    private const int MostBars = 120;

    private static readonly Pen Bar = new(0.8, 0.5);
    private static readonly Pen Net = new(0.4, 0.8);
    private static readonly TextStyle Small = new(8.5, Weight.Regular, 0.2);
    private static readonly TextStyle Words = new(9, Weight.Medium, 0.1);

    private readonly IReadOnlyList<(double Took, double Low, double Middle, double High, bool IsInside, bool IsHeldOut)> times;
    private readonly double side;
    private readonly LogScale across;
    private readonly LogScale up;

    /// <summary>Prepares the picture.</summary>
    /// <param name="model">The model, with at least one time in its log.</param>
    /// <param name="width">How wide it is, in points.</param>
    /// <param name="newest">How many of its times are drawn, the newest; all unless said.</param>
    public EstimatePicture(RateModel model, double width, int newest = int.MaxValue)
    {
        times = [.. model.Log.TakeLast(newest).Select(judged =>
        {
            var expected = model.ExpectedOf(judged);
            return (judged.Work.Took.Minutes, expected.At(0.1).Minutes, expected.Median.Minutes, expected.At(0.9).Minutes,
                Math.Abs(expected.ShareBelow(judged.Work.Took) - 0.5) <= Share / 2, judged.IsHeldOut);
        })];
        side = width - Left - Right;
        var all = times.SelectMany(time => (double[])[time.Took, time.Low, time.High]).ToList();
        across = LogScale.Around(all, Left, Left + side);
        up = across with { From = side, To = 0 };
        Width = width;
    }

    /// <summary>Its title in words.</summary>
    public static string Title => "What was expected, and what it took";

    /// <summary>What it says, for who cannot see it.</summary>
    public string Description => $"{CountWords.Of(times.Count, "timed task")}: {CountWords.Number(times.Count(time => time.IsInside))} inside the 80 % range, {CountWords.Number(times.Count(time => !time.IsInside && !time.IsHeldOut))} outside, {CountWords.Number(times.Count(time => time.IsHeldOut))} held out. Both axes are logarithmic, in minutes and hours.";

    /// <summary>Its width in points.</summary>
    public double Width { get; }

    /// <summary>Its height in points.</summary>
    public double Height => side + Foot;

    /// <summary>Draws it.</summary>
    public Picture Drawn()
    {
        var picture = new Picture();
        DrawAxes(picture);
        foreach (var time in times.Where(time => times.Count <= MostBars || !time.IsInside))
        {
            picture.Line(across.Place(time.Low), up.Place(time.Took), across.Place(time.High), up.Place(time.Took), Bar);
        }

        foreach (var time in times.OrderBy(time => time.IsInside ? 0 : 1))
        {
            DrawMark(picture, time.IsInside, time.IsHeldOut, across.Place(time.Middle), up.Place(time.Took));
        }

        DrawKey(picture);
        return picture;
    }

    private static void DrawMark(Picture picture, bool isInside, bool isHeldOut, double x, double y)
    {
        if (isHeldOut)
        {
            Mark.HeldOut(picture, x, y);
        }
        else if (isInside)
        {
            Mark.Inside(picture, x, y);
        }
        else
        {
            Mark.Outside(picture, x, y);
        }
    }

    private void DrawAxes(Picture picture)
    {
        foreach (var (minutes, words) in across.TimeTicks())
        {
            var (x, y) = (across.Place(minutes), up.Place(minutes));
            picture.Line(x, 0, x, side, Net);
            picture.Line(Left, y, Left + side, y, Net);
            picture.Text(words, Left - 5, y + 3, Small, Align.Right);
            if (x + (Small.WidthOf(words) / 2) <= Left + side + Right)
            {
                picture.Text(words, x, side + 12, Small, Align.Centre);
            }
        }

        picture.Line(Left, side, Left + side, 0, new Pen(1, 0.2, Dash.Dashed));
        picture.Rectangle(new(Left, 0, side, side), Pen.Fine);
        picture.Text("above the line: took longer than expected", Left + 8, 14, Small);
        picture.Text("below: took less", Left + side - 8, side - 8, Small, Align.Right);
        picture.Text("expected, as likely as not", Left + (side / 2), side + 25, Words, Align.Centre);
        picture.TurnedText("took", new(10, side / 2), Words, Align.Centre);
    }

    private void DrawKey(Picture picture)
    {
        var (x, y) = (Left, side + 41);
        Entry(() => Mark.Inside(picture, x + 5, y - 3), $"inside its 80 % range ({CountWords.Number(times.Count(time => time.IsInside && !time.IsHeldOut))})");
        Entry(() => Mark.Outside(picture, x + 5, y - 3), $"outside it ({CountWords.Number(times.Count(time => !time.IsInside && !time.IsHeldOut))})");
        if (times.Any(time => time.IsHeldOut))
        {
            Entry(() => Mark.HeldOut(picture, x + 5, y - 3), $"held out ({CountWords.Number(times.Count(time => time.IsHeldOut))})");
        }

        Entry(() => picture.Line(x, y - 3, x + 13, y - 3, Bar), times.Count <= MostBars ? "the 80 % range" : "the 80 % range, of those outside", 17);

        void Entry(Action mark, string words, double lead = 13)
        {
            var width = lead + Small.WidthOf(words) + 14;
            if (x > Left && x + width - 14 > Left + side + Right)
            {
                (x, y) = (Left, y + 14);
            }

            mark();
            picture.Text(words, x + lead, y, Small);
            x += width;
        }
    }
}
