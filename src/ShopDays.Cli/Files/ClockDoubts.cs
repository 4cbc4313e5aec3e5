using NodaTime;

namespace ShopDays.Cli.Files;

/// <summary>What is said of times that can be read in two ways: no mistakes, since one of the two is taken.</summary>
internal static class ClockDoubts
{
    public static Finding TimeDoubled(Place place, LocalDateTime time, bool isEnd) =>
        Finding.At(place, FormattableString.Invariant($"{time:HH':'mm} comes twice on {time:uuuu'-'MM'-'dd}, when the clock is put back; the {(isEnd ? "second" : "first")} is meant")) with { Cure = isEnd ? "for the first write an end before that hour" : "for the second write a time after that hour" };
}
