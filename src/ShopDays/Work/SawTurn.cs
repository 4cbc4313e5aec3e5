namespace ShopDays.Work;

/// <summary>Sawing between two touch-ups of the saw: no more than its teeth last for.</summary>
/// <param name="TouchUp">The task with which it begins; null where the saw comes to the job sharp.</param>
/// <param name="Sawing">What is sawn, by the ids of its tasks, in their order; the touch-up is written before the first.</param>
internal sealed record SawTurn(int? TouchUp, IReadOnlyList<int> Sawing);
