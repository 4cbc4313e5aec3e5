using ShopDays.Measures;
using ShopDays.Parts;

namespace ShopDays.Layouts.Search;

/// <summary>Some numbers of one part that are wanted.</summary>
/// <param name="Part">The part.</param>
/// <param name="Numbers">Which of it, from 1; those beyond its count are spares.</param>
internal sealed record Demand(Part Part, IReadOnlyList<int> Numbers)
{
    /// <summary>Panels of which some strips are sawn and others are not.</summary>
    public IReadOnlyList<StartedPanel> Started { get; init; } = [];

    /// <summary>Everything that a part asks for, spares numbered on, less what is sawn already.</summary>
    public static Demand For(Part part, IReadOnlyList<BoardLayout> sawn) => For(part, Enumerable.Range(1, part.Count + part.Spare), sawn);

    /// <summary>Some numbers of a part, less what is sawn already.</summary>
    public static Demand For(Part part, IEnumerable<int> numbers, IReadOnlyList<BoardLayout> sawn)
    {
        var blanks = sawn
            .SelectMany(board => board.Blanks)
            .Where(placed => string.Equals(placed.Blank.Part.Name, part.Name, StringComparison.Ordinal))
            .SelectMany(placed => placed.Blank.Numbers, (placed, number) => (Number: number, placed.Blank))
            .ToLookup(one => one.Number, one => one.Blank);
        List<int> asked = [.. numbers];
        return new(part, [.. asked.Where(number => !blanks[number].Any())])
        {
            Started = [.. asked.Where(number => blanks[number].Any()).Select(number => StartedPanel.Of(number, [.. blanks[number]])).Where(panel => panel.Missing.Count > 0)],
        };
    }
}

/// <summary>A panel of which some strips are sawn.</summary>
/// <param name="Number">Which of its part, from 1.</param>
/// <param name="Strips">How many strips it has.</param>
/// <param name="Missing">The strips that are still wanted, from 1.</param>
/// <param name="Sawn">The width of those that are there, side by side.</param>
internal sealed record StartedPanel(int Number, int Strips, IReadOnlyList<int> Missing, Length Sawn)
{
    public static StartedPanel Of(int number, IReadOnlyList<Blank> sawn) => new(
        number,
        sawn[0].Strips,
        [.. Enumerable.Range(1, sawn[0].Strips).Except(sawn.Select(blank => blank.Strip))],
        sawn.Aggregate(Length.Zero, (sum, blank) => sum + blank.Width));
}

/// <summary>A blank in search of a place, with what it costs on each board beyond its cuts.</summary>
internal sealed class WantedBlank(Blank blank, Want want, double[] costs)
{
    public Blank Blank { get; } = blank;

    public Want Want { get; } = want;

    public Length Length { get; } = blank.Length;

    public Length Width { get; } = blank.Width;

    public double Area { get; } = (blank.Length * blank.Width).SquareMillimetres;

    /// <summary>How many boards may yield it: the fewer, the sooner it should be placed.</summary>
    public int Choices { get; } = costs.Count(double.IsFinite);

    /// <summary>The best figure of the boards on hand that could give it; null until somebody asks.</summary>
    public BoardFigure? BestFigure { get; set; }

    /// <summary>In money; infinite for a board that must not yield it.</summary>
    public double CostOn(int board) => costs[board];
}

/// <summary>One way of sawing out what is wanted: as pieces, as strips of a panel, or resawn.</summary>
/// <param name="Blanks">The blanks.</param>
/// <param name="Joints">How many edges of panels must be glued that way.</param>
internal sealed record Way(IReadOnlyList<WantedBlank> Blanks, int Joints);

/// <summary>A few numbers of one part that are sawn out in one way or another.</summary>
internal sealed class Want(int index, Part part, IReadOnlyList<int> numbers)
{
    /// <summary>A spare counts for a tenth of the part it may replace, so that it is the first to be left out.</summary>
    private const double SpareWeight = 0.1;

    public int Index { get; } = index;

    public Part Part { get; } = part;

    public IReadOnlyList<int> Numbers { get; } = numbers;

    /// <summary>At least one; the first is the plainest.</summary>
    public IReadOnlyList<Way> Ways { get; set; } = [];

    /// <summary>Into how many strips it may be split at most; 0 when it is not to be split.</summary>
    public int MostStrips { get; set; }

    /// <summary>What leaving out one number counts for.</summary>
    public double Weight(int number) => Part.Volume.CubicMillimetres * (number > Part.Count ? SpareWeight : 1);
}
