using System.Diagnostics;
using NodaTime;
using ShopDays.Parts;
using ShopDays.Work;

namespace ShopDays.Cli.Phrases;

/// <summary>How dry boards are, in words.</summary>
internal static class DrynessWords
{
    /// <summary>The verdict in a word or three: ready, ready about a date, or that it has to be measured.</summary>
    /// <param name="one">What is known of a board.</param>
    /// <param name="start">When the work begins.</param>
    public static string Verdict(Dryness one, LocalDate start) => one switch
    {
        { IsKnown: false } => "measure it",
        { Likely: null } => "not ready within ten years",
        _ when one.IsReadyOn(start) => "ready",
        _ => $"ready about {DateWords.Plain(one.Likely!.Value)}",
    };

    /// <summary>The verdicts on some boards, those with the same together: <c>A1 to A3: ready</c>.</summary>
    public static IReadOnlyList<string> Verdicts(Job job, IEnumerable<Board> boards, WaitTable waits) =>
    [
        .. boards
            .Select(board => Dryness.Of(board, job.Air, job.Start, waits))
            .GroupBy(one => Verdict(one, job.Start))
            .Select(alike => $"{BoardMarks.Of(alike.Select(one => one.Board), job.Boards)}: {alike.Key}"),
    ];

    /// <summary>Why.</summary>
    public static string Reason(Dryness one, YearAir? air, LocalDate start) => one.Basis switch
    {
        DrynessBasis.None => "no reading, no weights and no date of stacking; read a meter, or weigh it twice a week apart",
        DrynessBasis.PoorWeighings => "its weights do not say; weigh it again a week or more after the first",
        _ => $"{Known(one)}; {(air is null ? $"the shop file has no climate, so air-dry is taken for {one.Air}" : $"this air brings it to {one.Air}")}{Range(one, start)}",
    };

    private static string Known(Dryness one) => (one.Basis, one.On) switch
    {
        (DrynessBasis.Reading, { } on) => $"{one.Moisture} read on {DateWords.Plain(on)}{(one.IsOwnPace ? ", at the pace of its last two readings" : "")}",
        (DrynessBasis.Reading, null) => $"{one.Moisture} read, no date with it",
        (DrynessBasis.Weighings, { } on) => $"about {one.Moisture} by its weights up to {DateWords.Plain(on)}",
        (DrynessBasis.Stacked, _) => $"stacked since {DateWords.Plain(one.Board.Drying.Since!.Value)}, {(one.Moisture is { } moisture ? $"by then about {moisture}" : "by then still above 20%")}; a reading would be surer",
        _ => throw new UnreachableException(),
    };

    private static string Range(Dryness one, LocalDate start) => one.IsReadyOn(start) || one.Likely is null
        ? ""
        : $", between {DateWords.Plain(one.Earliest!.Value)} and {(one.Latest is { } latest ? DateWords.Plain(latest) : "much later")}";
}
