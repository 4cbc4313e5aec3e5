using MathNet.Numerics;
using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.LinearAlgebra.Factorization;

namespace ShopDays.Times.Regression;

/// <summary>Folds rows of a least-squares problem into a triangle that says all that they say.</summary>
/// <remarks>
/// Householder's rotations, never the normal equations: these square the condition of the problem, and half of the digits
/// of a double would be lost where terms are nearly alike. Source: Golub and Van Loan, Matrix Computations, 4th ed.
/// (2013), chapter 5, from memory.
/// </remarks>
internal static class Rotations
{
    // The triangles are small: to share one among threads costs more than it saves.
    static Rotations() => Control.UseSingleThread();

    /// <summary>An upper triangle of as many rows as columns, with the same sums of squares as the rows for every choice of terms.</summary>
    /// <param name="rows">The rows; the right side is the last column.</param>
    public static double[,] Fold(Matrix<double> rows)
    {
        var columns = rows.ColumnCount;
        var tall = rows.RowCount >= columns ? rows : rows.Stack(Matrix<double>.Build.Dense(columns - rows.RowCount, columns));
        var triangle = tall.QR(QRMethod.Thin).R.ToArray();
        for (var row = 0; row < columns; row++)
        {
            // Either sign tells the same; one of them makes a seed give one draw.
            if (triangle[row, row] < 0)
            {
                for (var column = row; column < columns; column++)
                {
                    triangle[row, column] = -triangle[row, column];
                }
            }
        }

        return triangle;
    }

    /// <summary>Solves the transpose of a triangle: the lower triangle that is its mirror image times x is the right side.</summary>
    /// <param name="triangle">The upper triangle; its first columns are used, as many as the right side has figures.</param>
    /// <param name="right">The right side; x is put in its place.</param>
    public static void SolveMirrored(double[,] triangle, double[] right)
    {
        for (var row = 0; row < right.Length; row++)
        {
            var left = right[row];
            for (var column = 0; column < row; column++)
            {
                left -= triangle[column, row] * right[column];
            }

            // A term that nothing is known of and that nobody asks for: zero over zero is nothing.
            right[row] = left == 0 ? 0 : left / triangle[row, row];
        }
    }
}
