namespace ShopDays.Cli.Commands;

/// <summary>One change that a shop could make, to be tried.</summary>
/// <param name="Name">What it is, in words.</param>
/// <param name="Text">The same as the keys of a variant.</param>
internal sealed record SingleChange(string Name, string Text);
