using ShopDays.Cli.Paper.Rates;
using ShopDays.Cli.Paper.Setting;
using ShopDays.Cli.Phrases;
using ShopDays.Times;

namespace ShopDays.Cli.Paper.Svg;

/// <summary>The pictures of a shop's rates as drawings of their own.</summary>
internal static class RateDrawings
{
    // Little more points than a telephone held upright has pixels across.
    private const double Width = 400;
    private const double Margin = 8;
    private const double Panel = 150;
    private const double Between = 14;

    private static readonly TextStyle Heading = new(12, Weight.SemiBold);
    private static readonly TextStyle Words = new(8.5);

    /// <summary>The drawings with the names of their files; none where nothing was timed.</summary>
    /// <param name="told">The rates.</param>
    /// <param name="courses">How those with most times became known.</param>
    public static IReadOnlyList<(string Name, byte[] Drawing)> Of(ToldRates told, IReadOnlyList<RateCourse> courses) =>
    [
        .. told.Card is null ? ((string, byte[])[])[] : [("expected-and-taken.svg", Expected(told))],
        .. courses.Count == 0 ? ((string, byte[])[])[] : [("rates-over-time.svg", OverTime(told, courses))],
    ];

    /// <summary>Expected against taken; something must have been timed.</summary>
    /// <param name="told">The rates.</param>
    /// <param name="newest">How many of the times are drawn, the newest; all unless said.</param>
    public static byte[] Expected(ToldRates told, int newest = int.MaxValue)
    {
        var picture = new EstimatePicture(told.Model, Width - (2 * Margin), newest);
        var (heading, head) = BoardDrawings.Lines([$"{EstimatePicture.Title}{(told.Model.Log.Count > newest ? FormattableString.Invariant($", the newest {newest}") : "")}: {told.Shop.Name}"], Heading, Width - (2 * Margin));
        return SvgText.Of(
            "expected-and-taken",
            $"{EstimatePicture.Title}: {told.Shop.Name}",
            picture.Description,
            new(Width, Margin + head + 4 + picture.Height + Margin),
            [(heading, new(Margin, Margin)), (picture.Drawn(), new(Margin, Margin + head + 4))]);
    }

    private static byte[] OverTime(ToldRates told, IReadOnlyList<RateCourse> courses)
    {
        var width = Width - (2 * Margin);
        var title = $"How rates became known: {told.Shop.Name}";
        var (heading, head) = BoardDrawings.Lines([title], Heading, width);
        NarrowingPicture[] panels = [.. courses.Select(course => new NarrowingPicture(told, course, width, Panel))];
        var top = Margin + head + 6;
        var (key, foot) = BoardDrawings.Lines([RatesBook.Key], Words, width);
        var below = top + (panels.Length * (Panel + Between));
        return SvgText.Of(
            "rates-over-time",
            title,
            string.Join(" ", panels.Select(panel => panel.Description)),
            new(Width, below + foot + Margin),
            [(heading, new(Margin, Margin)), .. panels.Select((panel, at) => (panel.Drawn(), new Spot(Margin, top + (at * (Panel + Between))))), (key, new(Margin, below))]);
    }
}
