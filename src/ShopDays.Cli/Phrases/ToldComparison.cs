using ShopDays.Choices;
using ShopDays.Cli.Files;

namespace ShopDays.Cli.Phrases;

/// <summary>Ways of doing a job side by side, with all that is told about them.</summary>
internal sealed record ToldComparison
{
    /// <summary>The shop and the job as it is.</summary>
    public required ShopAndJob Read { get; init; }

    /// <summary>The job as it is.</summary>
    public required Tried AsIs { get; init; }

    /// <summary>The other ways: as they were asked for, or as they gain.</summary>
    public required IReadOnlyList<Tried> Others { get; init; }

    /// <summary>The risk at which prices are compared.</summary>
    public required double Risk { get; init; }

    /// <summary>Single changes that were tried unasked; null where none were asked for.</summary>
    public int? Suggested { get; init; }

    /// <summary>What the times come from.</summary>
    public required TimesBehind Behind { get; init; }

    /// <summary>The seed of the draws.</summary>
    public required int Seed { get; init; }

    /// <summary>Whether the job is begun.</summary>
    public required bool IsBegun { get; init; }

    /// <summary>Whether another way does something by a machine that the job as it is does not.</summary>
    public bool BringsMachines => Others.Select(Of).OfType<Difference>()
        .SelectMany(difference => difference.Hours)
        .Any(one => one.Methods.Count > 0 && one.OtherMethods.Except(one.Methods).Any(method => method != "hand"));

    /// <summary>Whether another way takes another glue than the job as it is.</summary>
    public bool BringsGlue => Others.SelectMany(other => other.Glues).Except(AsIs.Glues, StringComparer.Ordinal).Any();

    /// <summary>What another way changes; null where one of the two cannot be done.</summary>
    public Difference? Of(Tried other) => AsIs.Outcome is { } one && other.Outcome is { } two ? Difference.Between(one, two) : null;
}
