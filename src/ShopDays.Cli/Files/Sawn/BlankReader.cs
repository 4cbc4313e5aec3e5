using System.Globalization;
using ShopDays.Cli.Files.Jobs;
using ShopDays.Layouts;
using ShopDays.Measures;
using ShopDays.Parts;

namespace ShopDays.Cli.Files.Sawn;

/// <summary>Reads the blanks that came of sawn boards.</summary>
internal sealed class BlankReader(Job job)
{
    private readonly List<(Blank Blank, Place Place)> all = [];

    /// <summary>Reads one; null when something of it is wrong, which has been reported.</summary>
    /// <param name="line">The blank.</param>
    /// <param name="board">Its board; null when that is not known.</param>
    /// <param name="taken">What else lies in that board.</param>
    public PlacedBlank? Read(Section line, Board? board, List<(string What, Region Region)> taken)
    {
        var name = line.Required("part", Values.Text("a part's name"), "a part's name");
        var numbers = line.Required("number", Values.OneOrMore(Values.Whole("the number of a part", 1, PartReader.MostAlike * 2)), "which of the part it is, from 1");
        var strip = line.Optional("strip", Strip);
        var region = SawnPlace.Read(line);
        name = name.Unless(line.Findings, one => PartCalled(one) is null ? JobMistakes.UnknownPart(name.Place, one, [.. job.Parts.Select(part => part.Name)]) : null);
        numbers = numbers.Unless(line.Findings, some => some.Count > 0 ? null : ValueMistakes.NothingWritten(numbers.Place, "which of the part it is, from 1"));
        if (!name.IsRead || !numbers.IsRead || !numbers.Value!.All(number => number.IsRead) || region is not { } place || strip.IsWritten != strip.IsRead || board is null)
        {
            return null;
        }

        var blank = new Blank
        {
            Part = PartCalled(name.Value!)!,
            Numbers = [.. numbers.Value!.Select(number => number.Value)],
            Strip = strip.Value.Strip,
            Strips = strip.Value.Of,
            Length = place.Length,
            Width = place.Width,
        };
        var before = line.Findings.Count;
        Check(line, blank, board, numbers, strip.Place);
        all.Add((blank, line.Place));
        return SawnPlace.IsFree(line, blank.Label, place, board, taken) && line.Findings.Count == before ? new PlacedBlank(blank, place) : null;
    }

    /// <summary>Looks at panels of which all strips are there: they must be wide enough together.</summary>
    public void ComparePanels(Reading reading)
    {
        foreach (var panel in all
            .Where(one => one.Blank.Strips > 0)
            .SelectMany(one => one.Blank.Numbers, (one, number) => (one.Blank, one.Place, Number: number))
            .GroupBy(one => (one.Blank.Part, one.Number)))
        {
            var width = panel.Aggregate(Length.Zero, (sum, one) => sum + one.Blank.Width);
            if (panel.Count() == panel.First().Blank.Strips && width < panel.Key.Part.Width)
            {
                reading.Findings.Add(SawnMistakes.StripsTooNarrow(panel.Last().Place, panel.Key.Part.Name, reading.Format.Write(width), reading.Format.Write(panel.Key.Part.Width)));
            }
        }
    }

    private static ValueReader<(int Strip, int Of)> Strip { get; } = (node, reading) =>
    {
        var text = Values.Text("which strip of how many, such as 1 of 3")(node, reading);
        if (!text.IsRead)
        {
            return Field<(int, int)>.Wrong(node.Place);
        }

        if (text.Value!.Split(' ', StringSplitOptions.RemoveEmptyEntries) is [var first, "of", var second]
            && int.TryParse(first, NumberStyles.None, CultureInfo.InvariantCulture, out var strip)
            && int.TryParse(second, NumberStyles.None, CultureInfo.InvariantCulture, out var of)
            && strip >= 1 && strip <= of && of is >= 2 and <= 100)
        {
            return Field<(int, int)>.Read(node.Place, (strip, of));
        }

        reading.Findings.Add(SawnMistakes.NotAStrip(node.Place, text.Value!));
        return Field<(int, int)>.Wrong(node.Place);
    };

    private Part? PartCalled(string name) => job.Parts.FirstOrDefault(part => string.Equals(part.Name, name, StringComparison.Ordinal));

    private void Check(Section line, Blank blank, Board board, Field<IReadOnlyList<Field<int>>> numbers, Place strip)
    {
        var (part, format) = (blank.Part, line.Reading.Format);
        foreach (var number in numbers.Value!.Where((number, index) => blank.Numbers.Take(index).Contains(number.Value)))
        {
            line.Findings.Add(ValueMistakes.SaidTwiceInAList(number.Place, FormattableString.Invariant($"{number.Value}")));
        }

        foreach (var number in numbers.Value!.Where(number => number.Value > part.Count + part.Spare))
        {
            line.Findings.Add(SawnMistakes.NumberBeyondCount(number.Place, part.Name, number.Value, part.Count + part.Spare));
        }

        if (blank.Strips > 0 && !part.IsPanel)
        {
            line.Findings.Add(SawnMistakes.StripOfNoPanel(strip, part.Name));
        }

        if (part.Species != board.Species)
        {
            line.Findings.Add(SawnMistakes.OfAnotherTimber(line.Place, part.Name, part.Species.Name, board.Name, board.Species.Name));
        }

        if (blank.Length < part.Length || (blank.Strips == 0 && blank.Width < part.Width))
        {
            var needs = blank.Strips == 0 ? $"{format.Write(part.Length)} x {format.Write(part.Width)}" : $"{format.Write(part.Length)} of length";
            line.Findings.Add(SawnMistakes.SmallerThanThePart(line.Place, blank.Label, $"{format.Write(blank.Length)} x {format.Write(blank.Width)}", needs));
        }

        var thick = (part.Thickness * blank.Numbers.Count) + (job.Allowances.Kerf * (blank.Numbers.Count - 1));
        if (thick > board.Thickness)
        {
            line.Findings.Add(SawnMistakes.ThickerThanItsBoard(line.Place, blank.Label, format.Write(thick), format.Write(board.Thickness)));
        }

        foreach (var (other, place) in all.Where(one => one.Blank.Part == part && one.Blank.Numbers.Intersect(blank.Numbers).Any()))
        {
            if (other.Strips != blank.Strips || (blank.Strips > 0 && !other.Numbers.SequenceEqual(blank.Numbers)))
            {
                line.Findings.Add(SawnMistakes.StripsDisagree(line.Place, part.Name, place));
            }
            else if (other.Strip == blank.Strip)
            {
                line.Findings.Add(SawnMistakes.BlankTwice(line.Place, blank.Label, place));
            }
        }
    }
}
