namespace ShopDays.Cli.Bench.Pages;

/// <summary>What dries, sets and is waited for, in words.</summary>
/// <param name="Now">What goes on now, what ends first standing first.</param>
/// <param name="Held">What must be left alone meanwhile: clamps, the bench, the air.</param>
/// <param name="Free">What may be done meanwhile.</param>
/// <param name="Later">Waits that are still to begin.</param>
public sealed record WaitsSheet(IReadOnlyList<WaitCard> Now, IReadOnlyList<string> Held, IReadOnlyList<string> Free, TextTable Later);

/// <summary>A wait that goes on.</summary>
/// <param name="What">What it is.</param>
/// <param name="Title">The job that waits.</param>
/// <param name="Until">Until when.</param>
/// <param name="Left">How long that is from now.</param>
/// <param name="Share">How much of it is over, 0 to 1.</param>
/// <param name="Then">What can be done when it is over; empty for nothing.</param>
public sealed record WaitCard(string What, string Title, string Until, string Left, double Share, string Then);
