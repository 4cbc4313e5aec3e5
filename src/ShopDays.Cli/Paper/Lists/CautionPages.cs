using ShopDays.Cli.Paper.Setting;

namespace ShopDays.Cli.Paper.Lists;

/// <summary>The cautions of every kind of work in the plan, each with the bodies that say so.</summary>
internal static class CautionPages
{
    /// <summary>The blocks.</summary>
    public static IEnumerable<Block> Of(PlanPaper plan)
    {
        yield return new Heading("Cautions", TypeScale.Heading) { BookmarkLevel = 0 };
        yield return new Paragraph(
            "Short reminders that go with the work of this plan. They are no standard and no instruction for a tool or a product: local law, the maker's and the product's own sheets and a licensed person's advice come first.",
            TypeScale.Body);
        foreach (var caution in plan.Cautions)
        {
            yield return new NoteBox(Wording.Capital(caution.Kind), [caution.Text, $"Said by {caution.SaidBy}."], TypeScale.Body) { Caution = true };
        }
    }
}
