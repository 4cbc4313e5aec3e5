namespace ShopDays.Plans.Scheduling;

/// <summary>What the scheduler knows of an order: a job that has a date and a weight of its own.</summary>
/// <param name="DueBy">The minute by which it is to be finished; <see cref="CompiledCalendar.Never"/> when none is promised.</param>
/// <param name="Weight">How much a minute of its lateness counts beside another order's, 1 or more.</param>
/// <param name="FinishedFrom">The minute before which it is not finished, whatever is left of it: the end of a wait that runs already.</param>
internal sealed record CompiledOrder(int DueBy = CompiledCalendar.Never, int Weight = 1, int FinishedFrom = 0);
