using ShopDays.Layouts.Search;
using Xunit;

namespace ShopDays.Tests.Outside;

[Trait("Source", "J. E. Beasley, J. Opl. Res. Soc. 36 (1985) 297-306; N. Christofides and C. Whitlock, Operations Research 25 (1977) 30-44; J. F. Oliveira and J. S. Ferreira, EJOR 44 (1990) 256-266; optima from memory")]
public sealed class GuillotineTests
{
    [Theory]
    [InlineData("gcut1")]
    [InlineData("gcut2")]
    [InlineData("gcut3")]
    [InlineData("gcut4")]
    [InlineData("gcut5")]
    [InlineData("gcut6")]
    [InlineData("gcut7")]
    [InlineData("gcut8")]
    [InlineData("gcut9")]
    [InlineData("gcut10")]
    [InlineData("gcut11")]
    [InlineData("gcut12")]
    public void Without_limits_the_published_best_value_is_found_and_cut(string name)
    {
        var problem = GuillotineInstance.Read(name);
        var table = new PieceValues(problem.Length, problem.Width, problem.Pieces);
        Assert.True(table.IsExact);
        Assert.Equal(problem.Optimum, table.Best(problem.Length, problem.Width));
        Assert.Equal(problem.Optimum, problem.Verify(table.Cuts(problem.Length, problem.Width)));
    }

    [Theory]
    [InlineData("cgcut1")]
    [InlineData("cgcut2")]
    [InlineData("cgcut3")]
    [InlineData("of1")]
    [InlineData("of2")]
    public void With_limits_the_published_best_value_is_found_cut_and_proven(string name)
    {
        var problem = GuillotineInstance.Read(name);
        var filled = new BoardFill(problem.Length, problem.Width, problem.Pieces).Find(int.MaxValue);
        Assert.True(filled.IsProven);
        Assert.Equal(problem.Optimum, filled.Value);
        Assert.Equal(problem.Optimum, problem.Verify(filled.Filling));
    }
}
