using NodaTime;
using ShopDays.Measures;
using ShopDays.Parts;

namespace ShopDays.Work;

/// <summary>A task before its method, its setups and its place in the list are settled.</summary>
internal sealed record TaskSketch
{
    /// <summary>Where in the making it stands.</summary>
    public required Stage Stage { get; init; }

    /// <summary>The operation, by its name in the catalogue.</summary>
    public required string Operation { get; init; }

    /// <summary>What stands on the day sheet.</summary>
    public required string Name { get; init; }

    /// <summary>How much, in the operation's unit.</summary>
    public required double Quantity { get; init; }

    /// <summary>How many pieces, cuts or joints there are to set up for, where a setup serves only one.</summary>
    public double Each { get; init; } = 1;

    /// <summary>Like pieces in this run.</summary>
    public int Run { get; init; } = 1;

    /// <summary>Whether the run goes on in a later pass.</summary>
    public bool MorePassesFollow { get; init; }

    /// <summary>Like pieces in the whole job.</summary>
    public int Batch { get; init; } = 1;

    /// <summary>The properties of the work.</summary>
    public IReadOnlyDictionary<Covariate, double> Covariates { get; init; } = new Dictionary<Covariate, double>();

    /// <summary>Factor on time beyond rates.</summary>
    public double Factor { get; init; } = 1;

    /// <summary>Known time beside the work itself, rest included.</summary>
    public WorkTime Besides { get; init; }

    /// <summary>The parts or glue-ups it works on.</summary>
    public IReadOnlyList<string> Parts { get; init; } = [];

    /// <summary>The board it works on.</summary>
    public string? Board { get; init; }

    /// <summary>Clamps it takes.</summary>
    public IReadOnlyList<ClampsHeld> Clamps { get; init; } = [];

    /// <summary>Floor that it takes, with the waits that hold it.</summary>
    public Area Floor { get; init; }

    /// <summary>The heaviest single thing lifted.</summary>
    public Mass Lift { get; init; }

    /// <summary>People it takes at least, where that is more than the method says.</summary>
    public int Crew { get; init; } = 1;

    /// <summary>How long after it dusty work stays away.</summary>
    public Duration DustFreeAfter { get; init; }

    /// <summary>What sets after it in a shop with nights of its own.</summary>
    public Setting? Sets { get; init; }

    /// <summary>How long after it that must not get too cold.</summary>
    public Duration SetsFor { get; init; }

    /// <summary>Cautions beyond those of the operation.</summary>
    public IReadOnlyList<string> Cautions { get; init; } = [];

    /// <summary>Remarks for the day sheet.</summary>
    public string Note { get; init; } = "";
}

/// <summary>One piece on its way: a part by its number, one strip of a panel, or what came out of a glue-up.</summary>
/// <param name="Of">The part or glue-up.</param>
/// <param name="Number">Which of it, from 1; 0 for a glue-up.</param>
/// <param name="Strip">Which strip of a panel, from 1; 0 for a whole piece.</param>
internal readonly record struct Piece(string Of, int Number, int Strip = 0);
