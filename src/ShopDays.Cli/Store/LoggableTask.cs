using ShopDays.Logbook;

namespace ShopDays.Cli.Store;

/// <summary>A task that can be logged.</summary>
/// <param name="Name">Its name in the job.</param>
/// <param name="Work">What it does; null for one that no operation times.</param>
internal sealed record LoggableTask(string Name, LoggedWork? Work)
{
    /// <summary>What a stretch says was done: the whole task where it is finished, else only as much as is said.</summary>
    /// <param name="finished">Whether the task was finished.</param>
    /// <param name="quantity">How much was done; null where it is not said.</param>
    public LoggedWork? Done(bool finished, double? quantity) => (finished, quantity) switch
    {
        (true, { } whole) when Work is not null => Work with { Quantity = whole },
        (true, _) => Work,
        (false, { } some) => Work?.Part(some),
        (false, null) => null,
    };
}
