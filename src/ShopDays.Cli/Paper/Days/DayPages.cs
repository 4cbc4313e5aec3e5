using NodaTime;
using ShopDays.Cli.Paper.Setting;
using ShopDays.Cli.Phrases;
using ShopDays.Plans;

namespace ShopDays.Cli.Paper.Days;

/// <summary>A day in the shop: all its sessions, whoever's they are.</summary>
/// <param name="Date">The date.</param>
/// <param name="Number">Which of the plan's shop days it is, from 1.</param>
/// <param name="Sessions">Its sessions with work, in order, the maker's before a helper's.</param>
internal sealed record PaperDay(LocalDate Date, int Number, IReadOnlyList<PlannedSession> Sessions)
{
    /// <summary>The days on which there is something to do, in order.</summary>
    public static IReadOnlyList<PaperDay> Of(Plan plan) =>
    [
        .. plan.Sessions
            .Where(session => session.Work.Count > 0)
            .GroupBy(session => session.Session.Date)
            .OrderBy(day => day.Key)
            .Select((day, order) => new PaperDay(day.Key, order + 1, [.. day.OrderBy(one => one.Session.Start.ToInstant())])),
    ];
}

/// <summary>The sheet for one day, to be pinned above the bench and written on.</summary>
internal static class DayPages
{
    // The roomiest first: a day takes the first that lets it stand on one side of a sheet.
    private static readonly Way[] Ways = [new(12.5, 10, 2.75, 2), new(11.5, 9, 2.5, 2), new(11, 9, 1.4, 2), new(10.5, 9, 1.4, 2), new(10.5, 8.5, 0.7, 1), new(10.5, 8.5, 0.4, 1) { IsClose = true }];

    /// <summary>The blocks of one day.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="days">All days of the plan.</param>
    /// <param name="day">The day.</param>
    /// <param name="room">The space between the margins of a page.</param>
    public static IReadOnlyList<Block> Of(PlanPaper plan, IReadOnlyList<PaperDay> days, PaperDay day, Room room) =>
        Densities.First(Ways.SelectMany(way => (Way[])[way, way with { IsInShort = true }]), way => [.. At(plan, days, day, way, room)], room)
            // More than one side of a sheet holds even so: then the letters may as well be larger again.
            ?? [.. At(plan, days, day, Ways[1], room)];

    private static IEnumerable<Block> At(PlanPaper plan, IReadOnlyList<PaperDay> days, PaperDay day, Way way, Room room)
    {
        var style = TypeScale.Bench with { Size = way.Size };
        var aside = TypeScale.Body with { Size = way.Aside };
        yield return new Drawing(26, Meaning.Heading(1), (page, box) =>
        {
            var count = $"Shop day {CountWords.Number(day.Number)} of {CountWords.Number(days.Count)}{(plan.Rest is null ? "" : " to come")}";
            page.Text(DateWords.Long(day.Date), box.X, box.Y + 18, TypeScale.Title with { Size = 20 });
            page.Text(count, box.Right, box.Y + 18, TypeScale.Body, Align.Right);
        }) { Bookmark = (DateWords.Long(day.Date), 1) };
        if (day.Number == 1 && plan.Rest?.Stopped is { } stopped)
        {
            yield return new NoteBox($"{StoppedWords.Lead}, {StoppedWords.About(stopped, plan.Marks)}", [LogPhrases.Plain(stopped.Text)], style) { Padding = 2.5 };
        }

        if (DayWaits.Of(plan, day, aside, way.IsInShort ? room.Width : null) is { } waits)
        {
            yield return waits;
        }

        foreach (var session in day.Sessions)
        {
            yield return new Heading(SessionTable.HoursOf(session, nameWorker: plan.Shop.Workers.Count > 1), TypeScale.Subheading with { Size = Math.Min(13, style.Size + 1) }) { Above = 4 };
            yield return SessionTable.Of(plan, session, style, way.Padding, named: !way.IsClose || session == day.Sessions[0]);
        }

        yield return WhereStopped(way.Lines, aside);
        if (NextOf(days, day) is { } next)
        {
            yield return new Paragraph(way.IsClose ? aside.Shortened(next, room.Width) : next, aside);
        }

        if (DayCautions(plan, day, room) is { } cautions)
        {
            yield return cautions;
        }
    }

    private static Together WhereStopped(int lines, TextStyle aside) => new(
        new Paragraph("Where I stopped, and what comes first next time", aside.In(Weight.SemiBold)) { After = 0 },
        new Drawing(lines * 22, Meaning.None, (page, box) =>
        {
            for (var line = 1; line <= lines; line++)
            {
                page.Line(box.X, box.Y + (22 * line) - 3, box.Right, box.Y + (22 * line) - 3, new Pen(0.6, 0.5, Dash.Dotted));
            }
        }),
        new Gap(5));

    private static string? NextOf(IReadOnlyList<PaperDay> days, PaperDay day)
    {
        if (day.Number == days.Count)
        {
            return "This is the last day of the plan.";
        }

        var next = days[day.Number];
        string[] work = [.. next.Sessions.SelectMany(session => session.Work).Select(work => work.Task.Name).Distinct()];
        return $"Next: {DateWords.Long(next.Date)}, {DateWords.At(next.Sessions[0].Session.Start)}: {CountWords.Names(work, 3)}.";
    }

    private static SideBySide? DayCautions(PlanPaper plan, PaperDay day, Room room)
    {
        var kinds = day.Sessions.SelectMany(session => session.Work).SelectMany(work => work.Task.Cautions).ToHashSet(StringComparer.Ordinal);
        Block[] notes =
        [
            .. plan.Cautions
                .Where(caution => kinds.Contains(caution.Kind))
                .Select(caution => new NoteBox("", [$"{Wording.Capital(caution.Kind)}: {caution.Text}"], TypeScale.Body with { Size = 8.5 }) { Caution = true, Padding = 1.5 }),
        ];
        return notes.Length == 0 ? null : SideBySide.Balanced(14, notes, room);
    }

    // Sizes of the rows and of what stands about them, the white above and below each row, in points, and the lines for notes.
    private readonly record struct Way(double Size, double Aside, double Padding, int Lines)
    {
        /// <summary>Whether each wait has one line, and the rest of it stands on the list of waits.</summary>
        public bool IsInShort { get; init; }

        /// <summary>Whether columns are named once, and what comes next has one line.</summary>
        public bool IsClose { get; init; }
    }
}
