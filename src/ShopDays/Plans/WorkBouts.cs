using ShopDays.Measures;
using ShopDays.Work;

namespace ShopDays.Plans;

/// <summary>How a stretch of heavy work is taken: in bouts, with rests between them that are in its time already.</summary>
/// <param name="Count">How many bouts, 2 or more.</param>
/// <param name="Each">How long each is, about.</param>
/// <param name="Between">Light work of the same session that may be done in the rests, the nearest; null where there is none.</param>
public sealed record WorkBouts(int Count, WorkTime Each, ShopTask? Between)
{
    /// <summary>How much longer than a bout should be it may be, before there are two: 25 min are meant as 20 to 30 (common practice, no source).</summary>
    private const double Leeway = 1.2;

    /// <summary>The bouts of some heavy work; null for work that is done in one.</summary>
    /// <param name="work">The work.</param>
    /// <param name="bout">How long a bout is.</param>
    /// <param name="between">What may be done between them.</param>
    public static WorkBouts? Of(WorkTime work, WorkTime bout, Func<ShopTask?> between) =>
        work <= bout * Leeway ? null : (int)Math.Ceiling(work / (bout * Leeway)) is var count ? new(count, work / count, between()) : null;
}
