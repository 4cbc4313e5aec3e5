using NodaTime;
using ShopDays.Measures;

namespace ShopDays.Cli.Files.Jobs;

/// <summary>What can be wrong with what a job waits for from others.</summary>
internal static class DecisionMistakes
{
    public static Finding AskedAndOrdered(Place place, string name) =>
        Finding.At(place, $"{QuotedText.Of(name)} is both asked for and ordered") with { Expected = "'asked' for a word or money, 'ordered' for goods: one of them" };

    public static Finding ArrivedBeforeAsked(Place place, string name, LocalDate arrived, LocalDate asked) =>
        Finding.At(place, $"{QuotedText.Of(name)} came on {arrived:uuuu'-'MM'-'dd} and is waited for since {asked:uuuu'-'MM'-'dd}") with { Expected = "that day, or a later one" };

    public static Finding ArrivedInFuture(Place place, string name, LocalDate arrived, LocalDate today) =>
        Finding.At(place, $"{QuotedText.Of(name)} came on {arrived:uuuu'-'MM'-'dd}, and today is {today:uuuu'-'MM'-'dd}") with { Expected = "the day on which it came; no 'arrived' as long as it is waited for" };

    public static Finding NobodyNeeds(Place place, string name) =>
        Finding.At(place, $"nothing in the job waits for {QuotedText.Of(name)}") with { Expected = "'before' with what cannot begin without it, or its name in the 'after' of a task" };
}
