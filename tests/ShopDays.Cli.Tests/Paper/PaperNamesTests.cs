using System.Text;
using ShopDays.Cli.Paper;
using ShopDays.Cli.Paper.Setting;
using Xunit;

namespace ShopDays.Cli.Tests.Paper;

public sealed class PaperNamesTests
{
    [Fact]
    public void Characters_that_the_font_lacks_are_found_once_each() =>
        Assert.Equal([new Rune('木'), new Rune('棚')], PaperNames.Unprintable("木棚", "Bücherbrett ½ ×\u00A0ж", "棚 2"));

    [Fact]
    public void A_character_that_the_font_lacks_is_printed_as_a_question_mark_and_takes_its_width()
    {
        var letters = ReadBack.Letters(ReadBack.Drawn(page => page.Text("a棚b", 100, 200, TypeScale.Body)));

        Assert.Equal("a?b", string.Concat(letters.Select(letter => letter.Value)));
        Assert.Equal(TypeScale.Body.WidthOf("a?b"), TypeScale.Body.WidthOf("a棚b"));
    }

    [Fact]
    public void The_first_page_says_that_a_name_cannot_be_printed()
    {
        var plan = APlan.Of([.. APlan.Parts(2).Select((part, order) => order == 0 ? part with { Name = "棚板" } : part)], AShop.With(PaperSize.A4));

        Assert.Contains("2characters", Squeezed(ReadBack.Pages(PlanBook.Set(plan))[0]), StringComparison.Ordinal);
        Assert.Null(PaperNames.Remark("shelf", "étagère"));
    }

    private static string Squeezed(string text) => string.Concat(text.Where(c => !char.IsWhiteSpace(c)));
}
