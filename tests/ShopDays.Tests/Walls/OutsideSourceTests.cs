using Xunit;

namespace ShopDays.Tests.Walls;

/// <summary>Whatever is checked against the world outside says where that truth comes from.</summary>
public sealed class OutsideSourceTests
{
    [Fact]
    public void Every_class_of_outside_checks_names_its_source()
    {
        var classes = typeof(OutsideSourceTests).Assembly.GetTypes()
            .Where(type => type.Namespace is { } name && name.StartsWith("ShopDays.Tests.Outside", StringComparison.Ordinal))
            .Where(type => type.GetMethods().Any(method => method.GetCustomAttributes(typeof(FactAttribute), true).Length > 0))
            .ToList();

        Assert.NotEmpty(classes);
        Assert.All(classes, type => Assert.Contains(
            type.GetCustomAttributesData(),
            trait => trait.AttributeType == typeof(TraitAttribute) && (string?)trait.ConstructorArguments[0].Value == "Source" && ((string?)trait.ConstructorArguments[1].Value)?.Length > 10));
    }
}
