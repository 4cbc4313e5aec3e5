using System.Diagnostics;
using ShopDays.Layouts;

namespace ShopDays.Cli.Phrases;

/// <summary>Says what a maker wished of the layout and does not get.</summary>
internal static class WishWords
{
    /// <summary>A whole sentence.</summary>
    public static string Of(UnmetWish wish) => wish switch
    {
        UnmetWish.NotInOneBoard => $"The parts matched as '{wish.Name}' are not in one board.",
        UnmetWish.NotInSequence => $"The parts matched as '{wish.Name}' are in one board, not in sequence.",
        UnmetWish.NotBestFace not => $"No room for {not.Name} {CountWords.Names([.. not.Numbers.Select(CountWords.Number)], 5)} in a board of better figure.",
        _ => throw new UnreachableException(),
    };
}
