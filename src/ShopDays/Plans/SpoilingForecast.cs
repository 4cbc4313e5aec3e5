using NodaTime;
using ShopDays.Measures;
using ShopDays.Times;

namespace ShopDays.Plans;

/// <summary>What of a finish is for pieces that may be spoiled, and which spare blanks would help.</summary>
/// <remarks>The same order of work is forecast again without any spoiling, and with one more blank of a part, its sawing and planing reckoned.</remarks>
public sealed record SpoilingForecast
{
    /// <summary>Parts for which a spare blank is tried: those of which the most is lost.</summary>
    private const int MostTried = 3;

    /// <summary>Pieces, glue-ups and coats that are spoiled in a course of the job, on average.</summary>
    public required double Expected { get; init; }

    /// <summary>The chance that nothing is spoiled, 0 to 1.</summary>
    public required double ChanceOfNone { get; init; }

    /// <summary>The share of courses in which new timber is waited for, 0 to 1.</summary>
    public required double ChanceOfWaiting { get; init; }

    /// <summary>When four trials in five would be finished if nothing were ever spoiled; null when not within the years looked at.</summary>
    public required ZonedDateTime? P80Without { get; init; }

    /// <summary>By how much the promise is later for what may be spoiled; null where one of the two is not known.</summary>
    public required Duration? Later { get; init; }

    /// <summary>By how much the date that nine in ten keep is later for it; null where one of the two is not known.</summary>
    public required Duration? LaterWithBadLuck { get; init; }

    /// <summary>Parts with spare blanks, and how many of each.</summary>
    public required IReadOnlyList<(string Part, int Spares)> Asked { get; init; }

    /// <summary>The share of courses in which these spare a wait for new timber, 0 to 1.</summary>
    public required double AskedSaveWaits { get; init; }

    /// <summary>What one more blank of a part would change, the most helpful first; those of which something is lost at all.</summary>
    public required IReadOnlyList<SpareForecast> Spares { get; init; }

    /// <summary>Works it out.</summary>
    /// <param name="forecast">The forecast as it is.</param>
    /// <param name="spoiling">Where the spoilings come from.</param>
    /// <param name="draws">The courses with their spoilings.</param>
    /// <param name="with">A forecast with other courses.</param>
    internal static SpoilingForecast Of(FinishForecast forecast, SpoilingDraws spoiling, TimeDraws draws, Func<TimeDraws, FinishForecast> with)
    {
        var reworks = draws.Reworks!;
        var clean = draws with { Reworks = null };
        var without = with(clean);
        return new()
        {
            Expected = spoiling.Expected,
            ChanceOfNone = spoiling.ChanceOfNone,
            ChanceOfWaiting = Waiting(reworks),
            Asked = spoiling.Asked,
            AskedSaveWaits = spoiling.Asked.Count == 0 ? 0 : Waiting(spoiling.WithoutSpares().On(clean).Reworks!) - Waiting(reworks),
            P80Without = without.P80,
            Later = Between(without.P80, forecast.P80),
            LaterWithBadLuck = Between(without.P90, forecast.P90),
            Spares =
            [
                .. spoiling.PartsToCome
                    .Select(part => (Part: part, Again: spoiling.WithASpare(part)))
                    .Select(one => (one.Part, one.Again, Drawn: one.Again.On(clean)))
                    .Select(one => (one.Part, one.Again, one.Drawn, Saved: SavedOf(one.Part, reworks, one.Drawn.Reworks!)))
                    .Where(one => one.Saved.Minutes > 0)
                    .OrderByDescending(one => one.Saved.Minutes + (one.Saved.Waits * draws.Trials * Duration.FromDays(1).TotalMinutes))
                    .Take(MostTried)
                    .Select(one => SpareOf(one.Part, one.Saved.Waits, one.Again.WithTheMakingOf(one.Part, one.Drawn)))
                    .OrderByDescending(one => one.Earlier)
                    .ThenByDescending(one => one.EarlierOnAverage),
            ],
        };

        SpareForecast SpareOf(string part, double waits, TimeDraws drawn)
        {
            var spared = with(drawn);
            return new(
                part,
                waits,
                drawn.OfAll().P80 - draws.OfAll().P80,
                Between(spared.P80, forecast.P80) ?? Duration.Zero,
                MeanOf(forecast) is { } mean && MeanOf(spared) is { } otherMean ? mean - otherMean : Duration.Zero);
        }
    }

    private static double Waiting(IReadOnlyList<Rework[]> reworks) => (double)reworks.Count(trial => trial.Any(one => one.IsForTimber)) / reworks.Count;

    private static (double Minutes, double Waits) SavedOf(string part, IReadOnlyList<Rework[]> now, IReadOnlyList<Rework[]> spared) => (
        now.Sum(trial => trial.Where(one => one.Part == part).Sum(one => one.Minutes)) - spared.Sum(trial => trial.Where(one => one.Part == part).Sum(one => one.Minutes)),
        (double)(Waiting(part, now) - Waiting(part, spared)) / now.Count);

    private static int Waiting(string part, IReadOnlyList<Rework[]> reworks) => reworks.Count(trial => trial.Any(one => one.Part == part && one.IsForTimber));

    private static Duration? Between(ZonedDateTime? first, ZonedDateTime? second) =>
        first is { } from && second is { } to ? to.ToInstant() - from.ToInstant() : null;

    /// <summary>The mean finish; null where a trial has none.</summary>
    private static Instant? MeanOf(FinishForecast forecast) => forecast.Unfinished > 0 || forecast.Finishes.Count == 0
        ? null
        : forecast.Finishes[0] + Duration.FromMinutes(forecast.Finishes.Average(one => (one - forecast.Finishes[0]).TotalMinutes));
}

/// <summary>What one more blank of a part would change.</summary>
/// <param name="Part">The part.</param>
/// <param name="SavedWaits">The share of courses in which it saves a wait for new timber, 0 to 1.</param>
/// <param name="HandsOn">Hands-on time, four courses in five, that it takes more; below zero when it saves some. Its own sawing and planing are in it.</param>
/// <param name="Earlier">By how much the promise would be earlier; below zero when its sawing and planing make it later.</param>
/// <param name="EarlierOnAverage">By how much the finish would be earlier on average, in the same way.</param>
public sealed record SpareForecast(string Part, double SavedWaits, WorkTime HandsOn, Duration Earlier, Duration EarlierOnAverage);
