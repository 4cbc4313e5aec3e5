using MathNet.Numerics.Distributions;
using ShopDays.Logbook;
using ShopDays.Times.Regression;

namespace ShopDays.Times;

/// <summary>Judges each time of a log by all the others, and learns from those that are not far out.</summary>
internal static class Judgement
{
    /// <summary>Far-out times spoil the judgement of others: those without them are judged once more, and so on, a few times.</summary>
    private const int MostRounds = 4;

    /// <summary>So many times are held out at the most, the farthest, while a log is short.</summary>
    private const int FewOdd = 3;

    /// <summary>Of a long log one time in so many is held out at the most: where more lie far out, such days are part of the work.</summary>
    private const int OneOddIn = 100;

    /// <summary>Learns from a log until no more of its times are found far out, or the rounds are used up.</summary>
    /// <param name="terms">The terms.</param>
    /// <param name="log">The work, its row, and the noise that the row was divided by.</param>
    /// <returns>What is known, and each time beside what the others make one expect, in the order of the log.</returns>
    public static (BlockRegression Regression, IReadOnlyList<JudgedWork> Log) Of(
        RateTerms terms, IReadOnlyList<(TimedWork Work, RegressionRow Row, double Noise)> log)
    {
        var heldOut = new bool[log.Count];
        for (var round = 1; ; round++)
        {
            var regression = BelievedWidth.Learn(terms, FoldedRows.Of(log.Where((_, index) => !heldOut[index]).Select(one => one.Row)));
            JudgedWork[] judged = [.. log.Select((one, index) => Judge(regression, one.Work, one.Row, one.Noise, heldOut[index]))];
            var learnedFrom = heldOut.Count(held => !held);
            var farOff = StudentT.InvCDF(0, 1, 2 * regression.Shape, 1 - JudgedWork.Oddity);
            var odd = new bool[log.Count];
            foreach (var (_, index) in judged
                .Select((one, index) => (one, index))
                .Where(pair => pair.one.IsOdd(pair.one.IsHeldOut ? learnedFrom : learnedFrom - 1, farOff))
                .OrderByDescending(pair => Math.Abs(pair.one.Luck.Off))
                .Take(Math.Max(FewOdd, log.Count / OneOddIn)))
            {
                odd[index] = true;
            }

            if (round == MostRounds || odd.SequenceEqual(heldOut))
            {
                return (regression, judged);
            }

            heldOut = odd;
        }
    }

    private static JudgedWork Judge(BlockRegression regression, TimedWork work, RegressionRow row, double noise, bool isOut)
    {
        var expected = Expected(regression, row, noise, work, isOut);
        return new(work, expected, isOut, new(row.Block, expected.Location, expected.OffOf(work.Took), row.Weight));
    }

    /// <summary>
    /// What would be expected without that row, in closed form: taking a row out of a regression changes its figures by a
    /// matrix of rank one.
    /// </summary>
    private static TimeBelief Expected(BlockRegression regression, RegressionRow row, double noise, TimedWork work, bool isOut)
    {
        var terms = regression.Whiten(row);
        var (reach, shape, scale) = (terms.Variance, regression.Shape, regression.Scale);
        var off = row.Right - terms.Location;
        if (!isOut)
        {
            // All that the row itself has contributed: its leverage, its half of a degree, its part of the sum of squares.
            var leverage = row.Weight * reach;
            off /= 1 - leverage;
            reach /= 1 - leverage;
            shape -= row.Weight / 2;
            scale -= row.Weight * off * off * (1 - leverage) / 2;
        }

        // The row counts in units of its noise; the time's logarithm lies as far from its centre as the row from its own.
        return new(Math.Log(work.Took.Minutes) - (off * noise), noise * Math.Sqrt((1 + reach) * scale / shape), 2 * shape);
    }
}
