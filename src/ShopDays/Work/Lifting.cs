using ShopDays.Measures;

namespace ShopDays.Work;

/// <summary>How well a load can be gripped.</summary>
public enum Grip
{
    /// <summary>Handles, or fingers curled under it: multiplier 1.00.</summary>
    Good,

    /// <summary>Fingers bent by a right angle: multiplier 0.95 below 75 cm of height, 1.00 above.</summary>
    Fair,

    /// <summary>Bulky, slick or sharp-edged, as a rough slab is: multiplier 0.90.</summary>
    Poor,
}

/// <summary>One lift with both hands, as the revised lifting equation describes it. Not meant for lifts by two people.</summary>
public sealed record Lift
{
    /// <summary>How far the hands are in front of the ankles; 25 cm or less is the best, beyond 63 cm no weight is right.</summary>
    public required Length Out { get; init; }

    /// <summary>How high the hands are at the start; knuckle height, 75 cm, is the best.</summary>
    public Length Height { get; init; } = Length.FromMillimetres(750m);

    /// <summary>How far up or down it goes; up to 25 cm costs nothing.</summary>
    public Length Travel { get; init; }

    /// <summary>How far the body is twisted, in degrees, 0 to 135.</summary>
    public double TwistDegrees { get; init; }

    /// <summary>The grip.</summary>
    public Grip Grip { get; init; } = Grip.Poor;

    /// <summary>The multiplier for how often and how long, 0 to 1; 1 for a lift now and then.</summary>
    public double Frequency { get; init; } = 1;
}

/// <summary>
/// The revised lifting equation: recommended weight = load constant x six multipliers, none above 1; the index is the
/// load over it, and above 1 there is risk. Source: NIOSH 94-110, rev. 2021.
/// </summary>
public static class Lifting
{
    /// <summary>What may be lifted under ideal conditions: 23 kg (NIOSH 94-110, rev. 2021).</summary>
    public static Mass LoadConstant { get; } = Mass.FromKilograms(23);

    /// <summary>The recommended weight of a lift; zero where the equation allows none.</summary>
    public static Mass RecommendedWeight(Lift lift)
    {
        var centimetresOut = lift.Out.Millimetres / 10;
        var height = lift.Height.Millimetres / 10;
        var travel = lift.Travel.Millimetres / 10;
        if (centimetresOut > 63 || height > 175 || travel > 175 || lift.TwistDegrees > 135)
        {
            return Mass.Zero;
        }

        var horizontal = Math.Min(1, 25 / Math.Max(centimetresOut, 25));
        var vertical = 1 - (0.003 * Math.Abs(height - 75));
        var distance = travel <= 25 ? 1 : 0.82 + (4.5 / travel);
        var twist = 1 - (0.0032 * lift.TwistDegrees);
        var grip = lift.Grip switch
        {
            Grip.Good => 1,
            Grip.Fair => height < 75 ? 0.95 : 1,
            Grip.Poor => 0.90,
            _ => throw new System.Diagnostics.UnreachableException(),
        };
        return LoadConstant * (horizontal * vertical * distance * twist * grip * lift.Frequency);
    }

    /// <summary>The load over the recommended weight; infinite where the equation allows no weight.</summary>
    public static double Index(Mass load, Lift lift) => load / RecommendedWeight(lift);

    /// <summary>
    /// A rough slab in the arms: held 15 in out at the height of the knuckles, seldom, without twist, poorly gripped.
    /// </summary>
    public static Lift SlabInTheArms { get; } = new() { Out = Length.FromInches(15m) };

    /// <summary>
    /// What two people may lift together: two thirds of the sum of what each could (HSE guidance on team lifts, from memory).
    /// </summary>
    public static Mass OfTwo(Mass alone) => alone * (2 * 2.0 / 3);
}
