using System.Globalization;
using ShopDays.Logbook;

namespace ShopDays.Cli.Store;

/// <summary>A task that can be logged.</summary>
/// <param name="Name">Its name in the job.</param>
/// <param name="Work">What it does; null for one that no operation times.</param>
internal sealed record LoggableTask(string Name, LoggedWork? Work)
{
    // Paper shows quantities rounded; typed back they may be a little more than the whole.
    private const double Rounding = 0.05;

    /// <summary>What stands against a quantity: a stretch cannot do more than the whole task. Null for nothing.</summary>
    /// <param name="quantity">How much was done; null where it is not said.</param>
    public string? Complaint(double? quantity) => quantity is { } some && Work is { } whole && some > whole.Quantity * (1 + Rounding)
        ? string.Create(CultureInfo.InvariantCulture, $"{some:0.###} is more than all of '{Name}', which has {whole.Quantity:0.###} {whole.Unit}; put the number right, or log the time without it")
        : null;

    /// <summary>What a stretch says was done: the whole task where it is finished, however little of it was left, else only as much as is said.</summary>
    /// <param name="finished">Whether the task was finished.</param>
    /// <param name="quantity">How much was done; null where it is not said.</param>
    public LoggedWork? Done(bool finished, double? quantity) => (finished, quantity) switch
    {
        (true, _) => Work,
        (false, { } some) => Work?.Part(some),
        (false, null) => null,
    };
}
