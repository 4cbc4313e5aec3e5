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
    /// <summary>Sizes of the rows and lines for notes, the roomiest first: a day takes the first that lets it stand on one side of a sheet.</summary>
    private static readonly (double Size, int Lines)[] Densities = [(TypeScale.Bench.Size, 3), (TypeScale.Bench.Size, 2), (11.5, 2), (10.5, 2)];

    /// <summary>The blocks of one day.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="days">All days of the plan.</param>
    /// <param name="day">The day.</param>
    /// <param name="room">The space between the margins of a page.</param>
    public static IReadOnlyList<Block> Of(PlanPaper plan, IReadOnlyList<PaperDay> days, PaperDay day, Room room)
    {
        List<Block> blocks = [];
        foreach (var (size, lines) in Densities)
        {
            blocks = [.. At(plan, days, day, TypeScale.Bench with { Size = size }, lines)];
            if (blocks.Sum(block => block.Pieces(room).Sum(piece => piece.Height)) <= room.Height)
            {
                return blocks;
            }
        }

        // More than one side of a sheet holds even so: then both may as well be read with ease.
        return [.. At(plan, days, day, TypeScale.Bench, 3)];
    }

    private static IEnumerable<Block> At(PlanPaper plan, IReadOnlyList<PaperDay> days, PaperDay day, TextStyle style, int lines)
    {
        var aside = TypeScale.Body with { Size = Math.Min(TypeScale.Body.Size, style.Size - 1) };
        yield return new Heading(DateWords.Long(day.Date), TypeScale.Title) { BookmarkLevel = 1 };
        yield return new Paragraph($"Shop day {CountWords.Number(day.Number)} of {CountWords.Number(days.Count)}", aside) { After = 2 };
        foreach (var wait in DayWaits.Of(plan, day, aside))
        {
            yield return wait;
        }

        foreach (var session in day.Sessions)
        {
            yield return new Heading(SessionTable.HoursOf(session, nameWorker: plan.Shop.Workers.Count > 1), TypeScale.Subheading with { Size = 13 });
            yield return SessionTable.Of(plan, session, style);
        }

        yield return WhereStopped(lines, aside);
        if (NextOf(days, day) is { } next)
        {
            yield return new Paragraph(next, aside);
        }

        if (DayCautions(plan, day, aside) is { } cautions)
        {
            yield return cautions;
        }
    }

    private static Together WhereStopped(int lines, TextStyle aside) => new(
        new Paragraph("Where I stopped, and what comes first next time", aside.In(Weight.SemiBold)) { After = 0 },
        new Drawing(lines * 24, (page, box) =>
        {
            for (var line = 1; line <= lines; line++)
            {
                page.Line(box.X, box.Y + (24 * line) - 4, box.Right, box.Y + (24 * line) - 4, new Pen(0.6, 0.5, Dash.Dotted));
            }
        }),
        new Gap(8));

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

    private static NoteBox? DayCautions(PlanPaper plan, PaperDay day, TextStyle aside)
    {
        var kinds = day.Sessions.SelectMany(session => session.Work).SelectMany(work => work.Task.Cautions).ToHashSet(StringComparer.Ordinal);
        string[] lines = [.. plan.Cautions.Where(caution => kinds.Contains(caution.Kind)).Select(caution => $"{Wording.Capital(caution.Kind)}: {caution.Text}")];
        return lines.Length == 0 ? null : new NoteBox("With today's work", lines, aside with { Size = aside.Size - 1 }) { Caution = true };
    }
}
