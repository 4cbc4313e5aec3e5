using System.Runtime.CompilerServices;

namespace ShopDays.Cli.Files;

/// <summary>One mistake in a file. Made by the factories of the mistakes of each subject, never in passing.</summary>
internal sealed record Finding
{
    private Finding(Place place, string kind, string what) => (Place, Kind, What) = (place, kind, what);

    /// <summary>Where it is.</summary>
    public Place Place { get; }

    /// <summary>The name of the factory that made it.</summary>
    public string Kind { get; }

    /// <summary>What is wrong, the value quoted as typed.</summary>
    public string What { get; }

    /// <summary>What would have been right; null where that goes without saying.</summary>
    public string? Expected { get; init; }

    /// <summary>The valid name that was probably meant; null when none is near.</summary>
    public string? Nearest { get; init; }

    /// <summary>What to do about it; null where what was expected says so.</summary>
    public string? Cure { get; init; }

    /// <summary>The message without its place.</summary>
    public string Message => What
        + (Expected is null ? "" : "; expected " + Expected)
        + (Nearest is null ? "" : "; nearest: " + Nearest)
        + (Cure is null ? "" : "; " + Cure);

    /// <summary>The whole line: <c>file:line:column: what; what was expected; nearest: name</c>.</summary>
    public override string ToString() => $"{Place}: {Message}";

    /// <summary>Makes a finding whose kind is the factory that calls this.</summary>
    public static Finding At(Place place, string what, [CallerMemberName] string kind = "") => new(place, kind, what);
}
