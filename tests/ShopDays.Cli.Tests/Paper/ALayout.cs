using System.Globalization;
using ShopDays.Cli.Files;
using ShopDays.Layouts;
using ShopDays.Measures;
using ShopDays.Parts;

namespace ShopDays.Cli.Tests.Paper;

/// <summary>Boards cut in the plainest way: straightened, crosscut into lengths, each length ripped into equal blanks.</summary>
internal static class ALayout
{
    private static readonly Allowances Usual = new();

    public static Length In(double inches) => Length.FromInches(inches);

    public static Species Timber(string name) => BuiltIn.Species.TryFind(name, out var species) ? species : throw new ArgumentException(name);

    public static Part Part(string name, int count, double length, double width, double thickness = 0.875) =>
        new() { Name = name, Count = count, Length = In(length), Width = In(width), Thickness = In(thickness), Species = Timber("white oak") };

    public static Board Board(int number, BoardEdges edges = BoardEdges.RoughSawn, double length = 96, double width = 9.5) => new()
    {
        Name = string.Create(CultureInfo.InvariantCulture, $"A{number}"),
        Species = Timber("white oak"),
        Length = In(length),
        Width = In(width),
        Thickness = In(1.25),
        Edges = edges,
        EndTrim = In(2),
        Flaws = number % 3 == 1 ? [new Flaw(In(length - 20), In(length - 16), In(0), In(2.5))] : [],
        Price = Dollars(61.2m),
    };

    /// <summary>Lays out every blank of the parts, one after the other, on as many boards as it takes.</summary>
    public static Layout Of(IReadOnlyList<Part> parts, Func<int, Board> boardOf)
    {
        Queue<Blank> blanks = new(parts.SelectMany(BlanksOf));
        List<BoardLayout> boards = [];
        while (blanks.Count > 0)
        {
            boards.Add(Fill(boardOf(boards.Count + 1), blanks));
        }

        return new()
        {
            Boards = boards,
            Unplaced = [],
            Wanted = [],
            NotHonoured = [],
            BestPossibleYield = 0.83,
            SawingTime = WorkTime.FromMinutes(240),
            Cost = new LayoutCost
            {
                Timber = Dollars(61.2m * boards.Count),
                Offcuts = Dollars(12.35m),
                Sawing = Dollars(200),
                PlaningDown = Dollars(8.1m),
                GlueEdges = Dollars(0),
                Least = Dollars(150),
                Hour = Dollars(50),
                HourIsAssumed = false,
                AssumedBoardFoot = null,
            },
        };
    }

    private static Money Dollars(decimal amount) => new(amount, new Currency("USD", 2));

    private static IEnumerable<Blank> BlanksOf(Part part) => Enumerable.Range(1, part.Count).Select(number => new Blank
    {
        Part = part,
        Numbers = [number],
        Length = part.Length + Usual.Length,
        Width = part.Width + Usual.Width,
    });

    private static BoardLayout Fill(Board board, Queue<Blank> blanks)
    {
        var usable = Region.Usable(board, Usual);
        List<PlacedBlank> placed = [];
        List<Offcut> offcuts = [];
        List<Cut> cuts = [];
        var whole = Region.Whole(board);
        void Saw(CutKind kind, Region of, Length at, string frees) => cuts.Add(new(
            cuts.Count + 1, kind, of, at, kind == CutKind.Crosscut ? of.Width : of.Length, board.Thickness, frees));
        Saw(CutKind.Crosscut, whole, usable.X - Usual.Kerf, "");
        if (usable.Y > Usual.Kerf)
        {
            Saw(CutKind.Straighten, Region.Between(usable.X, Length.Zero, board.Length, board.Width), usable.Y - Usual.Kerf, "");
        }

        var x = usable.X;
        while (blanks.TryPeek(out var first) && x + first.Length <= usable.Right)
        {
            var section = Region.Between(x, usable.Y, x + first.Length, usable.Top);
            Saw(CutKind.Crosscut, Region.Between(x, usable.Y, board.Length, board.Width), section.Right, "");
            var y = section.Y;
            while (blanks.TryPeek(out var next) && next.Length == first.Length && y + next.Width <= section.Top)
            {
                blanks.Dequeue();
                var region = new Region(x, y, next.Length, next.Width);
                placed.Add(new(next, region));
                Saw(CutKind.Rip, Region.Between(x, y, section.Right, board.Width), region.Top, next.Label);
                y = region.Top + Usual.Kerf;
            }

            if (y == section.Y)
            {
                throw new ArgumentException("a blank is wider than the board");
            }

            if (section.Top - y > In(0.5))
            {
                offcuts.Add(new(Region.Between(x, y, section.Right, section.Top), section.Top - y >= In(2)));
            }

            x = section.Right + Usual.Kerf;
        }

        if (placed.Count == 0)
        {
            throw new ArgumentException("a blank is longer than the board");
        }

        if (usable.Right > x)
        {
            offcuts.Add(new(Region.Between(x, usable.Y, usable.Right, usable.Top), usable.Right - x >= In(12)));
        }

        return new() { Board = board, Usable = usable, Blanks = placed, Cuts = cuts, Offcuts = offcuts };
    }
}
