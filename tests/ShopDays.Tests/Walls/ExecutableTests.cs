using ArchUnitNET.Domain;
using ArchUnitNET.Loader;
using ShopDays.Cli.Files;
using Xunit;

namespace ShopDays.Tests.Walls;

/// <summary>
/// Commands know all the rest of the program but the bench, whose pages stand on them; each other part knows only those named here. Above all, what sets type on
/// paper knows nothing of jobs, and the kinds of answers know nothing of each other.
/// </summary>
public sealed class ExecutableTests
{
    private static readonly Dictionary<string, string[]> MayKnow = new()
    {
        ["Phrases"] = ["Files"],
        ["Paper.Setting"] = [],
        ["Files"] = ["Paper.Setting"],
        ["Store"] = ["Files"],
        ["Paper"] = ["Files", "Phrases", "Paper.Setting"],
        ["Terminal"] = ["Files", "Phrases"],
        ["Json"] = ["Files", "Phrases"],
        ["Calendars"] = ["Files", "Phrases"],
        ["Sheets"] = ["Files", "Phrases"],
        ["Bench"] = ["Files", "Phrases", "Paper", "Terminal", "Store", "Commands", "Bench.Pages", "Bench.Look"],
        ["Bench.Pages"] = ["Phrases", "Store", "Bench.Look"],
        ["Bench.Look"] = [],
        ["Commands"] = ["Files", "Phrases", "Paper", "Terminal", "Json", "Calendars", "Sheets", "Store"],
    };

    private static readonly Architecture Program = new ArchLoader().LoadAssemblies(typeof(BuiltIn).Assembly).Build();

    public static TheoryData<string> Parts => [.. MayKnow.Keys];

    [Theory]
    [MemberData(nameof(Parts))]
    public void A_part_of_the_program_knows_no_other_than_it_may(string part)
    {
        var offenders =
            from type in Program.Types
            where PartOf(type) == part
            from dependency in type.Dependencies
            let other = PartOf(dependency.Target)
            where other is not null && other != part && !MayKnow[part].Contains(other)
            select $"{type.FullName} -> {dependency.Target.FullName}";

        Assert.Empty(offenders.Distinct());
    }

    [Fact]
    public void Every_type_of_the_program_stands_in_one_of_the_parts() =>
        Assert.All(
            Program.Types.Where(type => type.FullName.StartsWith("ShopDays.Cli.", StringComparison.Ordinal)),
            type => Assert.NotNull(PartOf(type)));

    [Fact]
    public void The_walls_are_looked_at_from_inside_methods_too() =>
        Assert.Contains(Program.Types.Single(type => type.Name == "PlanBook").Dependencies, one => PartOf(one.Target) == "Paper.Setting");

    /// <summary>The part with the longest name that fits: setting type is a part of its own within paper.</summary>
    private static string? PartOf(IType type) => MayKnow.Keys
        .Where(part => type.FullName.StartsWith($"ShopDays.Cli.{part}.", StringComparison.Ordinal))
        .MaxBy(part => part.Length);
}
