using ShopDays.Measures;

namespace ShopDays.Cli.Files.Jobs;

/// <summary>What can be wrong with stock, and with parts that the stock cannot give.</summary>
internal static class StockMistakes
{
    public static Finding UnknownSpecies(Place place, string typed, IReadOnlyList<string> known) =>
        Finding.At(place, $"{QuotedText.Of(typed)} is not a known species") with { Expected = ValueMistakes.AnyOf(known, "species"), Nearest = ValueMistakes.Nearest(typed, known) };

    public static Finding BoardTwice(Place place, string name, Place first) =>
        Finding.At(place, $"a board {QuotedText.Of(name)} is there already") with { Cure = FormattableString.Invariant($"it is in line {first.Line}; give this one another letter") };

    public static Finding UnknownBoard(Place place, string name, IReadOnlyList<string> lines, IReadOnlyList<string> boards) =>
        Finding.At(place, $"no board is called {QuotedText.Of(name)}") with { Expected = ValueMistakes.AnyOf(lines, "boards"), Nearest = NearestName.To(name, [.. lines, .. boards]) };

    public static Finding NoBoardAllowed(Place place, string part, string species) =>
        Finding.At(place, $"{QuotedText.Of(part)} has no board left: 'not-from' forbids all {species} that it may come from") with { Cure = "take a board out of 'not-from', or list another board" };

    public static Finding FlawEndsBeforeItBegins(Place place, string from, string to) =>
        Finding.At(place, $"the flaw goes from {from} to {to}") with { Expected = "an end beyond its beginning" };

    public static Finding FlawOutsideTheBoard(Place place, string reaches, string along, string board) =>
        Finding.At(place, $"the flaw reaches {reaches} {along}, the board ends at {board}") with { Expected = "a flaw in the board" };

    public static Finding AcrossIsNoPair(Place place) =>
        Finding.At(place, "a flaw lies across from one place to another") with { Expected = "two lengths, such as [0\", 3\"]" };

    public static Finding NothingLeftOfTheLength(Place place, string trim, string length) =>
        Finding.At(place, $"{trim} lost at each end leaves nothing of {length}") with { Expected = "less than half of the length" };

    public static Finding NothingLeftOfTheThickness(Place place, string cup, string thickness) =>
        Finding.At(place, $"a cup of {cup} leaves nothing of {thickness}") with { Expected = "less than the thickness" };

    public static Finding SpeciesUnsaid(Place place, string part, IReadOnlyList<string> species) =>
        Finding.At(place, $"{QuotedText.Of(part)} has no 'species', and the stock is of several") with { Expected = ValueMistakes.AnyOf(species, "species") };

    public static Finding NoStockOfSpecies(Place place, string part, string species, IReadOnlyList<string> there) =>
        Finding.At(place, $"{QuotedText.Of(part)} is of {species}, and no board is") with { Expected = ValueMistakes.AnyOf(there, "species") };

    public static Finding BoardOfAnotherSpecies(Place place, string board, string species, string wanted) =>
        Finding.At(place, $"the board {QuotedText.Of(board)} is {species}, the part {wanted}") with { Expected = "a board of the part's species" };

    public static Finding LongerThanAnyBoard(Place place, string part, string needs, string gives, string species) =>
        Finding.At(place, $"{QuotedText.Of(part)} needs {needs} of length, the longest {species} board gives {gives}") with { Cure = "list a longer board" };

    public static Finding ThickerThanAnyBoard(Place place, string part, string needs, string gives, string species) =>
        Finding.At(place, $"{QuotedText.Of(part)} needs {needs} of thickness, the thickest {species} board gives {gives}") with { Cure = "list a thicker board" };

    public static Finding WiderThanAnyBoard(Place place, string part, string needs, string gives, string species) =>
        Finding.At(place, $"{QuotedText.Of(part)} needs {needs} of width, the widest {species} board gives {gives}") with { Cure = "let it be glued up with 'panel: true', or list a wider board" };

    public static Finding EndsWithoutAngle(Place place, string typed) =>
        Finding.At(place, $"{QuotedText.Of(typed)} is not how ends are cut") with { Expected = "square, sawn, mitred or angled with degrees off square, such as angled 8", Nearest = NearestName.To(typed, ["square", "sawn", "mitred", "angled 8"]) };

    public static Finding AngleTooSteep(Place place, string typed) =>
        Finding.At(place, $"the angle of {QuotedText.Of(typed)} cannot be cut") with { Expected = "above 0 and up to 60 degrees off square" };
}
