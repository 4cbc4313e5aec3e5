using ArchUnitNET.Domain;
using ArchUnitNET.Loader;
using Xunit;

namespace ShopDays.Tests.Walls;

/// <summary>Data flows one way through the library: what stands earlier in the list never knows what stands later.</summary>
public sealed class LayerTests
{
    private static readonly string[] Layers = ["Measures", "Parts", "Layouts", "Work", "Logbook", "Times", "Days", "Plans", "Prices", "Choices"];

    private static readonly Architecture Library = new ArchLoader().LoadAssemblies(typeof(ShopDays.Measures.Length).Assembly).Build();

    public static TheoryData<string, string> EarlierAndLater()
    {
        var pairs = new TheoryData<string, string>();
        for (var later = 1; later < Layers.Length; later++)
        {
            for (var earlier = 0; earlier < later; earlier++)
            {
                pairs.Add(Layers[earlier], Layers[later]);
            }
        }

        return pairs;
    }

    [Theory]
    [MemberData(nameof(EarlierAndLater))]
    public void An_earlier_layer_never_knows_a_later_one(string earlier, string later)
    {
        var offenders =
            from type in Library.Types
            where IsIn(type, earlier)
            from dependency in type.Dependencies
            where IsIn(dependency.Target, later)
            select $"{type.FullName} -> {dependency.Target.FullName}";

        Assert.Empty(offenders.Distinct());
    }

    [Fact]
    public void The_layers_are_all_the_namespaces_there_are()
    {
        var found = typeof(ShopDays.Measures.Length).Assembly.GetTypes()
            .Select(type => type.Namespace)
            .Where(name => name is not null && name.StartsWith("ShopDays.", StringComparison.Ordinal))
            .Select(name => name!.Split('.')[1])
            .Distinct()
            .Order(StringComparer.Ordinal);

        Assert.Equal(Layers.Order(StringComparer.Ordinal), found);
    }

    [Fact]
    public void The_walls_are_looked_at_from_inside_methods_too() =>
        Assert.Contains(Library.Types.Single(type => type.Name == "RateModel").Dependencies, one => IsIn(one.Target, "Work"));

    private static bool IsIn(IType type, string layer) =>
        type.FullName.StartsWith($"ShopDays.{layer}.", StringComparison.Ordinal);
}
