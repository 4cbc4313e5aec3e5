using ShopDays.Cli.Paper.Setting;

namespace ShopDays.Cli.Paper.Boards;

/// <summary>A few words set into a piece of a board, level or turned, in one line or two.</summary>
/// <param name="Lines">From the top.</param>
/// <param name="Style">How they are set.</param>
/// <param name="IsTurned">Whether they read upwards.</param>
/// <param name="Place">What they cover on the picture.</param>
internal sealed record PieceLabel(IReadOnlyList<string> Lines, TextStyle Style, bool IsTurned, Box Place)
{
    private const double Largest = 10.5;
    private const double Smallest = 6.5;
    private const double White = 2;

    // Room at both sides for the numbers of the cuts, left where the letters need not become small for it.
    private const double WhiteForNumbers = 9;
    private const double SmallestForNumbers = 8.5;

    /// <summary>The label at the largest size that fits a piece; null when even the smallest that can be read does not.</summary>
    public static PieceLabel? Fitted(string name, string size, Box piece) =>
        Fitted(name, size, piece.Inset(WhiteForNumbers - White, 0), SmallestForNumbers) ?? Fitted(name, size, piece, Smallest);

    private static PieceLabel? Fitted(string name, string size, Box piece, double smallest)
    {
        for (var points = Largest; points >= smallest; points -= 0.5)
        {
            var style = new TextStyle(points, Weight.Medium);
            foreach (var lines in (IReadOnlyList<string>[])[[name, size], [$"{name}, {size}"]])
            {
                foreach (var turned in (bool[])[false, true])
                {
                    if (In(lines, style, turned, piece) is { } label)
                    {
                        return label;
                    }
                }
            }
        }

        return null;
    }

    /// <summary>The label moved along its piece, and made smaller if it must be, so that it is clear of the numbers of cuts; null if there is no such place.</summary>
    /// <param name="name">The first line.</param>
    /// <param name="size">The second line.</param>
    /// <param name="piece">Where the piece lies on the picture.</param>
    /// <param name="numbers">Where the numbers stand.</param>
    public static PieceLabel? Clear(string name, string size, Box piece, IReadOnlyList<Box> numbers)
    {
        for (var points = Largest; points >= Smallest; points -= 0.5)
        {
            var style = new TextStyle(points, Weight.Medium);
            foreach (var lines in (IReadOnlyList<string>[])[[name, size], [$"{name}, {size}"]])
            {
                foreach (var turned in (bool[])[false, true])
                {
                    if (In(lines, style, turned, piece)?.Moved(piece, numbers) is { } label)
                    {
                        return label;
                    }
                }
            }
        }

        return null;
    }

    /// <summary>This label at the clear place nearest to its own; null if there is none.</summary>
    public PieceLabel? Moved(Box piece, IReadOnlyList<Box> numbers)
    {
        const int Steps = 12;
        var (across, down) = (Math.Max(0, piece.Width - Place.Width - 2 * White) / 2, Math.Max(0, piece.Height - Place.Height - White) / 2);
        return Enumerable.Range(-Steps, 2 * Steps + 1)
            .SelectMany(x => Enumerable.Range(-Steps, 2 * Steps + 1).Select(y => (X: across * x / Steps, Y: down * y / Steps)))
            .OrderBy(shift => Math.Abs(shift.X) + Math.Abs(shift.Y))
            .Select(shift => Shifted(shift.X, shift.Y))
            .FirstOrDefault(label => !numbers.Any(number => Overlap.Of(label.Place, number) > 0));
    }

    /// <summary>This label somewhere else.</summary>
    public PieceLabel Shifted(double right, double down) => this with { Place = Place with { X = Place.X + right, Y = Place.Y + down } };

    /// <summary>A single letter in the middle of a piece, whether it fits or not: the key says what it stands for.</summary>
    public static PieceLabel Letter(string letter, Box piece)
    {
        var style = new TextStyle(Math.Clamp(Math.Min(piece.Width, piece.Height) - White, 5, 9), Weight.SemiBold);
        var (width, height) = (style.WidthOf(letter), style.CapHeight);
        return new([letter], style, false, new Box(piece.Middle.X - (width / 2), piece.Middle.Y - (height / 2), width, height));
    }

    /// <summary>Whether it stands on white, over a hatch.</summary>
    public bool HasGround { get; init; }

    /// <summary>Sets it.</summary>
    public void Draw(Picture picture)
    {
        if (HasGround)
        {
            picture.Rectangle(Place.Grown(1), null, Fill.Shade(1));
        }

        var line = Style.Size * 1.15;
        for (var order = 0; order < Lines.Count; order++)
        {
            // Capitals of all the lines together stand about the middle.
            var down = ((order - ((Lines.Count - 1) / 2.0)) * line) + (Style.CapHeight / 2);
            if (IsTurned)
            {
                picture.TurnedText(Lines[order], new Spot(Place.Middle.X + down, Place.Middle.Y), Style, Align.Centre);
            }
            else
            {
                picture.Text(Lines[order], Place.Middle.X, Place.Middle.Y + down, Style, Align.Centre);
            }
        }
    }

    private static PieceLabel? In(IReadOnlyList<string> lines, TextStyle style, bool turned, Box piece)
    {
        var length = lines.Max(line => style.WidthOf(line));
        var deep = ((lines.Count - 1) * style.Size * 1.15) + style.Size;
        var (width, height) = turned ? (deep, length) : (length, deep);
        return width + (2 * White) <= piece.Width && height + White <= piece.Height
            ? new(lines, style, turned, new Box(piece.Middle.X - (width / 2), piece.Middle.Y - (height / 2), width, height))
            : null;
    }
}
