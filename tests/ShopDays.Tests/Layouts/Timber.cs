using ShopDays.Layouts;
using ShopDays.Measures;
using ShopDays.Parts;

namespace ShopDays.Tests.Layouts;

/// <summary>Boards, parts and rates for tests, in trade words and inches.</summary>
internal static class Timber
{
    public static Species Oak { get; } = Named("oak", 1360);

    public static Species Pine { get; } = Named("pine", 380);

    public static Currency Dollars { get; } = new("USD", 2);

    /// <summary>Rates near common practice for hand work; the tests need them plausible, not exact.</summary>
    public static SawingRates Rates { get; } = new()
    {
        Straighten = new CutRate(WorkTime.FromMinutes(4), WorkTime.FromMinutes(3), 1.1, 0.5),
        Rip = new CutRate(WorkTime.FromMinutes(3), WorkTime.FromMinutes(3), 1.1, 0.5),
        Crosscut = new CutRate(WorkTime.FromMinutes(2), WorkTime.FromMinutes(4), 1.1, 0.5),
        Resaw = new CutRate(WorkTime.FromMinutes(5), WorkTime.FromMinutes(4), 1.1, 0.5),
        PlaneDown = new PlaneRate(WorkTime.FromMinutes(60), 0.8, 0.5),
        HourlyRate = new Money(48, new Currency("USD", 2)),
    };

    /// <summary>Allowances for hand work, spelt out so that the tests' sums do not hang on the defaults.</summary>
    public static Allowances ByHand { get; } = new()
    {
        Kerf = Length.FromInches(0.0625m),
        Length = Length.FromInches(1m),
        Width = Length.FromInches(0.25m),
        Strip = Length.FromInches(0.125m),
        LiveEdge = Length.FromInches(0.75m),
        RoughEdge = Length.FromInches(0.125m),
        RoughFaces = Length.FromInches(0.125m),
        SkipPlanedFaces = Length.FromInches(0.0625m),
        UsefulLength = Length.FromInches(12m),
        UsefulWidth = Length.FromInches(2m),
    };

    /// <summary>No allowance and no kerf: sizes are what they say.</summary>
    public static Allowances Bare { get; } = new()
    {
        Kerf = Length.Zero,
        Length = Length.Zero,
        Width = Length.Zero,
        Strip = Length.Zero,
        LiveEdge = Length.Zero,
        RoughEdge = Length.Zero,
        RoughFaces = Length.Zero,
        SkipPlanedFaces = Length.Zero,
        UsefulLength = Length.FromInches(6m),
        UsefulWidth = Length.FromInches(1m),
    };

    /// <summary>A planed board with straight edges.</summary>
    public static Board ABoard(string name, decimal length, decimal width, decimal thickness = 1) => new()
    {
        Name = name,
        Species = Oak,
        Length = Length.FromInches(length),
        Width = Length.FromInches(width),
        Thickness = Length.FromInches(thickness),
        Edges = BoardEdges.Straight,
        Faces = BoardFaces.Planed,
    };

    public static IReadOnlyList<Board> Boards(int count, Func<string, Board> make) =>
        [.. Enumerable.Range(1, count).Select(number => make(FormattableString.Invariant($"A{number}")) with { Line = "A" })];

    public static Board Flawed(this Board board, decimal from, decimal to, decimal acrossFrom, decimal acrossTo) => board with
    {
        Line = board.Line,
        Flaws = [.. board.Flaws, new Flaw(Length.FromInches(from), Length.FromInches(to), Length.FromInches(acrossFrom), Length.FromInches(acrossTo))],
    };

    public static Part APart(string name, decimal length, decimal width, decimal thickness = 1, int count = 1) => new()
    {
        Name = name,
        Count = count,
        Species = Oak,
        Length = Length.FromInches(length),
        Width = Length.FromInches(width),
        Thickness = Length.FromInches(thickness),
    };

    public static Layout LayOut(IReadOnlyList<Board> boards, IReadOnlyList<Part> parts, Allowances? allowances = null, int seed = 1) =>
        LayoutSearch.LayOut(Asked(boards, parts, allowances) with { Seed = seed });

    /// <summary>Asked for at once, at these rates.</summary>
    public static LayoutRequest Asked(IReadOnlyList<Board> boards, IReadOnlyList<Part> parts, Allowances? allowances = null) =>
        new() { Boards = boards, Parts = parts, Allowances = allowances ?? Bare, Rates = Rates, Effort = LayoutEffort.Quick };

    public static decimal Inches(Length length) => (decimal)length.EighthMicrometres / 203_200;

    private static Species Named(string name, double hardness) => new()
    {
        Name = name,
        BotanicalName = name,
        Kind = SpeciesKind.Hardwood,
        GreenSpecificGravity = 0.6,
        SpecificGravityAt12 = 0.65,
        DensityAt12 = 720,
        HardnessPoundsForce = hardness,
        RadialShrinkage = 5,
        TangentialShrinkage = 10,
        VolumetricShrinkage = 15,
        GravitySource = "invented for tests",
        HardnessSource = "invented for tests",
        ShrinkageSource = "invented for tests",
    };
}
