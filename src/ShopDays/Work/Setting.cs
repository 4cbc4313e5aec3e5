using NodaTime;
using ShopDays.Measures;
using ShopDays.Parts;

namespace ShopDays.Work;

/// <summary>
/// A glue or a coat in a shop that has its own nights: how much slower it sets than the tables say, and where it would not
/// set at all. What counts is where the work lies until it has set, the night after it too.
/// </summary>
/// <remarks>All figures are common practice, no source; what the tin says goes before them.</remarks>
public sealed record Setting
{
    /// <summary>The temperature that the tables of glues and finishes stand at.</summary>
    private const double Tabled = 20;

    /// <summary>By how many degrees colder a glue takes twice as long (common practice, no source).</summary>
    private const double GlueDoubles = 10;

    /// <summary>By how many degrees warmer a glue leaves half the time to spread and close (common practice, no source).</summary>
    private const double OpenTimeHalves = 10;

    /// <summary>By how many degrees colder a coat takes twice as long: at 12 degrees C (common practice, no source).</summary>
    private const double CoatDoubles = 8;

    /// <summary>From here on a coat dries sooner in dry air (common practice, no source).</summary>
    private const double Warm = 25;

    /// <summary>What warm and dry air makes of a coat's times (common practice, no source).</summary>
    private const double InWarmth = 0.7;

    /// <summary>Air with no more than this is dry: what the tables stand at.</summary>
    private const double Dry = 50;

    /// <summary>Air with more than this is damp (common practice, no source).</summary>
    private const double Damp = 75;

    /// <summary>What damp air makes of the times of oil and varnish: 1.5 to 2 (common practice, no source).</summary>
    private const double InDamp = 1.75;

    /// <summary>No coat is laid on where it gets colder than this, in degrees C (common practice, no source).</summary>
    private const double LeastForCoats = 10;

    private const double Rounding = 1e-6;

    /// <summary>The glue or finish.</summary>
    public required string Name { get; init; }

    /// <summary>The shop's nights.</summary>
    public required ShopNights Nights { get; init; }

    /// <summary>Where it is colder than this it does not set as it should.</summary>
    public required Temperature Least { get; init; }

    /// <summary>Whether it is glue; a coat otherwise.</summary>
    public required bool IsGlue { get; init; }

    /// <summary>Of glue, from spreading to full pressure at 20 degrees C.</summary>
    public WorkTime AssemblyTime { get; init; }

    /// <summary>Whether damp air makes it slow: oil and varnish.</summary>
    public bool IsSlowInDamp { get; init; }

    /// <summary>Whether damp air turns it white: shellac and lacquer.</summary>
    public bool Blooms { get; init; }

    /// <summary>What could be taken instead, with the least temperature of each, what bears most cold first.</summary>
    public IReadOnlyList<(string Name, Temperature Least)> Others { get; init; } = [];

    /// <summary>The months in which it would get too cold where the work lies.</summary>
    public IReadOnlyList<int> BarredMonths => [.. ShopNights.AllMonths.Where(IsBarredIn)];

    /// <summary>Whether the air at night is damp and the work lies in it in a month.</summary>
    private bool IsDampIn(int month) => Nights.Humidity?.Value > Damp && !Nights.IsWarmRoomUsed(month);

    /// <summary>Whether it may turn white in some month in which it could be used.</summary>
    public bool MayBloom => Blooms && ShopNights.AllMonths.Any(month => IsDampIn(month) && !IsBarredIn(month));

    private static Temperature LeastOf(Finish finish) => Temperature.FromCelsius(Math.Max(LeastForCoats, finish.LeastTemperature));

    /// <summary>A glue in a shop.</summary>
    public static Setting Of(Adhesive glue, WaitTable waits, ShopNights nights) => new()
    {
        Name = glue.Name,
        Nights = nights,
        Least = Temperature.FromCelsius(glue.LeastTemperature),
        IsGlue = true,
        AssemblyTime = glue.AssemblyTime,
        Others = [.. waits.Adhesives.Where(other => other != glue).OrderBy(other => other.LeastTemperature).Select(other => (other.Name, Temperature.FromCelsius(other.LeastTemperature)))],
    };

    /// <summary>A finish in a shop.</summary>
    public static Setting Of(Finish finish, WaitTable waits, ShopNights nights) => new()
    {
        Name = finish.Name,
        Nights = nights,
        Least = LeastOf(finish),
        IsGlue = false,
        IsSlowInDamp = finish is { Layer: FinishLayer.Oil or FinishLayer.Film, Blooms: false },
        Blooms = finish.Blooms,
        Others = [.. waits.Finishes.Where(other => other != finish && other.Layer == finish.Layer).OrderBy(other => LeastOf(other).Celsius).Select(other => (other.Name, LeastOf(other)))],
    };

    /// <summary>Whether it would get too cold in a month where the work lies.</summary>
    public bool IsBarredIn(int month) => Nights.WhereWorkLies(month) < Least;

    /// <summary>How many times as long as in the tables it takes in a month; above 0, and 1 or more where it is not warm and dry.</summary>
    public double FactorIn(int month)
    {
        var degrees = Nights.WhereWorkLies(month).Celsius;
        var colder = Math.Max(0, Tabled - degrees);
        if (IsGlue)
        {
            return Math.Pow(2, colder / GlueDoubles);
        }

        var isDry = Nights.Humidity?.Value <= Dry;
        return degrees >= Warm && isDry ? InWarmth : Math.Pow(2, colder / CoatDoubles) * (IsSlowInDamp && IsDampIn(month) ? InDamp : 1);
    }

    /// <summary>Of glue, from spreading to full pressure in a month: shorter where even the nights are warmer than the tables; never longer, since a shop is warmer while it is worked in.</summary>
    public WorkTime AssemblyTimeIn(int month) => AssemblyTime * Math.Pow(2, -Math.Max(0, Nights.InShop(month).Celsius - Tabled) / OpenTimeHalves);

    /// <summary>When it is over what takes some time in the tables; whole minutes, rounded up. Each part of it is as slow as the month that it falls in.</summary>
    /// <param name="start">When it begins.</param>
    /// <param name="atTwenty">How long it takes at 20 degrees C and 50 % humidity.</param>
    public ZonedDateTime EndFrom(ZonedDateTime start, Duration atTwenty)
    {
        var left = atTwenty.TotalMinutes;
        while (true)
        {
            var factor = FactorIn(start.Month);
            var next = start.Zone.AtStartOfDay(start.Date.With(DateAdjusters.StartOfMonth).PlusMonths(1));
            var room = (next - start).TotalMinutes / factor;
            if (left <= room)
            {
                return start + Duration.FromMinutes(Math.Ceiling((left * factor) - Rounding));
            }

            (left, start) = (left - room, next);
        }
    }
}
