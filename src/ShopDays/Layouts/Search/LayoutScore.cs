namespace ShopDays.Layouts.Search;

/// <summary>How good a layout is; less is better, the first figure that differs decides.</summary>
/// <param name="LeftOut">Volume of the parts without a place, spares counted less.</param>
/// <param name="Bought">Value of the boards cut that are not on hand, a little less for those hardly used.</param>
/// <param name="NotHonoured">Matched groups that are out of sequence, twice those spread over boards, and the steps of figure that show parts miss.</param>
/// <param name="Money">Timber used less offcuts kept, sawing, planing down, glue edges.</param>
internal readonly record struct LayoutScore(double LeftOut, double Bought, int NotHonoured, double Money)
{
    /// <summary>Whether it is better than another, or worse in money, or in the value of what is bought, by less than a leeway.</summary>
    public bool Beats(LayoutScore other, double leeway = 0, double leewayBought = 0)
    {
        if (LeftOut != other.LeftOut)
        {
            return LeftOut < other.LeftOut;
        }

        if (Bought != other.Bought)
        {
            return Bought < other.Bought + leewayBought;
        }

        return NotHonoured != other.NotHonoured ? NotHonoured < other.NotHonoured : Money < other.Money + leeway;
    }
}
