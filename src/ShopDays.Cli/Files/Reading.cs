using NodaTime;
using ShopDays.Measures;
using ShopDays.Parts;

namespace ShopDays.Cli.Files;

/// <summary>What is known while one file is read: how its numbers are meant, and where its mistakes go.</summary>
internal sealed record Reading
{
    /// <summary>Where mistakes go.</summary>
    public required Findings Findings { get; init; }

    /// <summary>The unit of a length without one.</summary>
    public LengthUnit Units { get; init; } = LengthUnit.Inch;

    /// <summary>How lengths are written in messages.</summary>
    public LengthFormat Format { get; init; } = LengthFormat.Inches(16);

    /// <summary>The shop's currency; null when the shop file does not say a valid one.</summary>
    public Currency? Currency { get; init; }

    /// <summary>The zone of the shop's clock; null when the shop file does not say a valid one.</summary>
    public DateTimeZone? Zone { get; init; }

    /// <summary>Moisture of stock without a reading: what it comes to in the shop's air, if the shop file says what that is.</summary>
    public MoistureContent Stacked { get; init; } = Board.AirDry;

    /// <summary>The air that timber lies in; null when the shop file does not say.</summary>
    public YearAir? Air { get; init; }
}
