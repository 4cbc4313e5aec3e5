using ShopDays.Cli.Paper.Setting;
using ShopDays.Work;

namespace ShopDays.Cli.Paper.Overview;

/// <summary>How each stage of the making is told from the others where there is no colour.</summary>
internal static class StagePattern
{
    /// <summary>The filling of its bars.</summary>
    public static Fill Of(Stage stage) => stage switch
    {
        Stage.Drawing => Fill.Hatched(Hatch.Falling, 5),
        Stage.BuyingTimber => Fill.Hatched(Hatch.Dots, 4.5),
        Stage.Layout => Fill.Hatched(Hatch.Dots, 3),
        Stage.Sawing => Fill.Hatched(Hatch.Rising, 3),
        Stage.Dimensioning => Fill.Hatched(Hatch.Upright, 2.5),
        Stage.Joinery => Fill.Hatched(Hatch.Crossed, 3),
        Stage.Assembly => Fill.Shade(0.2),
        Stage.Finish => Fill.Shade(0.75),
        Stage.Delivery => Fill.Hatched(Hatch.Level, 2.5),
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    /// <summary>What it is called.</summary>
    public static string Words(Stage stage) => stage switch
    {
        Stage.Drawing => "drawing",
        Stage.BuyingTimber => "buying timber",
        Stage.Layout => "layout",
        Stage.Sawing => "sawing",
        Stage.Dimensioning => "planing to size",
        Stage.Joinery => "joinery",
        Stage.Assembly => "gluing up",
        Stage.Finish => "finish",
        Stage.Delivery => "delivery",
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    /// <summary>The line that says what each filling means, which is of no use without the pictures.</summary>
    public static Drawing Legend(IEnumerable<Stage> stages)
    {
        Stage[] shown = [.. stages.Distinct().Order()];
        return new(16, Meaning.None, (page, box) =>
        {
            var x = box.X;
            var style = TypeScale.Small with { Size = 8 };
            foreach (var stage in shown)
            {
                page.Rectangle(new Box(x, box.Y + 2, 16, 8), Pen.Fine, Of(stage));
                page.Text(Words(stage), x + 19, box.Y + 9.5, style);
                x += 19 + style.WidthOf(Words(stage)) + 9;
            }
        });
    }
}
