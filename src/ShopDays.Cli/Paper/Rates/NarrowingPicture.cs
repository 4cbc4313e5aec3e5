using ShopDays.Cli.Paper.Setting;
using ShopDays.Cli.Phrases;
using ShopDays.Times;

namespace ShopDays.Cli.Paper.Rates;

/// <summary>
/// How one rate became known: at the left what the tables say, then the 80 % range after each of its times as a band with its
/// middle, and the times themselves as marks. From one time to the next is one step; their dates stand below.
/// </summary>
/// <param name="told">The rates.</param>
/// <param name="course">The course of one of them.</param>
/// <param name="width">How wide it is, in points.</param>
/// <param name="height">How high it is, in points.</param>
internal sealed class NarrowingPicture(ToldRates told, RateCourse course, double width, double height)
{
    private const double Left = 34;
    private const double Right = 8;
    private const double Head = 34;
    private const double Foot = 17;
    private const double OfTables = 34;

    private static readonly Fill Known = Fill.Shade(0.83);
    private static readonly Fill Tables = Fill.Hatched(Hatch.Rising, 4);
    private static readonly Pen Middle = new(1.3, 0.1);
    private static readonly TextStyle Name = new(10, Weight.SemiBold);
    private static readonly TextStyle Small = new(8.5, Weight.Regular, 0.2);

    private readonly RateReading reading = told.ReadingOf(course.Rate);

    /// <summary>What it says, for who cannot see it.</summary>
    public string Description => $"{ToldRates.NameOf(course.Rate)}, {reading.Unit}: {reading.Write(course.Rate.Prior)} by the tables, {reading.Write(course.Rate.Learned)} after {CountWords.Of(course.Times.Count, "time")}.";

    /// <summary>Draws it.</summary>
    public Picture Drawn()
    {
        var picture = new Picture();
        var room = width - Left - Right;
        var figures = course.Then
            .Select(then => then.Belief)
            .Append(course.Rate.Prior)
            .SelectMany(belief => (double[])[reading.Range80(belief).Low, reading.Range80(belief).High])
            .Concat(course.Times.Where(time => !time.IsHeldOut).Select(time => reading.Figure(time.EachUnit)));
        var up = LogScale.Around(figures, height - Foot, Head);
        picture.Text(Name.Shortened($"{ToldRates.NameOf(course.Rate)}: {reading.Unit}", width), 0, Name.Baseline - 2, Name);
        picture.Text(Small.Shortened(Under(), width), 0, Name.LineHeight + 8, Small);
        foreach (var (figure, words) in up.FigureTicks())
        {
            picture.Line(Left, up.Place(figure), Left + room, up.Place(figure), new Pen(0.4, 0.8));
            picture.Text(words, Left - 4, up.Place(figure) + 3, Small, Align.Right);
        }

        DrawBands(picture, up, Left + room);
        picture.Rectangle(new(Left, Head, room, height - Foot - Head), new Pen(0.6, 0.3));
        for (var at = 0; at < course.Times.Count; at++)
        {
            DrawTime(picture, course.Times[at], At(at + 1), up);
        }

        DrawDates(picture);
        return picture;
    }

    private double At(double entry) => Left + OfTables + ((width - Left - Right - OfTables) * (entry - 1) / Math.Max(1, course.Times.Count));

    private string Under()
    {
        var at = told.AtOf(course.Rate);
        return $"{(at.Length > 0 ? at + "; " : "")}{CountWords.Of(course.Times.Count, "time")}";
    }

    private void DrawBands(Picture picture, LogScale up, double right)
    {
        Band(course.Rate.Prior, Left, At(1), Tables);
        for (var at = 0; at < course.Then.Count; at++)
        {
            Band(course.Then[at].Belief, At(course.Then[at].Entry), at + 1 < course.Then.Count ? At(course.Then[at + 1].Entry) : right, Known);
        }

        void Band(TimeBelief belief, double from, double to, Fill fill)
        {
            var (low, high) = reading.Range80(belief);
            picture.Rectangle(new(from, up.Place(high), to - from, up.Place(low) - up.Place(high)), new Pen(0.5, 0.45), fill);
            picture.Line(from, up.Place(reading.Middle(belief)), to, up.Place(reading.Middle(belief)), Middle);
        }
    }

    private void DrawTime(Picture picture, RateTime time, double x, LogScale up)
    {
        var y = up.PlaceInside(reading.Figure(time.EachUnit));
        if (time.IsHeldOut)
        {
            Mark.HeldOut(picture, x, y, 2.6);
        }
        else
        {
            Mark.Inside(picture, x, y, 2.3);
        }
    }

    private void DrawDates(Picture picture)
    {
        var ground = height - Foot;
        picture.Text("tables", Left, ground + 11, Small);
        var taken = Left + Small.WidthOf("tables") + 6;
        var last = DateWords.Plain(course.Times[^1].On);
        var end = At(course.Times.Count);
        var lastFrom = Math.Min(end - (Small.WidthOf(last) / 2), width - Small.WidthOf(last));
        for (var at = 0; at < course.Times.Count - 1; at++)
        {
            var words = DateWords.Plain(course.Times[at].On);
            var from = Math.Max(At(at + 1) - (Small.WidthOf(words) / 2), at == 0 ? taken : 0);
            if (from >= taken && from + Small.WidthOf(words) + 8 <= lastFrom)
            {
                Put(words, from, At(at + 1));
                taken = from + Small.WidthOf(words) + 14;
            }
        }

        if (lastFrom >= taken - 14)
        {
            Put(last, Math.Max(lastFrom, taken - 8), end);
        }

        void Put(string words, double from, double x)
        {
            picture.Line(x, ground, x, ground + 3, Pen.Fine);
            picture.Text(words, from, ground + 11, Small);
        }
    }
}
