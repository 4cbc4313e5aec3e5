using ShopDays.Parts;

namespace ShopDays.Cli.Files;

/// <summary>
/// What reading a shop file gave. Where the file has mistakes there is no shop, but still what a job file is read by, so
/// that the mistakes of both are reported in one run.
/// </summary>
/// <param name="Shop">The shop; null when its file has mistakes.</param>
/// <param name="Reading">Units and currency for the files of its jobs.</param>
/// <param name="Allowances">Its allowances.</param>
/// <param name="Methods">Its usual methods.</param>
internal sealed record ShopReading(Shop? Shop, Reading Reading, Allowances Allowances, IReadOnlyDictionary<string, string> Methods);
