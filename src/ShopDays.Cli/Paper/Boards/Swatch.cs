using ShopDays.Cli.Paper.Setting;

namespace ShopDays.Cli.Paper.Boards;

/// <summary>How the places of a board are filled, and the line that says so.</summary>
internal static class Swatch
{
    /// <summary>Trimmed ends, straightened edges and offcuts too small to keep.</summary>
    public static Fill Lost { get; } = Fill.Hatched(Hatch.Rising, 4);

    /// <summary>Offcuts worth keeping.</summary>
    public static Fill Kept { get; } = Fill.Hatched(Hatch.Dots, 5);

    /// <summary>Knots, shakes and the like.</summary>
    public static Fill Flawed { get; } = Fill.Hatched(Hatch.Crossed, 2.5);

    /// <summary>The line that says what each means, which is of no use without the pictures.</summary>
    public static Drawing Legend { get; } = new(16, Meaning.None, (page, box) =>
    {
        var x = box.X;
        List<(Fill, string)> meanings =
            [(Fill.Shade(1), "a piece"), (Kept, "an offcut to keep"), (Lost, "lost"), (Flawed, "a flaw, left out")];
        foreach (var (fill, words) in meanings)
        {
            page.Rectangle(new Box(x, box.Y + 2, 20, 9), Pen.Fine, fill);
            page.Text(words, x + 25, box.Y + 10, TypeScale.Small);
            x += 25 + TypeScale.Small.WidthOf(words) + 18;
        }

        page.Text("numbers: order of cutting", x, box.Y + 10, TypeScale.Small);
    });
}
