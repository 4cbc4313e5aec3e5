using MathNet.Numerics;
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
    private readonly (double Shape, double Scale) before;

    private BlockRegression(TermPrior common, TermPrior[] priors, double[,]?[] blocks, double shape, (double Shape, double Scale) before)
    {
        this.common = common;
        this.priors = priors;
        this.blocks = blocks;
        this.before = before;
        Shape = shape;
        top = Rotations.Fold(LeftOfBlocks());
        var residual = top[common.Count, common.Count];
        Scale = before.Scale + (residual * residual / 2);
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
        return new(common, priors, new double[,]?[priors.Length], shape, (shape, scale));
    }

    /// <summary>What would be known had the common terms been believed otherwise; the blocks' own stay as they are.</summary>
    public BlockRegression Believing(TermPrior otherwise) => new(otherwise, priors, blocks, Shape, before);

    /// <summary>What is known with more rows.</summary>
    public BlockRegression With(FoldedRows rows)
    {
        var now = (double[,]?[])blocks.Clone();
        foreach (var (block, triangle) in rows.Triangles)
        {
            now[block] = Rotations.Fold(Above(block).Stack(triangle));
        }

        return new(common, priors, now, Shape + (rows.Weight / 2), before);
    }

    /// <summary>
    /// ln of the chance that the prior gave to the rows, but for a figure that is the same for all priors: it tells which of
    /// several priors the rows speak for.
    /// </summary>
    public double LogEvidence()
    {
        var sum = (before.Shape * Math.Log(before.Scale)) - (Shape * Math.Log(Scale)) + SpecialFunctions.GammaLn(Shape) - SpecialFunctions.GammaLn(before.Shape);
        Count(common, top);
        for (var block = 0; block < blocks.Length; block++)
        {
            if (blocks[block] is { } triangle)
            {
                Count(priors[block], triangle);
            }
        }

        return sum;

        void Count(TermPrior prior, double[,] triangle)
        {
            for (var term = 0; term < prior.Count; term++)
            {
                sum -= Math.Log(prior.Spread[term] * triangle[term, term]);
            }
        }
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

    /// <summary>What is known of a block as rows: its triangle, or its prior.</summary>
    private Matrix<double> Above(int block)
    {
        if (blocks[block] is { } triangle)
        {
            return Matrix<double>.Build.DenseOfArray(triangle);
        }

        var rows = Matrix<double>.Build.Dense(priors[block].Count, priors[block].Count + common.Count + 1);
        Write(priors[block], rows, 0);
        return rows;
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
