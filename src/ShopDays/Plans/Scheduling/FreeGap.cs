namespace ShopDays.Plans.Scheduling;

/// <summary>A gap in a session, one link of the row of its gaps.</summary>
/// <param name="From">The first free minute.</param>
/// <param name="To">The end, not included.</param>
/// <param name="KeyBefore">The set-up of the work before it; below 0 none.</param>
/// <param name="KeyAfter">The set-up of the work after it; below 0 none.</param>
/// <param name="Next">The next gap of the session; below 0 none.</param>
internal record struct FreeGap(int From, int To, int KeyBefore, int KeyAfter, int Next)
{
    /// <summary>Neighbour of no work.</summary>
    public const int NoWork = -1;

    /// <summary>Whether a worker turns from one set-up to another: 1, or 0.</summary>
    public static int Turns(int before, int after) => (before | after) < 0 || before == after ? 0 : 1;
}
