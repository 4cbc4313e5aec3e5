using Microsoft.AspNetCore.Components;

namespace ShopDays.Cli.Bench.Pages;

/// <summary>A part or a board, in words and drawings.</summary>
public sealed record PieceSheet
{
    /// <summary>What it is called.</summary>
    public required string Title { get; init; }

    /// <summary>Its job.</summary>
    public required Link Job { get; init; }

    /// <summary>Its sizes, timber, faces and how it will move, each a line.</summary>
    public required IReadOnlyList<string> About { get; init; }

    /// <summary>The work that is next on it; empty for none.</summary>
    public required string Next { get; init; }

    /// <summary>The boards that it lies in, drawn, with the cuts that are still to be made.</summary>
    public required IReadOnlyList<BoardSheet> Boards { get; init; }

    /// <summary>All work on it, with how far it has come.</summary>
    public required TextTable Work { get; init; }

    /// <summary>What else is cut from the same board, or the boards it comes from.</summary>
    public required IReadOnlyList<Link> Others { get; init; }

    /// <summary>The cautions that go with its work.</summary>
    public required IReadOnlyList<string> Cautions { get; init; }
}

/// <summary>A board, drawn.</summary>
/// <param name="Name">What it is called, with its sizes.</param>
/// <param name="Drawing">The drawing, a whole SVG element.</param>
/// <param name="NextCut">The next cut on it, with its measures; empty when it is sawn.</param>
/// <param name="Cuts">All its cuts in their order.</param>
public sealed record BoardSheet(string Name, MarkupString Drawing, string NextCut, TextTable Cuts);
