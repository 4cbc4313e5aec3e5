using NodaTime;
using ShopDays.Measures;

namespace ShopDays.Cli.Files.Jobs;

/// <summary>What can be wrong with the names, dates and order of a job.</summary>
internal static class JobMistakes
{
    public static Finding DueBeforeStart(Place place, LocalDate due, LocalDate start) =>
        Finding.At(place, $"the job is due on {due:uuuu'-'MM'-'dd} and starts on {start:uuuu'-'MM'-'dd}") with { Expected = "a day after the start" };

    public static Finding NothingToMake(Place place) =>
        Finding.At(place, "the job has neither parts nor work") with { Expected = "a list of parts, or work" };

    public static Finding NoBoards(Place place) =>
        Finding.At(place, "the job has parts and no boards") with { Expected = "the boards on hand, as a list of 'stock'" };

    public static Finding NameTaken(Place place, string name, string noun, Place first) =>
        Finding.At(place, $"{QuotedText.Of(name)} is already the name of {noun}") with { Cure = FormattableString.Invariant($"it is in line {first.Line}; give this one another name") };

    public static Finding NameOfAStage(Place place, string name) =>
        Finding.At(place, $"{QuotedText.Of(name)} is the name of a stage of the work") with { Expected = "another name: 'before' and 'after' could not tell them apart" };

    public static Finding UnknownPart(Place place, string name, IReadOnlyList<string> parts) =>
        Finding.At(place, $"no part is called {QuotedText.Of(name)}") with { Expected = ValueMistakes.AnyOf(parts, "parts"), Nearest = NearestName.To(name, parts) };

    public static Finding UnknownPartOrGlueUp(Place place, string name, IReadOnlyList<string> names) =>
        Finding.At(place, $"no part or glue-up is called {QuotedText.Of(name)}") with { Expected = ValueMistakes.AnyOf(names, "parts and glue-ups"), Nearest = NearestName.To(name, names) };

    public static Finding UnknownAnchor(Place place, string name, IReadOnlyList<string> stages, IReadOnlyList<string> names) =>
        Finding.At(place, $"there is no stage, part, glue-up, task or decision {QuotedText.Of(name)}") with
        {
            Expected = "a name of this job, or " + ValueMistakes.AnyOf(stages, "stages"),
            Nearest = NearestName.To(name, [.. stages, .. names]),
        };

    public static Finding UnknownAdhesive(Place place, string typed, IReadOnlyList<string> known) =>
        Finding.At(place, $"{QuotedText.Of(typed)} is not a known adhesive") with { Expected = ValueMistakes.AnyOf(known, "adhesives"), Nearest = NearestOnTheTin(typed, known) };

    public static Finding UnknownFinish(Place place, string typed, IReadOnlyList<string> known) =>
        Finding.At(place, $"{QuotedText.Of(typed)} is not a known finish") with { Expected = ValueMistakes.AnyOf(known, "finishes"), Nearest = NearestOnTheTin(typed, known) };

    public static Finding GlueUpsGoRound(Place place, IReadOnlyList<string> names, IReadOnlyList<Place> places) =>
        Finding.At(place, $"the glue-ups join each other in a round: {string.Join(", ", names)}") with { Cure = $"take one of these names out of the 'joins' in {Lines(places)}" };

    public static Finding OrderGoesRound(Place place, IReadOnlyList<string> names, IReadOnlyList<Place> places) =>
        Finding.At(place, $"the order of work goes round: {string.Join(", ", names)}") with { Cure = $"take out one 'before' or 'after' in {Lines(places)}" };

    public static Finding TimedTwice(Place place, string task) =>
        Finding.At(place, $"{QuotedText.Of(task)} is timed both by minutes and by an operation") with { Expected = "one of them" };

    public static Finding NotTimed(Place place, string task) =>
        Finding.At(place, $"{QuotedText.Of(task)} has no time") with { Expected = "minutes, or an operation and a quantity" };

    public static Finding QuantityWithoutOperation(Place place, string task) =>
        Finding.At(place, $"{QuotedText.Of(task)} has a quantity of nothing") with { Expected = "an operation beside it" };

    public static Finding QuantityMissing(Place place, string operation, string unit) =>
        Finding.At(place, $"{QuotedText.Of(operation)} has no quantity") with { Expected = $"'quantity', counted in: {unit}" };

    public static Finding GuessOutOfOrder(Place place, string low, string likely, string high) =>
        Finding.At(place, $"the times {low}, {likely} and {high} do not rise") with { Expected = "low, likely and high in this order, the likely one above nothing" };

    public static Finding TimeWithoutDate(Place place, string task) =>
        Finding.At(place, $"{QuotedText.Of(task)} has a time and no date") with { Expected = "'date' beside it, such as date: 2027-04-06" };

    public static Finding AppointedTooEarly(Place place, string task, LocalDate date, LocalDate first, string why) =>
        Finding.At(place, $"{QuotedText.Of(task)} is fixed for {date:uuuu'-'MM'-'dd}, and {why} {first:uuuu'-'MM'-'dd}") with { Expected = "that day, or a later one" };

    public static Finding NotADistance(Place place, string typed) =>
        Finding.At(place, $"{QuotedText.Of(typed)} is not a distance") with { Expected = "kilometres or miles, such as 42 km or 26 mi" };

    public static Finding NoPartsFile(Place place, string typed, string why) =>
        Finding.At(place, $"the parts list {QuotedText.Of(typed)} {why}") with { Expected = "a CSV file beside the job file" };

    /// <summary>The nearest adhesive or finish, also by the names that are understood: without brackets, or with the kind in front.</summary>
    private static string? NearestOnTheTin(string typed, IReadOnlyList<string> known)
    {
        var bare = known.Select(name => name.Split(" (")[0]);
        var turned = known.Select(name => name.Split(", ")).Where(words => words.Length == 2).Select(words => words[1] + " " + words[0]);
        return NearestName.To(typed, [.. known, .. bare, .. turned]);
    }

    private static string Lines(IReadOnlyList<Place> places)
    {
        var lines = places.Select(place => place.Line).Distinct().Order().Select(line => FormattableString.Invariant($"{line}")).ToList();
        return lines.Count == 1 ? "line " + lines[0] : "lines " + ValueMistakes.AnyOf(lines, "lines").Replace(" or ", " and ", StringComparison.Ordinal);
    }
}
