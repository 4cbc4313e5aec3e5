namespace ShopDays.Work;

/// <summary>A short line to print with a kind of work. It defers to local codes, product sheets and licensed practice.</summary>
/// <param name="Kind">The kind of work, as operations name it, for example <c>oily rags</c>.</param>
/// <param name="Text">What to print.</param>
/// <param name="SaidBy">The bodies that say so; a document's number only where it was seen.</param>
public sealed record Caution(string Kind, string Text, string SaidBy);
