using CsCheck;
using MathNet.Numerics.LinearAlgebra;
using ShopDays.Times.Regression;
using Xunit;

namespace ShopDays.Tests.Times.Regression;

/// <summary>Held against the textbook's formulas on dense matrices, which lose digits and are slow, and are plain to read.</summary>
public sealed class BlockRegressionTests
{
    private const double Shape = 4;
    private const double Scale = 3;

    // Some digits of a double are lost in the textbook's inverse.
    private const double Close = 1e-7;

    private static readonly int[] Blocks = [1, 2, 3];

    private static readonly Gen<double> Figure = Gen.Double[-2, 2];

    private static readonly Gen<TermPrior> Common = Prior(2);

    private static readonly Gen<RegressionRow> Row =
        from block in Gen.Int[0, Blocks.Length - 1]
        from own in Figure.Array[Blocks[block]]
        from common in Figure.Array[2]
        from right in Gen.Double[-5, 5]
        from weight in Gen.Double[0.1, 1]
        select new RegressionRow(block, own, common, right, weight);

    private static readonly Gen<(TermPrior Common, TermPrior[] Own, RegressionRow[] Rows, RegressionRow Asked)> Problem =
        from common in Common
        from one in Prior(1)
        from two in Prior(2)
        from three in Prior(3)
        from rows in Row.Array[1, 12]
        from asked in Row
        select (common, (TermPrior[])[one, two, three], rows, asked);

    [Fact]
    public void Blocks_give_what_the_textbook_gives() => Problem.Sample(problem =>
    {
        var learned = Learn(problem.Common, problem.Own, problem.Rows);
        var (mean, covariance, shape, scale) = Textbook(problem.Common, problem.Own, problem.Rows);
        var row = Dense(problem.Asked);
        var asked = learned.Whiten(problem.Asked);

        Assert.Equal(shape, learned.Shape, Close);
        Assert.Equal(scale, learned.Scale, Close * (1 + scale));
        Assert.Equal(row * mean, asked.Location, Close);
        Assert.Equal(row * covariance * row, asked.Variance, Close);
        Assert.Equal(Dense(problem.Rows[0]) * covariance * row, learned.Whiten(problem.Rows[0]).CovarianceWith(asked), Close);
    });

    [Fact]
    public void Rows_one_by_one_and_in_any_order_give_the_same_as_all_at_once() => Problem.Sample(problem =>
    {
        var atOnce = Learn(problem.Common, problem.Own, problem.Rows);
        var oneByOne = problem.Rows.Reverse().Aggregate(
            Learn(problem.Common, problem.Own, []),
            (sofar, row) => sofar.With(FoldedRows.Of([row])));

        Assert.Equal(atOnce.Scale, oneByOne.Scale, Close * (1 + atOnce.Scale));
        Assert.Equal(atOnce.Whiten(problem.Asked).Location, oneByOne.Whiten(problem.Asked).Location, Close);
        Assert.Equal(atOnce.Whiten(problem.Asked).Variance, oneByOne.Whiten(problem.Asked).Variance, Close);
        Assert.Equal(atOnce.LogEvidence(), oneByOne.LogEvidence(), Close);
    });

    [Fact]
    public void What_is_believed_otherwise_of_the_common_terms_is_as_if_it_always_had_been() => Gen.Select(Problem, Common).Sample((problem, otherwise) =>
    {
        var always = Learn(otherwise, problem.Own, problem.Rows);
        var later = Learn(problem.Common, problem.Own, problem.Rows).Believing(otherwise);

        Assert.Equal(always.Scale, later.Scale, Close * (1 + always.Scale));
        Assert.Equal(always.Whiten(problem.Asked).Location, later.Whiten(problem.Asked).Location, Close);
        Assert.Equal(always.LogEvidence(), later.LogEvidence(), Close);
    });

    // The chance of all rows is that of the first, then of the second when the first is known, and so on: each a Student.
    [Fact]
    public void The_evidence_is_the_product_of_each_row_s_chance_given_those_before() => Problem.Sample(problem =>
    {
        var sofar = Learn(problem.Common, problem.Own, []);
        var rows = problem.Rows.Select(row => row with { Weight = 1 }).ToList();
        var product = 0.0;
        foreach (var row in rows)
        {
            var seen = sofar.Whiten(row);
            var width = Math.Sqrt((1 + seen.Variance) * sofar.Scale / sofar.Shape);
            product += MathNet.Numerics.Distributions.StudentT.PDFLn(seen.Location, width, 2 * sofar.Shape, row.Right);
            sofar = sofar.With(FoldedRows.Of([row]));
        }

        Assert.Equal(product, sofar.LogEvidence() - (rows.Count * Math.Log(2 * Math.PI) / 2), Close * (1 + Math.Abs(product)));
    });

    private static Gen<TermPrior> Prior(int terms) =>
        from centre in Figure.Array[terms]
        from spread in Gen.Double[0.2, 3].Array[terms]
        select new TermPrior(centre, spread);

    private static BlockRegression Learn(TermPrior common, TermPrior[] own, IEnumerable<RegressionRow> rows) =>
        BlockRegression.FromPrior(common, own, Shape, Scale).With(FoldedRows.Of(rows));

    /// <summary>The row over all terms: the common ones, then each block's.</summary>
    private static Vector<double> Dense(RegressionRow row)
    {
        var all = Vector<double>.Build.Dense(2 + Blocks.Sum());
        all.SetSubVector(0, 2, Vector<double>.Build.Dense(row.Common));
        all.SetSubVector(2 + Blocks.Take(row.Block).Sum(), row.Own.Length, Vector<double>.Build.Dense(row.Own));
        return all;
    }

    /// <summary>Gelman et al., Bayesian Data Analysis, 3rd ed. (2013), chapter 14, from memory: the prior is data too.</summary>
    private static (Vector<double> Mean, Matrix<double> Covariance, double Shape, double Scale) Textbook(TermPrior common, TermPrior[] own, RegressionRow[] rows)
    {
        var centre = Vector<double>.Build.DenseOfEnumerable(common.Centre.Concat(own.SelectMany(one => one.Centre)));
        var prior = Matrix<double>.Build.DenseOfDiagonalArray([.. common.Spread.Concat(own.SelectMany(one => one.Spread)).Select(spread => 1 / (spread * spread))]);
        var design = Matrix<double>.Build.DenseOfRowVectors(rows.Select(Dense));
        var weight = Matrix<double>.Build.DenseOfDiagonalArray([.. rows.Select(row => row.Weight)]);
        var right = Vector<double>.Build.DenseOfEnumerable(rows.Select(row => row.Right));
        var precision = prior + (design.Transpose() * weight * design);
        var covariance = precision.Inverse();
        var mean = covariance * ((prior * centre) + (design.Transpose() * weight * right));
        var squares = ((right - (design * mean)) * (weight * (right - (design * mean)))) + ((mean - centre) * (prior * (mean - centre)));
        return (mean, covariance, Shape + (rows.Sum(row => row.Weight) / 2), Scale + (squares / 2));
    }
}
