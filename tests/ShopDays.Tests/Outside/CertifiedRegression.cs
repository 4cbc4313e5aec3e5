using System.Globalization;
using System.Text.RegularExpressions;
using ShopDays.Times.Regression;

namespace ShopDays.Tests.Outside;

/// <summary>One of the regression problems with certified answers, as its file has it.</summary>
internal sealed partial record CertifiedRegression
{
    public required string Name { get; init; }

    public required IReadOnlyList<double> Coefficients { get; init; }

    public required IReadOnlyList<double> Deviations { get; init; }

    public required double ResidualDeviation { get; init; }

    /// <summary>Figures of each term, then what was observed.</summary>
    public required IReadOnlyList<(double[] Figures, double Observed)> Rows { get; init; }

    public static readonly string[] Names =
        ["Norris", "Pontius", "NoInt1", "NoInt2", "Filip", "Longley", "Wampler1", "Wampler2", "Wampler3", "Wampler4", "Wampler5"];

    public static CertifiedRegression Read(string name)
    {
        var lines = File.ReadAllLines(Path.Combine(AppContext.BaseDirectory, "Outside", "data", "nist", name + ".dat"));
        var terms = lines.Select(line => Term().Match(line)).Where(match => match.Success).ToList();
        var (first, last) = lines.Select(line => DataLines().Match(line)).Where(match => match.Success)
            .Select(match => (int.Parse(match.Groups[1].ValueSpan, CultureInfo.InvariantCulture), int.Parse(match.Groups[2].ValueSpan, CultureInfo.InvariantCulture))).Single();
        var data = lines[(first - 1)..last].Select(line => line.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(Number).ToArray()).ToList();
        var hasConstant = terms[0].Groups[1].Value == "0";
        return new()
        {
            Name = name,
            Coefficients = [.. terms.Select(term => Number(term.Groups[2].Value))],
            Deviations = [.. terms.Select(term => Number(term.Groups[3].Value))],
            ResidualDeviation = Number(lines.Select(line => Residual().Match(line)).Single(match => match.Success).Groups[1].Value),
            Rows = [.. data.Select(row => (FiguresOf(row[1..], terms.Count, hasConstant), row[0]))],
        };
    }

    /// <summary>The answers of the program's own regression with a flat prior: nothing is believed before the data.</summary>
    public (double[] Coefficients, double[] Deviations, double ResidualDeviation) Solve()
    {
        var terms = Coefficients.Count;
        var flat = new TermPrior(new double[terms], [.. Enumerable.Repeat(double.PositiveInfinity, terms)]);
        var learned = BlockRegression
            .FromPrior(new([], []), [flat], shape: -terms / 2.0, scale: 0)
            .With(FoldedRows.Of(Rows.Select(row => new RegressionRow(0, row.Figures, [], row.Observed))));
        var scale = Math.Sqrt(learned.Scale / learned.Shape);
        var each = Enumerable.Range(0, terms).Select(term => learned.Whiten(0, [.. Enumerable.Range(0, terms).Select(other => other == term ? 1.0 : 0)], [])).ToList();
        return ([.. each.Select(one => one.Location)], [.. each.Select(one => scale * Math.Sqrt(one.Variance))], scale);
    }

    /// <summary>Digits that agree with a certified value, 15 at the most; where it is zero, digits behind the point.</summary>
    public static double DigitsOf(double computed, double certified)
    {
        var off = certified == 0 ? Math.Abs(computed) : Math.Abs(computed - certified) / Math.Abs(certified);
        return off == 0 ? 15 : Math.Min(15, -Math.Log10(off));
    }

    private static double[] FiguresOf(double[] predictors, int terms, bool hasConstant) => (predictors.Length, hasConstant) switch
    {
        (1, true) => [.. Enumerable.Range(0, terms).Select(power => Math.Pow(predictors[0], power))],
        (_, true) => [1, .. predictors],
        _ => predictors,
    };

    private static double Number(string text) => double.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"^\s+B(\d+)\s+(-?[\d.E+-]+)\s+([\d.E+-]+)\s*$")]
    private static partial Regex Term();

    [GeneratedRegex(@"^\s+Standard Deviation\s+([\d.E+-]+)\s*$")]
    private static partial Regex Residual();

    [GeneratedRegex(@"Data\s+\(lines (\d+) to (\d+)\)")]
    private static partial Regex DataLines();
}
