namespace ShopDays.Cli.Bench.Pages;

/// <summary>The addresses of pages about pieces and boards, and of the paper that goes with them.</summary>
internal static class PieceAddress
{
    /// <summary>Of a part.</summary>
    public static string OfPart(string job, string part) => $"/piece?job={Uri.EscapeDataString(job)}&part={Uri.EscapeDataString(part)}";

    /// <summary>Of a board.</summary>
    public static string OfBoard(string job, string board) => $"/piece?job={Uri.EscapeDataString(job)}&board={Uri.EscapeDataString(board)}";

    /// <summary>Of a job's plan on paper.</summary>
    public static string OfPlan(string job) => $"/job/plan.pdf?job={Uri.EscapeDataString(job)}";
}
