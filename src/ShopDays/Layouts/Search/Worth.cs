using ShopDays.Measures;

namespace ShopDays.Layouts.Search;

/// <summary>What an hour of work and a board foot without a price count for, and how a preference shifts the judgement.</summary>
/// <param name="Hour">What an hour of the shop is worth.</param>
/// <param name="HourIsAssumed">Whether the shop does not say so.</param>
/// <param name="BoardFoot">What a board foot of timber without a price is worth.</param>
/// <param name="WeightOfWork">What an hour's worth is multiplied with while layouts are compared, never when a cost is told.</param>
internal sealed record Worth(Money Hour, bool HourIsAssumed, Money BoardFoot, double WeightOfWork)
{
    /// <summary>
    /// What a board foot of timber without a price counts for, in hours of the shop: enough that fewer and smaller
    /// boards are preferred, too little to outweigh much sawing (common practice, no source).
    /// </summary>
    private const decimal HoursPerBoardFoot = 0.1m;

    /// <summary>ISO 4217's code where no currency is involved: there is neither a rate nor a price.</summary>
    public static Currency NoCurrency { get; } = new("XXX", 2);

    /// <summary>What a minute counts for while layouts are compared.</summary>
    public double JudgedPerMinute => JudgedPerHour / 60;

    /// <summary>What an hour counts for while layouts are compared.</summary>
    public double JudgedPerHour => (double)Hour.Amount * WeightOfWork;

    /// <summary>
    /// What is given where it is given. Without a rate an hour is worth what ten board feet cost; an hour said to be worth
    /// nothing tells nothing of timber, so that a board foot without a price is worth what others cost.
    /// </summary>
    public static Worth Of(LayoutRequest request)
    {
        var weight = WeightOf(request.Preference);
        var priced = request.Boards.Where(board => board.Price is not null).ToList();
        var mean = priced.Count == 0
            ? new Money(1, request.Rates.HourlyRate?.Currency ?? NoCurrency)
            : priced.Select(board => board.Price!).Aggregate((sum, price) => sum + price) * (1 / (decimal)priced.Sum(board => board.Volume.BoardFeet));
        return request.Rates.HourlyRate is { } rate
            ? new(rate, false, rate.Amount > 0 ? rate * HoursPerBoardFoot : mean, weight)
            : new(mean * (1 / HoursPerBoardFoot), true, mean, weight);
    }

    // Tried on three jobs of a table, a bench and a cupboard: at a fiftieth the bench took two hours more at the saw to keep
    // 2 % more in offcuts, at ten times nothing was gained over four (measured here, no other source).
    private static double WeightOf(LayoutPreference preference) => preference switch
    {
        LayoutPreference.AsPriced => 1,
        LayoutPreference.Timber => 0.1,
        LayoutPreference.Sawing => 4,
        _ => throw new System.Diagnostics.UnreachableException(),
    };
}
