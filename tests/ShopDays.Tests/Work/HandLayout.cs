using ShopDays.Layouts;
using ShopDays.Measures;
using ShopDays.Parts;
using Xunit;

namespace ShopDays.Tests.Work;

/// <summary>A plain layout for tests: sections along each board, each ripped into the blanks of one part.</summary>
internal static class HandLayout
{
    public static Layout Of(Job job, int strips = 3)
    {
        var boards = new Queue<Board>(job.Boards);
        var blanks = job.Parts.SelectMany(part => BlanksOf(part, job.Allowances, strips)).ToList();
        var laid = new List<BoardLayout>();
        while (blanks.Count > 0)
        {
            Assert.True(boards.Count > 0, "the test has too few boards for its plain layout");
            laid.Add(Fill(boards.Dequeue(), blanks, job.Allowances));
        }

        var nothing = new Money(0, new Currency("USD", 2));
        return new Layout
        {
            Boards = laid,
            Unplaced = [],
            Wanted = [],
            NotHonoured = [],
            BestPossibleYield = 1,
            SawingTime = WorkTime.Zero,
            Cost = new LayoutCost
            {
                Timber = nothing,
                Offcuts = nothing,
                Sawing = nothing,
                PlaningDown = nothing,
                GlueEdges = nothing,
                Least = nothing,
                Hour = nothing,
                HourIsAssumed = false,
                AssumedBoardFoot = null,
            },
        };
    }

    private static IEnumerable<Blank> BlanksOf(Part part, Allowances allowances, int strips) =>
        from number in Enumerable.Range(1, part.Count + part.Spare)
        from strip in Enumerable.Range(1, part.IsPanel ? strips : 1)
        select new Blank
        {
            Part = part,
            Numbers = [number],
            Strip = part.IsPanel ? strip : 0,
            Strips = part.IsPanel ? strips : 0,
            Length = part.Length + allowances.Length,
            Width = part.IsPanel ? ((part.Width + allowances.Width) / strips) + allowances.Strip : part.Width + allowances.Width,
        };

    private static BoardLayout Fill(Board board, List<Blank> blanks, Allowances allowances)
    {
        var cuts = new List<Cut>();
        var placed = new List<PlacedBlank>();
        var offcuts = new List<Offcut>();
        var rest = new Region(Length.Zero, Length.Zero, board.Length, board.Width);
        while (blanks.Count > 0 && blanks[0].Length <= rest.Length && blanks[0].Width + allowances.RoughEdge <= board.Width)
        {
            Saw(CutKind.Crosscut, rest, rest.X + blanks[0].Length);
            var section = rest with { Length = blanks[0].Length };
            rest = new Region(section.Right + allowances.Kerf, Length.Zero, Length.Max(Length.Zero, rest.Length - section.Length - allowances.Kerf), board.Width);
            if (board.Edges != BoardEdges.Straight)
            {
                Saw(CutKind.Straighten, section, section.Y);
                section = section with { Y = allowances.RoughEdge, Width = section.Width - allowances.RoughEdge };
            }

            var part = blanks[0].Part;
            while (blanks.Count > 0 && blanks[0].Part == part && blanks[0].Width <= section.Width)
            {
                Saw(CutKind.Rip, section, section.Y + blanks[0].Width);
                placed.Add(new PlacedBlank(blanks[0], section with { Width = blanks[0].Width }));
                var used = Length.Min(section.Width, blanks[0].Width + allowances.Kerf);
                section = section with { Y = section.Y + used, Width = section.Width - used };
                blanks.RemoveAt(0);
            }

            offcuts.Add(new Offcut(section, false));
        }

        Assert.True(placed.Count > 0, $"board {board.Name} is too small for {(blanks.Count > 0 ? blanks[0].Label : "nothing")}");
        return new BoardLayout { Board = board, Usable = new Region(Length.Zero, Length.Zero, board.Length, board.Width), Blanks = placed, Cuts = cuts, Offcuts = offcuts };

        void Saw(CutKind kind, Region of, Length at) =>
            cuts.Add(new Cut(cuts.Count + 1, kind, of, at, kind == CutKind.Crosscut ? of.Width : of.Length, board.Thickness, ""));
    }
}
