using System.Globalization;

namespace ShopDays.Work;

/// <summary>What a run of pieces is called on a day sheet.</summary>
internal static class PieceNames
{
    /// <summary>
    /// The name of the part alone when the run is all of it; its numbers otherwise, as <c>leg 1-3, 5</c>; strips by how
    /// many.
    /// </summary>
    public static string Of(IReadOnlyList<Piece> run, int all)
    {
        var name = run[0].Of;
        if (run[0].Strip > 0)
        {
            return run.Count == all
                ? string.Create(CultureInfo.InvariantCulture, $"{name}, {(all == 2 ? "both" : $"all {all}")} strips")
                : string.Create(CultureInfo.InvariantCulture, $"{name}, {run.Count} of {all} strips, from {run[0].Number}.{run[0].Strip}");
        }

        return run.Count == all ? name : name + " " + Numbers([.. run.Select(piece => piece.Number)]);
    }

    private static string Numbers(List<int> numbers)
    {
        var spans = new List<string>();
        for (var from = 0; from < numbers.Count;)
        {
            var to = from;
            while (to + 1 < numbers.Count && numbers[to + 1] == numbers[to] + 1)
            {
                to++;
            }

            spans.Add(to == from
                ? numbers[from].ToString(CultureInfo.InvariantCulture)
                : string.Create(CultureInfo.InvariantCulture, $"{numbers[from]}-{numbers[to]}"));
            from = to + 1;
        }

        return string.Join(", ", spans);
    }
}
