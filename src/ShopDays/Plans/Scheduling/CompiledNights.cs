using System.Collections.Immutable;

namespace ShopDays.Plans.Scheduling;

/// <summary>What a shop's nights mean to a problem: how long what sets takes from any minute on, and when it would get too cold.</summary>
/// <param name="Settings">All that sets; the number 1 is the first.</param>
/// <param name="Barred">Stretches that work may not touch; the number 1 is the first.</param>
internal sealed record CompiledNights(ImmutableArray<CompiledSetting> Settings, ImmutableArray<BarredNights> Barred)
{
    /// <summary>The number of nothing that sets, and of no stretch that is barred.</summary>
    public const int Nothing = 0;

    /// <summary>A heated shop.</summary>
    public static CompiledNights None { get; } = new([], []);

    /// <summary>Whether anything sets slower in them than the tables say, or not at all.</summary>
    public bool AreCold => Settings.Any(setting => setting.IsSlowed) || Barred.Any(barred => barred.Stretches.Length > 0);

    /// <summary>The same, with their numbers, in nights as warm as the tables at least.</summary>
    public CompiledNights WithoutCold() => new([.. Settings.Select(setting => setting.WithoutCold())], [.. Barred.Select(_ => new BarredNights([]))]);

    /// <summary>When a wait is over: its own minutes at least, and what sets has set.</summary>
    /// <param name="from">The minute with which it begins.</param>
    /// <param name="minutes">Its own minutes.</param>
    /// <param name="sets">The number of what sets.</param>
    public int EndOf(int from, int minutes, int sets) => sets == Nothing ? from + minutes : Math.Max(from + minutes, Settings[sets - 1].EndFrom(from));

    /// <summary>How long a wait can be at most.</summary>
    /// <param name="minutes">Its own minutes.</param>
    /// <param name="sets">The number of what sets.</param>
    public int MostOf(int minutes, int sets) => sets == Nothing ? minutes : Math.Max(minutes, Settings[sets - 1].Most);

    /// <summary>When work could begin at the earliest for the sake of the nights: the same minute when all of it and what sets after it is allowed, otherwise a later one.</summary>
    /// <param name="barred">The number of its barred stretches.</param>
    /// <param name="start">Its first minute.</param>
    /// <param name="end">Its end.</param>
    public int AllowedFrom(int barred, int start, int end) => barred == Nothing ? start : Barred[barred - 1].AllowedFrom(start, end);
}

/// <summary>Stretches that work may not touch: begun in them, or before them and not ended by then.</summary>
/// <param name="Stretches">The stretches, in order and apart from each other.</param>
internal sealed record BarredNights(ImmutableArray<(int From, int To)> Stretches)
{
    /// <summary>When work that would go from one minute to another could begin at the earliest: the same minute when it touches no stretch, otherwise a later one.</summary>
    public int AllowedFrom(int start, int end)
    {
        foreach (var one in Stretches)
        {
            if (end <= one.From)
            {
                break;
            }

            if (start < one.To)
            {
                return one.To;
            }
        }

        return start;
    }
}
