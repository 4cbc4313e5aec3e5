using ShopDays.Measures;

namespace ShopDays.Layouts;

/// <summary>
/// In which sizes a timber yard sells rough boards, so that stock wanted can be asked for there. Widths are random at a yard:
/// one wanted is the least that will do. All figures: common practice, no source.
/// </summary>
public sealed record YardSizes
{
    private YardSizes()
    {
    }

    /// <summary>Quarters of an inch thick, whole feet long, whole inches wide.</summary>
    public static YardSizes Feet { get; } = new()
    {
        Thicknesses = [.. new[] { 4, 5, 6, 8, 10, 12, 16 }.Select(quarters => Length.FromInches(quarters / 4m))],
        LengthStep = Length.FromFeet(1),
        Shortest = Length.FromFeet(4),
        Longest = Length.FromFeet(16),
        WidthStep = Length.FromInches(1m),
        Narrowest = Length.FromInches(4m),
        Widest = Length.FromInches(14m),
        Usual = [Length.FromInches(6m), Length.FromInches(8m), Length.FromInches(10m)],
    };

    /// <summary>The thicknesses that are sawn in millimetres, lengths by 300 mm and widths by 25 mm.</summary>
    public static YardSizes Metric { get; } = new()
    {
        Thicknesses = [.. new[] { 20m, 27m, 32m, 40m, 50m, 65m, 80m, 100m }.Select(Length.FromMillimetres)],
        LengthStep = Length.FromMillimetres(300m),
        Shortest = Length.FromMillimetres(1200m),
        Longest = Length.FromMillimetres(4800m),
        WidthStep = Length.FromMillimetres(25m),
        Narrowest = Length.FromMillimetres(100m),
        Widest = Length.FromMillimetres(350m),
        Usual = [Length.FromMillimetres(150m), Length.FromMillimetres(200m), Length.FromMillimetres(250m)],
    };

    /// <summary>Rough thicknesses, thinnest first.</summary>
    public required IReadOnlyList<Length> Thicknesses { get; init; }

    /// <summary>By which step lengths go.</summary>
    public required Length LengthStep { get; init; }

    /// <summary>The shortest board, a whole number of steps.</summary>
    public required Length Shortest { get; init; }

    /// <summary>The longest board that is there as a rule.</summary>
    public required Length Longest { get; init; }

    /// <summary>By which step least widths are asked for.</summary>
    public required Length WidthStep { get; init; }

    /// <summary>The least width that is worth asking for.</summary>
    public required Length Narrowest { get; init; }

    /// <summary>The widest board that is there as a rule.</summary>
    public required Length Widest { get; init; }

    /// <summary>Widths that are always there, narrowest first.</summary>
    public required IReadOnlyList<Length> Usual { get; init; }

    /// <summary>The least thickness sold that is not below this one; null when it is thicker than all of them.</summary>
    public Length? ThicknessFor(Length least) => Thicknesses.Where(thickness => thickness >= least).Select(thickness => (Length?)thickness).FirstOrDefault();

    /// <summary>The least length sold that is not below this one, beyond <see cref="Longest"/> too.</summary>
    public Length LengthFor(Length least) => Up(Length.Max(least, Shortest), LengthStep);

    /// <summary>The least width to ask for that is not below this one, beyond <see cref="Widest"/> too.</summary>
    public Length WidthFor(Length least) => Up(Length.Max(least, Narrowest), WidthStep);

    private static Length Up(Length least, Length step) =>
        Length.FromEighthMicrometres((least.EighthMicrometres + step.EighthMicrometres - 1) / step.EighthMicrometres * step.EighthMicrometres);
}
