namespace ShopDays.Plans;

/// <summary>
/// The air of the shop over time: when dust flies, and when a coat is being laid on or still takes dust. Coats stand each
/// other, and so do dusty tasks; a coat and a dusty task do not.
/// </summary>
internal sealed class ClearAir
{
    private readonly Usage dust = new();
    private readonly Usage wet = new();

    /// <summary>Nothing dusty, nothing wet.</summary>
    public void Reset()
    {
        dust.Reset();
        wet.Reset();
    }

    /// <summary>Becomes like another.</summary>
    public void CopyFrom(ClearAir other)
    {
        dust.CopyFrom(other.dust);
        wet.CopyFrom(other.wet);
    }

    /// <summary>Cuts a stretch of dusty work off where a coat is wet.</summary>
    /// <returns>Whether any of it is left; otherwise the start is moved to when the air may be dusty again.</returns>
    public bool KeepOffWetCoats(ref int start, ref int end)
    {
        var coat = wet.FirstAbove(0, start);
        if (coat == start)
        {
            start = wet.FirstWithin(0, start);
            return false;
        }

        end = Math.Min(end, coat);
        return true;
    }

    /// <summary>The beginning of a coat that needs clear air from one minute to another; when the first dust in that time is over, if there is any.</summary>
    public int CoatFrom(int start, int end)
    {
        var dusty = dust.FirstAbove(0, start);
        return dusty >= end ? start : dust.FirstWithin(0, dusty);
    }

    /// <summary>Dust flies from one minute to another.</summary>
    public void Dust(int start, int end) => dust.Add(start, end, 1);

    /// <summary>A coat is laid on and wet from one minute to another.</summary>
    public void Coat(int start, int end) => wet.Add(start, end, 1);
}
