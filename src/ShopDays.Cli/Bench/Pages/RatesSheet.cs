using Microsoft.AspNetCore.Components;

namespace ShopDays.Cli.Bench.Pages;

/// <summary>What was learned, in words and drawings.</summary>
/// <param name="Sentences">The report in words.</param>
/// <param name="Rates">The rates of what was timed.</param>
/// <param name="SmallPrint">What the figures mean.</param>
/// <param name="Drawing">Expected against taken; null where nothing was timed.</param>
/// <param name="Asked">Times that look odd, each with its entry.</param>
/// <param name="NotLearnedFrom">What nothing is learned from, and why.</param>
public sealed record RatesSheet(IReadOnlyList<string> Sentences, TextTable Rates, string SmallPrint, MarkupString? Drawing, IReadOnlyList<Link> Asked, IReadOnlyList<string> NotLearnedFrom);
