using ShopDays.Days;
using ShopDays.Work;

namespace ShopDays.Plans;

/// <summary>A session of a plan in which work is likely not to be done by its end.</summary>
/// <param name="Session">The session.</param>
/// <param name="Ends">The tasks that the plan ends in it, that first which held it up most often.</param>
/// <param name="Slips">The share of trials in which the plan slips here, above 0 and at most 1: some of these tasks is not done by the end of the session, although all that should have ended in the session before was.</param>
/// <param name="NotDone">The share of trials in which some of them is not done by then, at least as great: a plan that slipped before is late here too.</param>
public sealed record SessionAtRisk(Session Session, IReadOnlyList<ShopTask> Ends, double Slips, double NotDone);
