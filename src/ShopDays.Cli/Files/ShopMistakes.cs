using NodaTime;
using ShopDays.Days;
using ShopDays.Measures;

namespace ShopDays.Cli.Files;

/// <summary>What can be wrong with a shop file beyond its single values.</summary>
internal static class ShopMistakes
{
    public static Finding UnknownZone(Place place, string typed, IReadOnlyList<string> zones) =>
        Finding.At(place, $"{QuotedText.Of(typed)} is not a time zone") with { Expected = "a name of the IANA list, such as Europe/London", Nearest = NearestZone(typed, zones) };

    public static Finding ClockFarFromSun(Place place, double longitude, string zone) =>
        Finding.At(place, FormattableString.Invariant($"the longitude {longitude} is far from where {zone} is the time")) with { Cure = "west of Greenwich a longitude has a minus sign" };

    public static Finding UnknownCurrency(Place place, string typed) =>
        Finding.At(place, $"{QuotedText.Of(typed)} is not a currency's code") with { Expected = "three letters of ISO 4217, such as EUR", Nearest = NearestName.To(typed, Currencies.Codes) };

    public static Finding UnknownDay(Place place, string typed, IReadOnlyList<string> days) =>
        Finding.At(place, $"{QuotedText.Of(typed)} is not a day of the week") with { Expected = ValueMistakes.AnyOf(days, "days"), Nearest = NearestName.To(typed, days) };

    public static Finding HoursOverlap(Place place, DayHours earlier, DayHours later) =>
        Finding.At(place, $"the hours {later} begin before {earlier} have ended") with { Expected = "hours of one day apart from each other" };

    public static Finding NoHours(Place place) =>
        Finding.At(place, "the week has no hours and there are no extra dates") with { Expected = "hours on a day at least, such as saturday: [\"08:00-12:00\"]" };

    public static Finding TimeSkipped(Place place, LocalDateTime typed, LocalDateTime from, LocalDateTime to) =>
        Finding.At(place, FormattableString.Invariant($"there is no {typed:HH':'mm} on {typed:uuuu'-'MM'-'dd}: the clock is put forward from {from:HH':'mm} to {to:HH':'mm} then")) with { Expected = FormattableString.Invariant($"a time before {from:HH':'mm}, or {to:HH':'mm} or later") };

    public static Finding WorkerTwice(Place place, string name) =>
        Finding.At(place, $"{QuotedText.Of(name)} is the name of a second worker") with { Expected = "a name for each" };

    public static Finding UnknownWorker(Place place, string typed, IReadOnlyList<string> workers) =>
        Finding.At(place, $"{QuotedText.Of(typed)} is not one of the workers") with { Expected = ValueMistakes.AnyOf(workers, "workers"), Nearest = NearestName.To(typed, workers) };

    public static Finding LessThanInADay(Place place, WorkTime inTwoDays, WorkTime perDay) =>
        Finding.At(place, $"{WorkTimeText.Write(inTwoDays)} in two days running is less than the {WorkTimeText.Write(perDay)} of 'heavy-per-day'") with { Expected = $"{WorkTimeText.Write(perDay)} or more", Cure = "leave it out for a day after a heavy one that holds six tenths of the cap" };

    public static Finding AirWetsTimber(Place place, Percent humidity) =>
        Finding.At(place, FormattableString.Invariant($"in air of {humidity.Value:0.#} % humidity timber gets wet and never dries")) with { Expected = "95% or less, the average of a month" };

    public static Finding ClampsTwice(Place place, string reach) =>
        Finding.At(place, $"clamps of {reach} stand here for the second time") with { Expected = "one count for each reach" };

    public static Finding FractionWithoutInches(Place place) =>
        Finding.At(place, "a fraction is for lengths in inches") with { Cure = "take it out; other units are printed in whole millimetres" };

    public static Finding PriceForSomethingElse(Place place, string typed, string expected) =>
        Finding.At(place, $"{QuotedText.Of(typed)} is a price for something else") with { Expected = expected };

    public static Finding NotHoursPerMonth(Place place, string typed) =>
        Finding.At(place, $"{QuotedText.Of(typed)} does not say hours of a month or a year") with { Expected = "hours per month or year, such as 70 h per month" };

    public static Finding MarginTakesAll(Place place, string typed) =>
        Finding.At(place, $"{QuotedText.Of(typed)} leaves nothing of the price for the work") with { Expected = "less than 100%" };

    public static Finding RoomIsNoWarmer(Place place, Temperature room, Temperature coldest) =>
        Finding.At(place, $"a warm room of {room} is no warmer than the shop's coldest night, {coldest}") with { Expected = "a room that is warmer than the shop in some month", Cure = "leave it out if there is none" };

    public static Finding UnknownOperation(Place place, string typed, IReadOnlyList<string> operations) =>
        Finding.At(place, $"{QuotedText.Of(typed)} is not an operation") with { Expected = ValueMistakes.AnyOf(operations, "operations"), Nearest = ValueMistakes.Nearest(typed, operations) };

    public static Finding UnknownMethod(Place place, string typed, string operation, IReadOnlyList<string> methods) =>
        Finding.At(place, $"{QuotedText.Of(typed)} is not a method of {QuotedText.Of(operation)}") with { Expected = ValueMistakes.AnyOf(methods, "methods"), Nearest = NearestName.To(typed, methods) };

    public static Finding UnknownMachine(Place place, string typed, IReadOnlyList<string> machines) =>
        Finding.At(place, $"no operation is done by {QuotedText.Of(typed)}") with { Expected = ValueMistakes.AnyOf(machines, "machines"), Nearest = NearestName.To(typed, machines) };

    /// <summary>The nearest zone; a city alone finds its zone.</summary>
    private static string? NearestZone(string typed, IReadOnlyList<string> zones)
    {
        var city = typed[(typed.LastIndexOf('/') + 1)..].Replace(' ', '_');
        return zones.FirstOrDefault(zone => zone.EndsWith("/" + city, StringComparison.OrdinalIgnoreCase)) ?? NearestName.To(typed, zones);
    }
}
