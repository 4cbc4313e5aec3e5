using System.Globalization;
using System.Numerics;

namespace ShopDays.Measures;

/// <summary>
/// How lengths are printed: to a fraction of an inch, or to whole millimetres. What is printed is the nearest step,
/// halves away from zero, so that no more than half a step is ever lost; <see cref="Loses"/> says how much.
/// </summary>
public sealed record LengthFormat
{
    private readonly int denominator;
    private readonly bool hasFeet;

    private LengthFormat(Length step, int denominator, bool hasFeet) => (Step, this.denominator, this.hasFeet) = (step, denominator, hasFeet);

    /// <summary>Whole millimetres: <c>1206 mm</c>.</summary>
    public static LengthFormat Millimetres { get; } = new(Length.FromMillimetres(1m), 0, false);

    /// <summary>Whether it writes inches.</summary>
    public bool IsInInches => denominator > 0;

    /// <summary>The smallest difference that is printed.</summary>
    public Length Step { get; }

    /// <summary>Inches and a reduced fraction: <c>47 1/2"</c>, or <c>3' 11 1/2"</c> from a foot upwards.</summary>
    /// <param name="denominator">The finest fraction: 2, 4, 8, 16, 32 or 64.</param>
    /// <param name="feet">Whether a foot or more is written in feet and inches.</param>
    /// <exception cref="ArgumentOutOfRangeException">No ruler has that fraction.</exception>
    public static LengthFormat Inches(int denominator, bool feet = false)
    {
        if (denominator is < 2 or > 64 || !BitOperations.IsPow2(denominator))
        {
            throw new ArgumentOutOfRangeException(nameof(denominator), denominator, "a ruler shows halves, quarters, 8ths, 16ths, 32nds or 64ths");
        }

        return new(Length.FromEighthMicrometres(Length.PerInch / denominator), denominator, feet);
    }

    /// <summary>The length that is printed: the nearest step, halves away from zero.</summary>
    public Length Rounded(Length length) => Length.FromEighthMicrometres(Steps(length) * Step.EighthMicrometres);

    /// <summary>The length less what is printed of it: from minus half a step to half a step, zero when nothing is lost.</summary>
    public Length Loses(Length length) => length - Rounded(length);

    /// <summary>The least length that is printed exactly and not shorter: what is still enough when it is read back.</summary>
    public Length RoundedUp(Length length) => Rounded(length) is var near && near < length ? near + Step : near;

    /// <summary>Whether the length is printed without loss.</summary>
    public bool IsExact(Length length) => Loses(length) == Length.Zero;

    /// <summary>The length as text. A difference below zero gets a minus sign, which is not read back.</summary>
    public string Write(Length length)
    {
        var steps = Steps(length);
        var sign = steps < 0 ? "-" : "";
        return sign + (denominator == 0 ? Whole(Math.Abs(steps)) + " mm" : WriteInches(Math.Abs(steps)));
    }

    private string WriteInches(long steps)
    {
        var inches = steps / denominator;
        var numerator = steps % denominator;
        if (!hasFeet || inches < 12)
        {
            return WriteInches(inches, numerator);
        }

        var feet = Whole(inches / 12) + "'";
        if (inches % 12 == 0)
        {
            // The nought stays before a fraction: 3' 0 1/2" cannot be misread as three and a half.
            return numerator == 0 ? feet : feet + " 0 " + Fraction(numerator) + "\"";
        }

        return feet + " " + WriteInches(inches % 12, numerator);
    }

    private string WriteInches(long inches, long numerator) => (inches, numerator) switch
    {
        (_, 0) => Whole(inches) + "\"",
        (0, _) => Fraction(numerator) + "\"",
        _ => Whole(inches) + " " + Fraction(numerator) + "\"",
    };

    private string Fraction(long numerator)
    {
        var shared = BitOperations.TrailingZeroCount(numerator);
        return Whole(numerator >> shared) + "/" + Whole(denominator >> shared);
    }

    private long Steps(Length length)
    {
        (var steps, var rest) = Math.DivRem(length.EighthMicrometres, Step.EighthMicrometres);
        return Math.Abs(rest) * 2 >= Step.EighthMicrometres ? steps + Math.Sign(rest) : steps;
    }

    private static string Whole(long number) => number.ToString(CultureInfo.InvariantCulture);
}
