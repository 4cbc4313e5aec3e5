using ShopDays.Cli.Paper.Setting;
using ShopDays.Work;

namespace ShopDays.Cli.Paper.Lists;

/// <summary>The cautions of every kind of work in the plan, each with the bodies that say so.</summary>
internal static class CautionPages
{
    // How the data says that no body stands behind a caution: nothing that a reader of the page could look up.
    private const string NoBody = "common practice";

    private static readonly double[] Sizes = [10.5, 9.5, 8.5];

    /// <summary>The blocks: two columns on one page, in the largest letters that let them stand there.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="room">The space of a page.</param>
    public static IReadOnlyList<Block> Of(PlanPaper plan, Room room) =>
        Densities.First(Sizes, size => [.. Set(plan, TypeScale.Body with { Size = size }, room, columns: true)], room)
            ?? [.. Set(plan, TypeScale.Body, room, columns: false)];

    private static IEnumerable<Block> Set(PlanPaper plan, TextStyle style, Room room, bool columns)
    {
        yield return new Heading("Cautions", TypeScale.Heading) { BookmarkLevel = 0 };
        yield return new Paragraph(
            "Short reminders that go with the work of this plan. They are no standard and no instruction for a tool or a product: local law, the maker's and the product's own sheets and a licensed person's advice come first.",
            style);
        Block[] notes = [.. plan.Cautions.Select(caution => new NoteBox(Wording.Capital(caution.Kind), [.. Lines(caution)], style) { Caution = true })];
        if (columns)
        {
            yield return SideBySide.Balanced(16, notes, room);
            yield break;
        }

        foreach (var note in notes)
        {
            yield return note;
        }
    }

    private static IEnumerable<string> Lines(Caution caution)
    {
        yield return caution.Text;
        if (!caution.SaidBy.StartsWith(NoBody, StringComparison.Ordinal))
        {
            yield return $"Said by {caution.SaidBy}.";
        }
    }
}
