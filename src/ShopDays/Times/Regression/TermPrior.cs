namespace ShopDays.Times.Regression;

/// <summary>What is believed of some terms before anything is observed: each is normal by itself.</summary>
/// <param name="Centre">Their centres.</param>
/// <param name="Spread">Their standard deviations where s is 1; infinite for a flat prior, which says nothing.</param>
internal sealed record TermPrior(double[] Centre, double[] Spread)
{
    public int Count => Centre.Length;
}
