using ShopDays.Cli.Files;
using ShopDays.Work;
using Xunit;

namespace ShopDays.Cli.Tests.Files;

public sealed class BuiltInTests
{
    public static TheoryData<string> OperationNames => [.. BuiltIn.Operations.Names];

    [Theory]
    [MemberData(nameof(OperationNames))]
    public void Every_operation_has_a_unit_a_prior_and_a_source_for_each_method(string name)
    {
        var operation = BuiltIn.Operations[name];
        Assert.NotEmpty(operation.Unit.Name);
        Assert.NotEmpty(operation.Methods);
        Assert.Equal(operation.Methods.Count, operation.Methods.Select(method => method.Name).Distinct().Count());
        Assert.All(operation.Methods, method =>
        {
            Assert.True(0 < method.LowMinutes && method.LowMinutes < method.MinutesPerUnit && method.MinutesPerUnit < method.HighMinutes);
            Assert.NotEmpty(method.Source);
            Assert.InRange(method.Rest, 0, 0.5);
            Assert.InRange(method.LearningRate, 0.8, 1);
            Assert.True(method.Crew >= 1);
            Assert.All(method.Slopes, slope => Assert.True(slope.Reference > 0 && slope.Exponent > 0));
        });
    }

    [Fact]
    public void Every_caution_that_an_operation_names_is_there_with_the_body_that_says_it()
    {
        var known = BuiltIn.Cautions.Select(caution => caution.Kind).ToHashSet();
        Assert.All(
            BuiltIn.Operations.All.SelectMany(operation => operation.Cautions.Concat(operation.Methods.SelectMany(method => method.Cautions))),
            kind => Assert.Contains(kind, known));
        Assert.All(BuiltIn.Cautions, caution => Assert.True(caution.Text.Length > 20 && caution.SaidBy.Length > 2));
    }

    [Fact]
    public void Machines_carry_their_cautions_and_hand_work_does_not_carry_theirs()
    {
        var rip = BuiltIn.Operations["rip"];
        Assert.DoesNotContain("machines", rip.Cautions.Concat(rip.Methods[0].Cautions));
        Assert.All(rip.Methods.Skip(1), method => Assert.Contains("machines", method.Cautions));
    }

    [Fact]
    public void The_usual_method_of_work_that_a_hand_can_do_is_by_hand()
    {
        Assert.All(BuiltIn.Operations.All, operation => Assert.Equal("hand", operation.Methods[0].Name));
    }

    [Fact]
    public void Every_adhesive_finish_and_rest_has_a_source_and_sensible_times()
    {
        Assert.All(BuiltIn.Waits.Adhesives, one =>
        {
            Assert.NotEmpty(one.Source);
            Assert.True(one.OpenTime <= one.AssemblyTime);
            Assert.True(one.ClampTime <= one.FullCure);
        });
        Assert.All(BuiltIn.Waits.Finishes, one =>
        {
            Assert.NotEmpty(one.Source);
            Assert.True(one.Recoat <= one.LightUse && one.LightUse <= one.FullCure);
        });
        Assert.All(BuiltIn.Waits.Rests, one =>
        {
            Assert.NotEmpty(one.Source);
            Assert.True(one.Low <= one.Likely && one.Likely <= one.High);
        });
        Assert.Contains(BuiltIn.Waits.Rests, one => one.Name.StartsWith("air-drying", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("liquid hide glue", "hide glue, liquid")]
    [InlineData("yellow PVA", "PVA, yellow (aliphatic)")]
    public void An_adhesive_is_found_by_its_words_in_any_order(string typed, string known)
    {
        Assert.True(BuiltIn.Waits.TryFindAdhesive(typed, out var adhesive));
        Assert.Equal(known, adhesive.Name);
    }

    [Fact]
    public void A_remark_in_brackets_does_not_hinder_finding_an_operation()
    {
        Assert.True(BuiltIn.Operations.TryFind("dado (housing)", out var operation));
        Assert.Equal("dado", operation.Name);
    }

    [Fact]
    public void Drying_oils_and_oil_varnishes_leave_rags_that_can_burn_and_shellac_does_not()
    {
        Assert.True(BuiltIn.Waits.TryFindFinish("boiled linseed oil", out var oil) && oil.LeavesOilyRags && !oil.IsFilm);
        Assert.True(BuiltIn.Waits.TryFindFinish("wiping varnish", out var varnish) && varnish.LeavesOilyRags && varnish.IsFilm);
        Assert.True(BuiltIn.Waits.TryFindFinish("shellac, brushed", out var shellac) && !shellac.LeavesOilyRags && shellac.IsBrushed);
    }

    [Fact]
    public void Units_turn_lengths_and_areas_into_what_the_trade_counts()
    {
        Assert.Equal(UnitKind.Length, BuiltIn.Operations["rip"].Unit.Kind);
        Assert.Equal(UnitKind.Area, BuiltIn.Operations["resaw"].Unit.Kind);
        Assert.Equal(UnitKind.Count, BuiltIn.Operations["square ends"].Unit.Kind);
        Assert.Equal(10, BuiltIn.Operations["rip"].Unit.Of(ShopDays.Measures.Length.FromFeet(10)));
        Assert.Equal(120, BuiltIn.Operations["crosscut"].Unit.Of(ShopDays.Measures.Length.FromFeet(10)));
    }
}
