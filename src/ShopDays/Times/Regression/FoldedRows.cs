using MathNet.Numerics.LinearAlgebra;

namespace ShopDays.Times.Regression;

/// <summary>Rows of a regression, folded block by block: as good as the rows themselves, and no more of them than terms.</summary>
/// <param name="Triangles">A triangle of [own | common | right side] for each block that has rows.</param>
/// <param name="Weight">The weights of all rows together.</param>
internal sealed record FoldedRows(IReadOnlyList<(int Block, Matrix<double> Triangle)> Triangles, double Weight)
{
    /// <summary>Folds rows.</summary>
    public static FoldedRows Of(IEnumerable<RegressionRow> rows)
    {
        var triangles = new List<(int, Matrix<double>)>();
        var weight = 0.0;
        foreach (var block in rows.GroupBy(row => row.Block))
        {
            var all = block.ToList();
            triangles.Add((block.Key, Matrix<double>.Build.DenseOfArray(Rotations.Fold(Matrix<double>.Build.DenseOfRowArrays(all.Select(Line))))));
            weight += all.Sum(row => row.Weight);
        }

        return new(triangles, weight);
    }

    private static double[] Line(RegressionRow row)
    {
        var root = Math.Sqrt(row.Weight);
        return [.. row.Own.Select(figure => figure * root), .. row.Common.Select(figure => figure * root), row.Right * root];
    }
}
