namespace ShopDays.Layouts;

/// <summary>How far a search has come; reported now and then, never asked for an answer.</summary>
/// <param name="Round">Rounds made.</param>
/// <param name="Rounds">Rounds that will be made, at most.</param>
/// <param name="Left">Parts that have no place yet in the best arrangement so far.</param>
/// <param name="Cost">What the best arrangement so far costs, in the currency of the boards' prices.</param>
public readonly record struct LayoutStep(int Round, int Rounds, int Left, double Cost);
