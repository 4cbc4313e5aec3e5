using ShopDays.Cli.Paper.Setting;

namespace ShopDays.Cli.Paper.Rates;

/// <summary>The marks of times in pictures, told apart by shape alone, so that any printer shows them.</summary>
internal static class Mark
{
    /// <summary>A time inside its range: a full round.</summary>
    public static void Inside(Picture picture, double x, double y, double reach = 2.1) =>
        picture.Disc(new(x - reach, y - reach, 2 * reach, 2 * reach), null, Fill.Shade(0.1));

    /// <summary>A time outside its range: an open square on its corner.</summary>
    public static void Outside(Picture picture, double x, double y, double reach = 3.8) =>
        picture.Polygon([new(x, y - reach), new(x + reach, y), new(x, y + reach), new(x - reach, y)], new Pen(1.1), Fill.Shade(1));

    /// <summary>A time that is held out: a cross.</summary>
    public static void HeldOut(Picture picture, double x, double y, double reach = 3.2)
    {
        picture.Line(x - reach, y - reach, x + reach, y + reach, new Pen(1.4));
        picture.Line(x - reach, y + reach, x + reach, y - reach, new Pen(1.4));
    }
}
