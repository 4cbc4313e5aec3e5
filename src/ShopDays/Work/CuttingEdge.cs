using ShopDays.Measures;

namespace ShopDays.Work;

/// <summary>An edge that a way of working dulls, and how long it lasts.</summary>
public sealed record CuttingEdge
{
    // Minutes of use go with the root of hardness: an edge lasts half as long in timber four times as hard (common practice, no source).
    private const double HardnessExponent = 0.5;
    private const double ReferenceHardness = 1000;
    private const double WearOfGrit = 2;
    private const string Hone = "hone an edge";

    /// <summary>What it is called, several of them in the plural.</summary>
    public required string Name { get; init; }

    /// <summary>How many share the work and are sharpened together, at least 1.</summary>
    public required int AtATime { get; init; }

    /// <summary>Minutes of cutting that one lasts in timber of 1,000 lbf; above 0.</summary>
    public required double MinutesEach { get; init; }

    /// <summary>The operation that sharpens it, by its name in the catalogue.</summary>
    public required string SharpenedBy { get; init; }

    /// <summary>What honing one of them takes, setting up and rest included, where the shop says so; null for the time of that operation.</summary>
    public WorkTime? HoningEach { get; init; }

    /// <summary>Whether it is honed as part of the work that it is for; sharpened otherwise as work of its own.</summary>
    public bool IsHoned => SharpenedBy == Hone;

    /// <summary>Whether the work wants it keen: it is begun with no more than half of the edge's life gone.</summary>
    public required bool IsForKeenWork { get; init; }

    /// <summary>Where its figures come from.</summary>
    public required string Source { get; init; }

    /// <summary>Minutes of cutting between two sharpenings of all of them, in timber of 1,000 lbf.</summary>
    public double Life => AtATime * MinutesEach;

    /// <summary>What it takes to sharpen one of them by the catalogue, without setting up, which serves them all; its rest included.</summary>
    /// <exception cref="KeyNotFoundException">The catalogue lacks the operation that sharpens it.</exception>
    public WorkTime TimeToSharpen(OperationCatalogue operations)
    {
        var operation = operations[SharpenedBy];
        return CentralTime.Of(new() { Operation = operation, Method = operation.Methods[0], Quantity = 1, Setups = 0 });
    }

    /// <summary>Minutes of use that a task makes of it, as if in timber of 1,000 lbf without grit: cutting alone, without rest and setting up.</summary>
    /// <param name="timing">The task.</param>
    /// <param name="isGritty">Whether its timber holds stony matter.</param>
    public static double UseBy(TaskTiming.ByOperation timing, bool isGritty)
    {
        var cutting = timing.Quantity * timing.Method.MinutesPerUnit * CentralTime.SlopeFactor(timing.Method, timing.Covariates) * timing.Factor;
        var wear = Math.Pow(timing.Covariates.TryGetValue(Covariate.Hardness, out var hardness) ? hardness / ReferenceHardness : 1, HardnessExponent);
        return cutting * wear * (isGritty ? WearOfGrit : 1);
    }
}

/// <summary>Edges that are honed in a task, as part of it.</summary>
/// <param name="Edge">What they are called.</param>
/// <param name="AtATime">How many are honed together.</param>
/// <param name="Times">How often: first of all, and again on the way where the task outlasts them; at least 1.</param>
/// <param name="Time">The time that it takes, by the catalogue.</param>
public sealed record Honing(string Edge, int AtATime, int Times, WorkTime Time)
{
    /// <summary>What the day sheet says where the task begins.</summary>
    public string First => "hone " + Those + " first" + Times switch
    {
        1 => "",
        2 => ", and again on the way",
        _ => FormattableString.Invariant($", and {Times - 1} times on the way"),
    };

    /// <summary>What it says where the task goes on in another session; empty when the first honing lasts to its end.</summary>
    public string OnTheWay => Times == 1 ? "" : "hone " + Those + " when dull";

    /// <summary>What it says where the same edge was honed for other work not long before.</summary>
    public string Already => AtATime == 1 ? $"the {Edge} is honed already: again only when it is dull" : $"the {Edge} are honed already: again only when they are dull";

    private string Those => AtATime == 1 ? "the " + Edge : FormattableString.Invariant($"{AtATime} {Edge}");
}
