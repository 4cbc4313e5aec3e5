using System.Text;
using ShopDays.Cli.Paper.Setting;
using ShopDays.Cli.Phrases;

namespace ShopDays.Cli.Paper;

/// <summary>What of the names that a maker gave cannot be printed, because the font of the paper does not hold its script.</summary>
internal static class PaperNames
{
    /// <summary>The characters among some names that the font lacks, each once, in the order in which they come; spaces and control characters are printed as spaces.</summary>
    public static IReadOnlyList<Rune> Unprintable(params IEnumerable<string> names) =>
    [
        .. names
            .SelectMany(name => name.EnumerateRunes())
            .Where(rune => !FontFace.Of(Weight.Regular).Holds(rune.Value))
            .Distinct(),
    ];

    /// <summary>A sentence about them; null if all can be printed.</summary>
    public static string? Remark(params IEnumerable<string> names)
    {
        var count = Unprintable(names).Count;
        return count == 0
            ? null
            : $"{CountWords.Of(count, "character")} of the names cannot be printed in the paper's font; a framed {FontFace.Substitute} stands in {(count == 1 ? "its" : "their")} place.";
    }

    /// <summary>The names in a plan: of the shop, the job, its parts and boards and their timber, its tasks and workers, what it waits for and where it was stopped.</summary>
    public static IEnumerable<string> Of(PlanPaper plan) =>
    [
        plan.Shop.Name,
        plan.Job.Name,
        .. plan.Job.Parts.Select(part => part.Name),
        .. plan.Job.Boards.SelectMany(board => (string[])[board.Name, board.Species.Name]),
        .. plan.Graph.Tasks.Select(task => task.Name),
        .. plan.Graph.Awaited.Select(one => one.Decision.What),
        .. plan.Plan.Sessions.Select(session => session.Session.Worker),
        plan.Rest?.Stopped?.Text ?? "",
    ];
}
