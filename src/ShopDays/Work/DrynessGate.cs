using NodaTime;
using NodaTime.Text;
using ShopDays.Measures;
using ShopDays.Parts;

namespace ShopDays.Work;

/// <summary>Keeps what comes of boards that are too wet from the planes until they are ready, and warns of what is not known.</summary>
internal sealed class DrynessGate(Draft draft)
{
    /// <summary>
    /// Timber that its air keeps so many points above the room it will stand in is not brought to size yet: the same that
    /// it may differ from the room when parts are chosen (common practice, no source).
    /// </summary>
    private const double FarFromHome = 3;

    /// <summary>Where the slowest is beyond what is looked at: as the slowest course stands to the likely one.</summary>
    private const double SlowAgainstLikely = 3;

    private static readonly LocalDatePattern Day = LocalDatePattern.CreateWithInvariantCulture("d MMM uuuu");

    private readonly Dictionary<string, Dryness> known = new(StringComparer.Ordinal);
    private readonly SortedDictionary<LocalDate, List<int>> held = [];

    /// <summary>The date before which no piece of a board is planed; null when it is ready, or nothing is known of it.</summary>
    public LocalDate? ReadyFrom(Board board) => Of(board) is { IsKnown: true } one && !one.IsReadyOn(draft.Job.Start) ? one.Likely : null;

    /// <summary>Whether anything is known of a board's moisture.</summary>
    public bool IsKnown(Board board) => Of(board).IsKnown;

    /// <summary>Whether a board is measured, and at rest in the shop's air when the work begins.</summary>
    public bool IsAtRest(Board board) => Of(board).IsAtRestOn(draft.Job.Start, draft.Job.Air, draft.Waits);

    /// <summary>Holds tasks back until a date; null holds none.</summary>
    public void Hold(LocalDate? until, IEnumerable<int> tasks)
    {
        if (until is { } date)
        {
            held.TryAdd(date, []);
            held[date].AddRange(tasks);
        }
    }

    /// <summary>Writes down the waits, and what is to be said of the boards.</summary>
    public void Close()
    {
        foreach (var (until, tasks) in held)
        {
            var those = known.Values.Where(one => ReadyFrom(one.Board) == until).ToList();
            var boards = NamesOf(those);
            draft.Awaited.Add(new()
            {
                Decision = new() { Name = $"{boards} to dry: too wet to be planed", IsDrying = true, Asked = those.Min(LastKnown), Wait = GuessOf(those, until), Before = [] },
                Holds = tasks,
            });
        }

        Warn();
    }

    /// <summary>How long from when they were last known boards dry that are likely to be ready on a date: to the earliest and the latest of them.</summary>
    private WaitGuess GuessOf(List<Dryness> those, LocalDate until)
    {
        var asked = those.Min(LastKnown);
        var likely = Days(until);
        return new(
            Days(those.Min(one => one.Earliest!.Value)),
            likely,
            those.TrueForAll(one => one.Latest is not null) ? Days(those.Max(one => one.Latest!.Value)) : likely * SlowAgainstLikely);

        Duration Days(LocalDate date) => Duration.FromDays(Math.Max(1, Period.DaysBetween(asked, date)));
    }

    /// <summary>The date from which the course of a board is reckoned.</summary>
    private LocalDate LastKnown(Dryness one) => one.Basis == DrynessBasis.Stacked ? one.Board.Drying.Since!.Value : one.On ?? draft.Job.Start;

    private Dryness Of(Board board)
    {
        if (!known.TryGetValue(board.Name, out var one))
        {
            known[board.Name] = one = Dryness.Of(board, draft.Job.Air, draft.Job.Start, draft.Waits);
        }

        return one;
    }

    private void Warn()
    {
        foreach (var wet in known.Values.Where(one => ReadyFrom(one.Board) is not null).GroupBy(one => (one.Earliest, one.Likely, one.Latest)))
        {
            var about = NamesOf(wet);
            draft.Remarks.Add(new(
                RemarkKind.Dryness,
                about,
                $"too wet yet for final sizes: {about}, planed from about {Day.Format(wet.Key.Likely!.Value)} ({Day.Format(wet.Key.Earliest!.Value)} to {(wet.Key.Latest is { } latest ? Day.Format(latest) : "much later")})",
                "measure again before then; each new reading moves that date"));
        }

        var unknown = known.Values.Where(one => !one.IsKnown).ToList();
        if (unknown.Count > 0)
        {
            var about = NamesOf(unknown);
            draft.Remarks.Add(new(
                RemarkKind.Dryness,
                about,
                $"how dry is not known: {about}",
                $"read a meter, or weigh {(unknown.Count == 1 ? "it" : "each")} twice a week apart, before anything of it is planed (the job starts on {Day.Format(draft.Job.Start)}); planed wet it will warp and shrink"));
        }

        var home = draft.Job.Home;
        var damp = known.Values.Where(one => draft.Job.Air is not null && one.Air.Percent > home.Dampest.Percent + FarFromHome).ToList();
        if (damp.Count > 0)
        {
            var air = MoistureContent.FromPercent(damp.Max(one => one.Air.Percent));
            draft.Remarks.Add(new(
                RemarkKind.Dryness,
                NamesOf(damp),
                FormattableString.Invariant($"the shop's air brings timber to {air}, and where the piece will stand it has {home.Driest} to {home.Dampest}"),
                "let the rough parts lie where it will stand, or in a room like it, before they are brought to size; or leave room for all that it will shrink"));
        }
    }

    private string NamesOf(IEnumerable<Dryness> those) => BoardMarks.Of(those.Select(one => one.Board), draft.Job.Boards);
}
