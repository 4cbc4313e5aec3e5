using NodaTime;

namespace ShopDays.Parts;

/// <summary>Something that somebody else owes the job: a word, money or goods. How long that takes is not the maker's to say.</summary>
public sealed record Decision
{
    /// <summary>What is waited for; one of a kind in its job.</summary>
    public required string Name { get; init; }

    /// <summary>Who owes it, as the maker calls them; null where that is not said.</summary>
    public string? From { get; init; }

    /// <summary>The date on which it was, or will be, asked for; null where <see cref="After"/> tells, or else the job's start.</summary>
    public LocalDate? Asked { get; init; }

    /// <summary>Whether it is goods that were ordered, and not a word or money.</summary>
    public bool IsOrdered { get; init; }

    /// <summary>Whether it is timber that has to dry: that nobody owes, and it is not the maker's to say either.</summary>
    public bool IsDrying { get; init; }

    /// <summary>The date on which it came; null while it is waited for.</summary>
    public LocalDate? Arrived { get; init; }

    /// <summary>How long it may take, in clock time from when it is asked for.</summary>
    public required WaitGuess Wait { get; init; }

    /// <summary>Stages, parts, glue-ups or tasks that cannot begin without it.</summary>
    public required IReadOnlyList<string> Before { get; init; }

    /// <summary>What must be done before it can be asked for; says nothing more once <see cref="Asked"/> is known. Empty: it is asked for at the start.</summary>
    public IReadOnlyList<string> After { get; init; } = [];

    /// <summary>Whose word or goods it is, as a sentence names them: <c>the client's word</c>; its own name where nobody is named.</summary>
    public string Owed => (From, IsOrdered) switch
    {
        (null, false) => Name,
        (null, true) => "the delivery",
        _ => $"{Who}{(Who.EndsWith('s') ? "'" : "'s")} {(IsOrdered ? "delivery" : "word")}",
    };

    /// <summary>The same with what it is about: <c>the client's word: client approves the drawing</c>.</summary>
    public string What => Owed == Name ? Name : $"{Owed}: {Name}";

    // One of a kind of people takes an article; a proper name, or what has an article, does not.
    private string Who => From!.Contains(' ', StringComparison.Ordinal) || char.IsUpper(From[0]) ? From : "the " + From;
}

/// <summary>A maker's guess of a wait for somebody else, in clock time.</summary>
/// <param name="Low">One time in ten it is over sooner.</param>
/// <param name="Likely">As likely sooner as later.</param>
/// <param name="High">One time in ten it takes longer.</param>
public readonly record struct WaitGuess(Duration Low, Duration Likely, Duration High)
{
    /// <summary>
    /// A guess of which only the likely length is said: from three quarters of it to twice as long. People are seldom much
    /// sooner than one thinks, and often later (common practice, no source).
    /// </summary>
    public static WaitGuess About(Duration likely) => new(likely * 0.75, likely, likely * 2);
}
