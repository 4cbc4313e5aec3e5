using NodaTime;
using ShopDays.Measures;

namespace ShopDays.Cli.Files.Sawn;

/// <summary>What can be wrong with what is said of boards that are sawn.</summary>
internal static class SawnMistakes
{
    public static Finding SawnTwice(Place place, string board, Place first) =>
        Finding.At(place, $"the board {QuotedText.Of(board)} is said to be sawn twice") with { Cure = FormattableString.Invariant($"it is in line {first.Line}; take one of them out") };

    public static Finding StillToCome(Place place, LocalDate on, LocalDate today) =>
        Finding.At(place, $"it was sawn on {on:uuuu'-'MM'-'dd}, which is still to come") with { Expected = $"a date up to today, {today:uuuu'-'MM'-'dd}" };

    public static Finding RestNameTaken(Place place, string name) =>
        Finding.At(place, $"a board is called {QuotedText.Of(name)} already") with { Cure = "give the offcut another name" };

    public static Finding NumberBeyondCount(Place place, string part, int number, int count) =>
        Finding.At(place, FormattableString.Invariant($"there is no {QuotedText.Of(part)} {number}")) with
        {
            Expected = count == 1 ? "1, as there is one of it" : FormattableString.Invariant($"1 to {count}, spares counted"),
        };

    public static Finding BlankTwice(Place place, string blank, Place first) =>
        Finding.At(place, $"the blank {QuotedText.Of(blank)} is there twice") with { Cure = FormattableString.Invariant($"it is in line {first.Line}; take one of them out") };

    public static Finding SmallerThanThePart(Place place, string blank, string has, string needs) =>
        Finding.At(place, $"{QuotedText.Of(blank)} is {has}, and the finished part needs {needs}") with { Cure = "take the blank out if it is spoiled: it is then wanted again" };

    public static Finding StripsTooNarrow(Place place, string part, string have, string needs) =>
        Finding.At(place, $"the strips of {QuotedText.Of(part)} are {have} wide together, and the finished panel needs {needs}") with { Cure = "take a strip out if it is spoiled: it is then wanted again" };

    public static Finding ThickerThanItsBoard(Place place, string blank, string needs, string gives) =>
        Finding.At(place, $"{QuotedText.Of(blank)} needs {needs} of thickness, its board is {gives}") with { Expected = "a blank that the board could give" };

    public static Finding OfAnotherTimber(Place place, string part, string species, string board, string wood) =>
        Finding.At(place, $"{QuotedText.Of(part)} is of {species}, the board {QuotedText.Of(board)} is {wood}") with { Expected = "a part of the board's timber" };

    public static Finding NotAStrip(Place place, string typed) =>
        Finding.At(place, $"{QuotedText.Of(typed)} is not a strip of a panel") with { Expected = "which strip of how many, such as 1 of 3" };

    public static Finding StripOfNoPanel(Place place, string part) =>
        Finding.At(place, $"{QuotedText.Of(part)} is no panel, and has no strips") with { Cure = "take 'strip' out, or let it be glued up with 'panel: true'" };

    public static Finding StripsDisagree(Place place, string part, Place first) =>
        Finding.At(place, $"the blanks of {QuotedText.Of(part)} do not go together") with { Expected = FormattableString.Invariant($"strips of the same panel, as in line {first.Line}") };

    public static Finding AtIsNoPair(Place place) =>
        Finding.At(place, "'at' is not a place on the board") with { Expected = "a list of two: how far from the end and from the edge, such as [14\", 3\"]" };

    public static Finding OffTheBoard(Place place, string what, string board, string size) =>
        Finding.At(place, $"{QuotedText.Of(what)} reaches beyond the board {QuotedText.Of(board)}") with { Expected = $"a place within {size}" };

    public static Finding OnTopOfAnother(Place place, string what, string other) =>
        Finding.At(place, $"{QuotedText.Of(what)} lies on {QuotedText.Of(other)}") with { Expected = "places that do not overlap" };
}
