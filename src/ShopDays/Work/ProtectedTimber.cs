using ShopDays.Parts;

namespace ShopDays.Work;

/// <summary>Timbers whose trade is watched: their papers stay with the piece.</summary>
public static class ProtectedTimber
{
    // Genera with timbers in Appendix II of CITES, whole or in part; the lists change, so the customs authority has the last word (from memory).
    private static readonly string[] Genera = ["Swietenia", "Cedrela", "Khaya", "Dalbergia", "Pericopsis", "Guibourtia", "Afzelia", "Handroanthus", "Dipteryx"];

    /// <summary>Whether a timber's genus is on the list.</summary>
    public static bool Holds(Species species) => Genera.Contains(species.BotanicalName.Split(' ')[0], StringComparer.OrdinalIgnoreCase);
}
