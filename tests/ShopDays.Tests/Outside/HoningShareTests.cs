using ShopDays.Cli.Files;
using Xunit;

namespace ShopDays.Tests.Outside;

/// <summary>What honing takes beside the planing, by the catalogue's own figures, against the usual share.</summary>
[Trait("Source", "Common practice, no source: honing takes some 8 to 12 % of the time at the planes, and a mortise chisel chops 6 to 10 mortises, paring chisels 2 to 3 dovetailed corners, between two honings")]
public sealed class HoningShareTests
{
    [Fact]
    public void Honing_takes_some_tenth_of_planing_in_hardwood()
    {
        var irons = BuiltIn.Operations["flatten face one"].Methods[0].Edge!;
        var hone = BuiltIn.Operations[irons.SharpenedBy].Methods[0];
        var minutes = (hone.MinutesPerUnit * irons.AtATime) + hone.Setup.Minutes;
        Assert.InRange(minutes / irons.Life, 0.08, 0.12);
    }

    [Fact]
    public void Chisels_last_as_many_joints_as_they_are_said_to()
    {
        var mortise = BuiltIn.Operations["mortise"].Methods[0];
        Assert.InRange(mortise.Edge!.Life / mortise.MinutesPerUnit, 6, 10);
        var tail = BuiltIn.Operations["dovetail, through"].Methods[0];
        Assert.InRange(tail.Edge!.Life / ((4 * tail.MinutesPerUnit) + tail.Setup.Minutes), 2, 3);
    }
}
