using MathNet.Numerics.LinearAlgebra;

namespace ShopDays.Times.Regression;

/// <summary>
/// Bayesian linear regression whose terms fall into blocks: each row has terms of one block and terms that all share. Given
/// s2 the terms are jointly normal with covariance s2 times a matrix, and s2 is inverse gamma: the conjugate family, so
/// that rows change figures and never the form.
/// </summary>
/// <remarks>
/// Each block is folded into a triangle by itself, what is left of it speaks of the common terms only, and these are folded
/// once more: exact, and a new row costs one small block. Prior centres and spreads are rows like any other; a flat prior
/// is no row. Sources: Gelman et al., Bayesian Data Analysis, 3rd ed. (2013), chapter 14, for the family; Golub and
/// Van Loan, Matrix Computations, 4th ed. (2013), section 6.3, for the blocks; both from memory.
/// </remarks>
internal sealed class BlockRegression
{
    private readonly TermPrior common;
    private readonly TermPrior[] priors;

    // Triangles of [own | common | right side]; null where nothing but the prior is known.
    private readonly double[,]?[] blocks;
    private readonly double[,] top;
    private readonly double priorScale;

    private BlockRegression(TermPrior common, TermPrior[] priors, double[,]?[] blocks, double shape, double priorScale)
    {
        this.common = common;
        this.priors = priors;
        this.blocks = blocks;
        this.priorScale = priorScale;
        Shape = shape;
        top = Rotations.Fold(LeftOfBlocks());
        var residual = top[common.Count, common.Count];
        Scale = priorScale + (residual * residual / 2);
    }

    /// <summary>Shape of the inverse gamma of s2.</summary>
    public double Shape { get; }

    /// <summary>Scale of the inverse gamma of s2.</summary>
    public double Scale { get; }

    /// <summary>What is known before any row.</summary>
    /// <param name="common">Of the common terms.</param>
    /// <param name="blocks">Of the terms of each block.</param>
    /// <param name="shape">Of the inverse gamma of s2. With flat priors it is minus half the number of terms.</param>
    /// <param name="scale">Of the inverse gamma of s2.</param>
    public static BlockRegression FromPrior(TermPrior common, IEnumerable<TermPrior> blocks, double shape, double scale)
    {
        TermPrior[] priors = [.. blocks];
        return new(common, priors, new double[,]?[priors.Length], shape, scale);
    }

    /// <summary>What is known with more rows.</summary>
    public BlockRegression With(IEnumerable<RegressionRow> rows)
    {
        var now = (double[,]?[])blocks.Clone();
        var shape = Shape;
        foreach (var group in rows.GroupBy(row => row.Block))
        {
            now[group.Key] = Rotations.Fold(Rows(group.Key, [.. group]));
            shape += group.Sum(row => row.Weight) / 2;
        }

        return new(common, priors, now, shape, priorScale);
    }

    /// <summary>A row in independent terms.</summary>
    public Whitened Whiten(RegressionRow row) => Whiten(row.Block, row.Own, row.Common);

    /// <inheritdoc cref="Whiten(RegressionRow)"/>
    public Whitened Whiten(int block, double[] own, double[] shared)
    {
        var ownPart = (double[])own.Clone();
        var commonPart = (double[])shared.Clone();
        var location = 0.0;
        if (blocks[block] is { } triangle)
        {
            Rotations.SolveMirrored(triangle, ownPart);
            var right = own.Length + shared.Length;
            for (var term = 0; term < own.Length; term++)
            {
                location += ownPart[term] * triangle[term, right];
                for (var other = 0; other < shared.Length; other++)
                {
                    commonPart[other] -= triangle[term, own.Length + other] * ownPart[term];
                }
            }
        }
        else
        {
            var prior = priors[block];
            for (var term = 0; term < own.Length; term++)
            {
                location += own[term] * prior.Centre[term];
                ownPart[term] = own[term] * prior.Spread[term];
            }
        }

        Rotations.SolveMirrored(top, commonPart);
        for (var term = 0; term < commonPart.Length; term++)
        {
            location += commonPart[term] * top[term, commonPart.Length];
        }

        return new(block, ownPart, commonPart, location);
    }

    /// <summary>The block's triangle, or its prior, with more rows below it.</summary>
    private Matrix<double> Rows(int block, IReadOnlyList<RegressionRow> more)
    {
        var (own, shared) = (priors[block].Count, common.Count);
        var before = blocks[block];
        var above = before is null ? own : own + shared + 1;
        var all = Matrix<double>.Build.Dense(above + more.Count, own + shared + 1);
        if (before is null)
        {
            Write(priors[block], all, 0);
        }
        else
        {
            all.SetSubMatrix(0, 0, Matrix<double>.Build.DenseOfArray(before));
        }

        for (var row = 0; row < more.Count; row++)
        {
            var root = Math.Sqrt(more[row].Weight);
            for (var term = 0; term < own; term++)
            {
                all[above + row, term] = more[row].Own[term] * root;
            }

            for (var term = 0; term < shared; term++)
            {
                all[above + row, own + term] = more[row].Common[term] * root;
            }

            all[above + row, own + shared] = more[row].Right * root;
        }

        return all;
    }

    /// <summary>The prior of the common terms, and what each block says of them when its own are free.</summary>
    private Matrix<double> LeftOfBlocks()
    {
        var shared = common.Count;
        var told = Enumerable.Range(0, blocks.Length).Where(block => blocks[block] is not null).ToList();
        var all = Matrix<double>.Build.Dense(shared + (told.Count * (shared + 1)), shared + 1);
        Write(common, all, 0);
        for (var index = 0; index < told.Count; index++)
        {
            var triangle = blocks[told[index]]!;
            var own = priors[told[index]].Count;
            for (var row = 0; row <= shared; row++)
            {
                for (var column = row; column <= shared; column++)
                {
                    all[shared + (index * (shared + 1)) + row, column] = triangle[own + row, own + column];
                }
            }
        }

        return all;
    }

    private static void Write(TermPrior prior, Matrix<double> rows, int from)
    {
        for (var term = 0; term < prior.Count; term++)
        {
            rows[from + term, term] = 1 / prior.Spread[term];
            rows[from + term, rows.ColumnCount - 1] = double.IsInfinity(prior.Spread[term]) ? 0 : prior.Centre[term] / prior.Spread[term];
        }
    }
}
