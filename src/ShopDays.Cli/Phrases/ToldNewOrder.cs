using NodaTime;
using ShopDays.Cli.Files;
using ShopDays.Measures;
using ShopDays.Plans;

namespace ShopDays.Cli.Phrases;

/// <summary>When a piece could be promised that is not in hand yet, and what it would do to those that are.</summary>
internal sealed record ToldNewOrder
{
    /// <summary>What it is called among the others.</summary>
    public required string Title { get; init; }

    /// <summary>The job that it is like.</summary>
    public required ShopAndJob Read { get; init; }

    /// <summary>The date with which it would begin.</summary>
    public required LocalDate Start { get; init; }

    /// <summary>Its hands-on time, each task by its likely time.</summary>
    public required WorkTime Left { get; init; }

    /// <summary>A plan in which it takes only the time that the others leave; it stands last.</summary>
    public required PlanAnswer.Planned Behind { get; init; }

    /// <summary>A plan in which it is worked in among the others; null when there are no others, or when it would not be promised sooner without taking from dates that have no room.</summary>
    public required PlanAnswer.Planned? Among { get; init; }

    /// <summary>The orders in hand, as they are called.</summary>
    public required IReadOnlyList<string> Others { get; init; }

    /// <summary>What may become of it behind the others.</summary>
    public FinishForecast Forecast => Behind.Forecasts[^1];

    /// <summary>The answer, in one or two sentences.</summary>
    public string Answer => Forecast.P80 is { } date
        ? $"A new {Inside(Read.Job.Name)}, begun on {DateWords.Of(Start)}, could be promised for {DateWords.Of(date.Date)} (80 %); as likely as not it is done by {DateWords.Of(Forecast.P50!.Value.Date)}, with bad luck by {DateOf(Forecast.P90)}."
        : $"A new {Inside(Read.Job.Name)}, begun on {DateWords.Of(Start)}, cannot be promised: fewer than four courses in five are finished within the years looked at.";

    /// <summary>What that means for the others, and what the other way would mean.</summary>
    public string Policy => Others.Count == 0
        ? "No order is in hand; it has the shop to itself."
        : $"That is with the time that the orders in hand leave: nothing of theirs is done later for it, and their chances stay as they are. {(Among is null ? "Worked in among them it could be promised no sooner, or not without taking from a date that has no room for it" : $"Worked in among them instead, it could be promised for {DateOf(Among.Forecasts[^1].P80)}; {Cost(Among)}")}.";

    /// <summary>What working it in costs the order that loses most; less than half a percent is nobody's loss.</summary>
    private string Cost(PlanAnswer.Planned among)
    {
        var most = Others
            .Select((order, place) => (Order: order, Before: Behind.Forecasts[place].ChanceOfDue ?? 0, After: among.Forecasts[place].ChanceOfDue ?? 0))
            .MaxBy(one => one.Before - one.After);
        return most.Before - most.After < 0.005
            ? "that costs none of them any of the chance of its date"
            : $"that costs {most.Order} the most, whose chance of its date goes from {ChanceWords.Of(most.Before)} to {ChanceWords.Of(most.After)}";
    }

    /// <summary>A date, or that there is none.</summary>
    public static string DateOf(ZonedDateTime? time) => time is { } known ? DateWords.Of(known.Date) : "no date within the years looked at";

    private static string Inside(string name) => name.Length > 1 && char.IsLower(name[1]) ? char.ToLowerInvariant(name[0]) + name[1..] : name;
}
