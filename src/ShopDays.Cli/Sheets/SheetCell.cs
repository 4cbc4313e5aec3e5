using NodaTime;

namespace ShopDays.Cli.Sheets;

/// <summary>What stands in one field of a sheet.</summary>
internal abstract record SheetCell
{
    private SheetCell()
    {
    }

    /// <summary>Words; never anything to be reckoned, whatever they begin with.</summary>
    public sealed record Words(string Text) : SheetCell;

    /// <summary>A number.</summary>
    /// <param name="Value">The number.</param>
    /// <param name="Places">Digits behind the point that are shown, 0 to 6.</param>
    public sealed record Number(decimal Value, int Places) : SheetCell;

    /// <summary>A date.</summary>
    public sealed record Day(LocalDate Date) : SheetCell;

    /// <summary>A date with a time of day by the shop's clock.</summary>
    public sealed record Moment(LocalDateTime Time) : SheetCell;

    /// <summary>Nothing.</summary>
    public sealed record Empty : SheetCell;

    /// <summary>A number that is rounded to the places that are shown, halves away from zero.</summary>
    public static SheetCell Of(double value, int places) => new Number(Math.Round((decimal)value, places, MidpointRounding.AwayFromZero), places);

    /// <summary>A number that counts.</summary>
    public static SheetCell Of(int count) => new Number(count, 0);

    /// <summary>Words; nothing where there are none.</summary>
    public static SheetCell Of(string? text) => string.IsNullOrEmpty(text) ? new Empty() : new Words(text);

    /// <summary>A date.</summary>
    public static SheetCell Of(LocalDate date) => new Day(date);

    /// <summary>A time by the shop's clock.</summary>
    public static SheetCell Of(ZonedDateTime time) => new Moment(time.LocalDateTime);
}
