using ShopDays.Measures;
using Xunit;

namespace ShopDays.Tests.Measures;

public sealed class QuotedTextTests
{
    [Theory]
    [InlineData("47 1/2", "'47 1/2'")]
    [InlineData("  47 ", "'47'")]
    [InlineData("a\nb\u001b[31m", "'a b [31m'")]
    [InlineData("1234567890123456789012345678901234567890", "'1234567890123456789012345678901234567890'")]
    [InlineData("12345678901234567890123456789012345678901", "'123456789012345678901234567890123456789…'")]
    public void A_typed_text_is_shown_on_one_line_and_clipped_at_forty(string text, string shown) => Assert.Equal(shown, QuotedText.Of(text));

    [Fact]
    public void A_pair_of_surrogates_is_not_cut_in_two() =>
        Assert.Equal("'" + new string('a', 38) + "…'", QuotedText.Of(new string('a', 38) + "🪵🪵"));
}
