using CsCheck;
using ShopDays.Measures;
using ShopDays.Parts;

namespace ShopDays.Tests.Layouts;

/// <summary>Small jobs made by chance: all kinds of edges, faces, flaws, panels, spares, pins and matched parts.</summary>
internal static class RandomJobs
{
    private static readonly Gen<Flaw> Flaws =
        from x in Gen.Int[0, 90]
        from y in Gen.Int[0, 14]
        from length in Gen.Int[1, 12]
        from width in Gen.Int[1, 5]
        select new Flaw(In(x), In(x + length), In(y), In(y + width));

    private static readonly Gen<Board> Stock =
        from length in Gen.Int[30, 100]
        from width in Gen.Int[4, 18]
        from quarters in Gen.Int[4, 10]
        from edges in Gen.Enum<BoardEdges>()
        from faces in Gen.Enum<BoardFaces>()
        from trim in Gen.Int[0, 2]
        from line in Gen.Int[0, 2]
        from pine in Gen.Int[0, 5]
        from price in Gen.Int[0, 60]
        from figure in Gen.Enum<BoardFigure>()
        from flaws in Flaws.Array[0, 2]
        select Timber.ABoard("", length, width, quarters / 4m) with
        {
            Line = ((string[])["A", "B", "C"])[line],
            Species = pine == 0 ? Timber.Pine : Timber.Oak,
            Edges = edges,
            Faces = faces,
            EndTrim = In(trim),
            Figure = figure,
            Price = price < 20 ? null : new Money(price, Timber.Dollars),
            Flaws = flaws,
        };

    private static readonly Gen<Part> Pieces =
        from length in Gen.Int[6, 45]
        from width in Gen.Int[2, 24]
        from eighths in Gen.Int[2, 12]
        from count in Gen.Int[1, 3]
        from spare in Gen.Int[0, 5]
        from isPanel in Gen.Bool
        from pine in Gen.Int[0, 5]
        from pin in Gen.Int[0, 9]
        from matched in Gen.Int[0, 5]
        from forbidden in Gen.Int[0, 9]
        from bestFace in Gen.Int[0, 5]
        select Timber.APart("", length, isPanel ? width : Math.Min(width, 1 + (width / 4m)), eighths / 8m, count) with
        {
            IsPanel = isPanel,
            Spare = spare == 0 ? 1 : 0,
            Species = pine == 0 ? Timber.Pine : Timber.Oak,
            From = pin == 0 ? "A" : null,
            Matched = matched == 0 ? "pair" : null,
            NotFrom = forbidden switch { 0 => ["B"], 1 => ["A0", "C"], _ => [] },
            IsForBestFace = bestFace == 0,
        };

    public static Gen<(IReadOnlyList<Board> Boards, IReadOnlyList<Part> Parts, int Seed)> Any { get; } = Of(5, 5);

    /// <summary>Jobs so small that thousands are laid out in seconds.</summary>
    public static Gen<(IReadOnlyList<Board> Boards, IReadOnlyList<Part> Parts, int Seed)> Small { get; } = Of(3, 4);

    /// <summary>The same jobs at every run, for rules that share one round of laying out.</summary>
    public static IReadOnlyList<(IReadOnlyList<Board> Boards, IReadOnlyList<Part> Parts, int Seed)> Some(int count)
    {
        var chance = new PCG(1, 4711);
        return [.. Enumerable.Range(0, count).Select(_ => Any.Generate(chance, null, out var _))];
    }

    /// <summary>A job as it stands in the message of a test that failed.</summary>
    public static string Print((IReadOnlyList<Board> Boards, IReadOnlyList<Part> Parts, int Seed) job) =>
        $"seed {job.Seed}\n{string.Join('\n', job.Boards)}\n{string.Join('\n', job.Parts)}";

    private static Gen<(IReadOnlyList<Board> Boards, IReadOnlyList<Part> Parts, int Seed)> Of(int most, int kinds) =>
        from boards in Stock.Array[1, most]
        from parts in Pieces.Array[1, kinds]
        from seed in Gen.Int[0, 1000]
        select (
            (IReadOnlyList<Board>)[.. boards.Select((board, index) => board with { Name = $"{board.Line}{index}" })],
            (IReadOnlyList<Part>)[.. parts.Select((part, index) => part with { Name = $"part {index}" })],
            seed);

    private static Length In(int inches) => Length.FromInches((decimal)inches);
}
