using System.Globalization;
using ShopDays.Layouts.Search;

namespace ShopDays.Tests.Outside;

/// <summary>A published problem of cutting one rectangle right across, again and again, and the value of its best cutting.</summary>
internal sealed record GuillotineInstance(string Name, int Length, int Width, bool IsConstrained, double Optimum, IReadOnlyList<Candidate> Pieces)
{
    private static readonly string Folder = Path.Combine(AppContext.BaseDirectory, "Outside", "data", "guillotine");

    public static IReadOnlyList<GuillotineInstance> All() => [.. Rows("instances").Select(row => new GuillotineInstance(
        row[0], Number(row[1]), Number(row[2]), row[4] == "constrained", Number(row[5]), PiecesOf(row[0])))];

    public static GuillotineInstance Read(string name) => All().Single(instance => instance.Name == name);

    /// <summary>What a filling is worth; fails when it is not a right cutting of the rectangle.</summary>
    public double Verify(Filling? filling)
    {
        var left = Pieces.Select(piece => piece.Most).ToArray();
        return filling is null ? 0 : Inside(filling, Length, Width);

        double Inside(Filling part, int length, int width)
        {
            switch (part)
            {
                case Filling.Single one:
                    var piece = Pieces[one.Kind];
                    Demand(piece.Length <= length && piece.Width <= width, "a piece is larger than its place");
                    Demand(--left[one.Kind] >= 0, "more of a piece than there may be");
                    return piece.Value;
                case Filling.EndToEnd ends:
                    Demand(ends.Near.Length <= length, "a cut outside the rectangle");
                    return Inside(ends.Near, ends.Near.Length, width) + Inside(ends.Far, length - ends.Near.Length, width);
                case Filling.SideBySide sides:
                    Demand(sides.Near.Width <= width, "a cut outside the rectangle");
                    return Inside(sides.Near, length, sides.Near.Width) + Inside(sides.Far, length, width - sides.Near.Width);
                default:
                    throw new InvalidOperationException("an unknown cut");
            }
        }

        void Demand(bool isRight, string fault)
        {
            if (!isRight)
            {
                throw new InvalidOperationException($"{Name}: {fault}");
            }
        }
    }

    private static Candidate[] PiecesOf(string name) =>
        [.. Rows(name).Select(row => new Candidate(Number(row[0]), Number(row[1]), Number(row[3]), row[2].Length == 0 ? int.MaxValue : Number(row[2])))];

    private static IEnumerable<string[]> Rows(string name) =>
        File.ReadLines(Path.Combine(Folder, name + ".csv")).Skip(1).Where(line => line.Length > 0).Select(line => line.Split(','));

    private static int Number(string text) => int.Parse(text, CultureInfo.InvariantCulture);
}
