namespace ShopDays.Plans.Scheduling;

/// <summary>
/// The air of the shop over time: when dust flies, and when a coat is being laid on or still takes dust. Coats stand each
/// other, and so do dusty tasks; a coat and a dusty task do not.
/// </summary>
/// <remarks>Stretches are kept as they come: there are few coats to keep dust off, and few of them look for dust.</remarks>
internal sealed class ClearAir
{
    private readonly Stretches dust = new();
    private readonly Stretches wet = new();
    private int firstWet;
    private int lastWet;

    /// <summary>How many stretches there are of dust and of coats, for <see cref="GoBackTo"/>.</summary>
    public (int Dust, int Wet) Mark => (dust.Count, wet.Count);

    /// <summary>Nothing dusty, nothing wet.</summary>
    public void Reset()
    {
        GoBackTo((0, 0));
        (firstWet, lastWet) = (CompiledCalendar.Never, 0);
    }

    /// <summary>Takes the latest stretches back.</summary>
    public void GoBackTo((int Dust, int Wet) mark) => (dust.Count, wet.Count) = mark;

    /// <summary>Cuts a stretch of dusty work off where a coat is wet.</summary>
    /// <returns>Whether any of it is left; otherwise the start is moved to when the air may be dusty again.</returns>
    public bool KeepOffWetCoats(ref int start, ref int end)
    {
        if (start >= lastWet || end <= firstWet)
        {
            return true;
        }

        for (var index = 0; index < wet.Count; index++)
        {
            var coat = wet[index];
            if (coat.From <= start && start < coat.To)
            {
                start = coat.To;
                return false;
            }

            if (coat.From > start)
            {
                end = Math.Min(end, coat.From);
            }
        }

        return true;
    }

    /// <summary>The beginning of a coat that needs clear air from one minute to another: the first when there is no dust in that time, otherwise one before which there is no such time.</summary>
    public int CoatFrom(int start, int end) => dust.LastEnd(start, end);

    /// <summary>Dust flies from one minute to another.</summary>
    public void Dust(int start, int end) => dust.Add(start, end);

    /// <summary>A coat is laid on and wet from one minute to another.</summary>
    public void Coat(int start, int end)
    {
        if (start < end)
        {
            wet.Add(start, end);
            firstWet = Math.Min(firstWet, start);
            lastWet = Math.Max(lastWet, end);
        }
    }
}
