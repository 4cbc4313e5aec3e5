using ShopDays.Cli.Files;
using Xunit;

namespace ShopDays.Cli.Tests.Files;

public sealed class SpeciesNameTests
{
    [Theory]
    [InlineData("sugar maple", "sugar (hard) maple")]
    [InlineData("hard maple", "sugar (hard) maple")]
    [InlineData("Sugar (Hard) Maple", "sugar (hard) maple")]
    [InlineData("true mahogany", "mahogany (true)")]
    [InlineData("true", null)]
    [InlineData("maple", null)]
    public void A_timber_is_found_by_its_name_with_or_without_the_word_in_brackets(string typed, string? name) =>
        Assert.Equal(name, BuiltIn.Species.TryFind(typed, out var found) ? found.Name : null);
}
