using NodaTime;
using ShopDays.Cli.Paper.Setting;
using ShopDays.Cli.Phrases;
using ShopDays.Measures;
using ShopDays.Work;

namespace ShopDays.Cli.Paper.Overview;

/// <summary>The first page: the piece, when it can be promised, and what it takes.</summary>
internal static class SummaryPage
{
    // Size of the text, height of the bars in the picture of the finish, and how many tasks and sessions are named.
    private static readonly (double Size, double Bars, int Named)[] Ways = [(10.5, 58, 5), (10, 44, 5), (9, 34, 5), (8.5, 26, 4), (8.5, 22, 3), (8, 20, 2), (8, 18, 1)];

    /// <summary>The blocks: on one page where they can, in the largest letters that let them.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="room">The space of a page.</param>
    public static IReadOnlyList<Block> Of(PlanPaper plan, Room room) =>
        Densities.First(Ways, way => [.. Set(plan, room, TypeScale.Body with { Size = way.Size }, way.Bars, way.Named)], room) ?? [.. Set(plan, room, TypeScale.Body, Ways[0].Bars, Ways[0].Named)];

    private static IEnumerable<Block> Set(PlanPaper plan, Room room, TextStyle body, double bars, int named)
    {
        var wording = new Wording(plan);
        yield return new Heading(plan.Job.Name, TypeScale.Title) { BookmarkLevel = 0 };
        yield return new Paragraph($"{plan.Shop.Name}. {plan.Rest?.Said ?? $"Work begins on {DateWords.Long(plan.Job.Start)}."}", body);
        yield return new SideBySide(
            16,
            Date("As likely as not", "half of the trials are done by then", plan.Forecast.P50, big: false),
            Date("A date that can be promised", "four trials in five are done by then", plan.Forecast.P80, big: true),
            Date("With bad luck", "nine trials in ten are done by then", plan.Forecast.P90, big: false));
        if (plan.Job.Due is { } due)
        {
            yield return new Paragraph(DueOf(due, plan), TypeScale.Bench.In(Weight.SemiBold));
        }

        if (plan.Forecast.Finishes.Count > 0)
        {
            yield return FinishPicture.Of(plan, bars, room.Width);
        }

        if (plan.Rest is { Moved: { } moved } rest)
        {
            yield return new NoteBox(MovedRow.Whole(moved), [.. rest.Why.Select(row => $"{Wording.Capital(row.Days)}: {row.What}.")], body);
        }

        yield return new SideBySide(
            22,
            Facts("Time", [.. Times(plan)], body),
            Facts("Timber", [.. Timber(plan, wording)], body));
        yield return new Paragraph(PlanWords.OfBound(plan.Plan), body);
        if (VisitWords.InASentence(plan.Plan.Visits) is { } visits)
        {
            yield return new Paragraph(Wording.Capital(visits), body);
        }

        if (plan.Faces is { } faces)
        {
            yield return new Paragraph(faces, body);
        }

        if (plan.SpoilingNotes.Count > 0)
        {
            yield return new Paragraph(string.Join(' ', plan.SpoilingNotes), body);
        }

        Block[] asides = [.. Asides(plan, body, named)];
        if (asides.Length > 0)
        {
            yield return new SideBySide(22, asides);
        }

        yield return new Paragraph(SmallPrint(plan), TypeScale.Small with { Size = Math.Min(TypeScale.Small.Size, body.Size - 0.5) });
        string[] remarks =
        [
            .. RemarkGroups.Said(plan.Remarks).Select(Wording.Capital),
            .. plan.Layout.NotHonoured.Select(WishWords.Of),
            .. AwaitedWords.OfLate(plan.Plan.Waits),
            .. (string[])(PaperNames.Remark(PaperNames.Of(plan)) is { } unprintable ? [unprintable] : []),
        ];
        if (remarks.Length > 0)
        {
            yield return new NoteBox("Before you begin", remarks, body) { Caution = true };
        }

        if (plan.UnusedHours.Count > 0)
        {
            yield return new NoteBox("Hours that cannot be used", [.. plan.UnusedHours], body);
        }
    }

    private static IEnumerable<Block> Asides(PlanPaper plan, TextStyle body, int named)
    {
        if (plan.Forecast.Deciding.Count > 0)
        {
            yield return new Together(
                new Heading("What decides the finish", TypeScale.Subheading),
                new Bullets([.. plan.Forecast.Deciding.Take(named).Select(one => $"{one.Task.Name}, {(one.Awaited is { } awaited ? $"{Measures.WaitText.Write(awaited.Wait.Low)} to {Measures.WaitText.Write(awaited.Wait.High)}" : Wording.Span(plan.TaskTimes[one.Task.Id]))}")], body));
        }

        if (plan.Forecast.SessionsAtRisk.Count > 0)
        {
            yield return new Together(
                new Heading(PlanWords.AtRiskInShort, TypeScale.Subheading),
                new Bullets([.. plan.Forecast.SessionsAtRisk.Take(named).Select(risk => PlanWords.OfRiskInShort(risk, plan.Shop.Workers.Count > 1))], body));
        }
    }

    private static IEnumerable<(string Name, string Figure)> Times(PlanPaper plan)
    {
        yield return ("Days in the shop", CountWords.Number(plan.Plan.ShopDays));
        yield return ("Sessions", CountWords.Number(plan.Plan.Sessions.Count));
        yield return (plan.Rest is null ? "Hands-on, as likely as not" : "Hands-on to come, as likely as not", Wording.Hours(plan.Estimate.HandsOn.P50));
        yield return ("Nine times in ten within", Wording.Hours(plan.Estimate.HandsOn.P90));
        yield return ("One time in ten within", Wording.Hours(plan.Estimate.HandsOn.P10));
        yield return ("Heavy work of it", Wording.Hours(plan.Estimate.Heavy.P50));
    }

    private static IEnumerable<(string Name, string Figure)> Timber(PlanPaper plan, Wording wording)
    {
        yield return (plan.Rest is null ? "Boards cut" : "Boards still to cut", $"{CountWords.Number(plan.ToCut.Count)} of {CountWords.Number(plan.Job.Boards.Count)}");
        if (plan.ToCut.Count == 0)
        {
            yield break;
        }

        yield return ("Of their area in parts", Wording.Share(plan.Layout.Yield));
        yield return ("The most that could be", Wording.Share(plan.Layout.BestPossibleYield));
        yield return ("Ripping and straightening", wording.Sawing(plan.Layout.RipLength));
        yield return ("Crosscutting", wording.Sawing(plan.Layout.CrosscutLength));
        var heaviest = plan.ToCut.Select(board => board.Board).MaxBy(board => board.Weight);
        if (heaviest is not null)
        {
            yield return ($"Heaviest board, {heaviest.Name}", wording.Weight(heaviest.Weight));
        }
    }

    private static Drawing Date(string title, string meaning, ZonedDateTime? date, bool big) => new(78, Meaning.Words, (page, box) =>
    {
        page.Line(box.X, box.Y + 3, box.Right, box.Y + 3, big ? new Pen(3) : Pen.Strong);
        page.Text(title, box.X, box.Y + 18, TypeScale.Label.Fitted(title, box.Width, 6));
        var words = date is { } at ? DateWords.Month(at.Date) : "no date";
        page.Text(words, box.X, box.Y + 47, (TypeScale.BigFigure with { Size = big ? 30 : 24, Weight = big ? Weight.Bold : Weight.SemiBold }).Fitted(words, box.Width, 12));
        var year = date is { } of ? $"{of.Date.DayOfWeek}, {CountWords.Number(of.Date.Year)}" : "not within the years looked at";
        page.Text(year, box.X, box.Y + 60, TypeScale.Small.Fitted(year, box.Width, 6));
        page.Text(meaning, box.X, box.Y + 72, (TypeScale.Small with { Size = 8 }).Fitted(meaning, box.Width, 6));
    });

    private static string DueOf(LocalDate due, PlanPaper plan)
    {
        if (PlanWords.CannotKeep(plan.Plan, due))
        {
            return $"Due {DateWords.Long(due)}: cannot be kept, no plan ends before {DateWords.Short(plan.Plan.LowerBound.At.Date)}.";
        }

        return plan.Forecast.ChanceOfDue is { } share
            ? $"Due {DateWords.Long(due)}: done by then in {ChanceWords.Of(share)} of the trials."
            : $"Due {DateWords.Long(due)}.";
    }

    private static Table Facts(string title, IReadOnlyList<(string Name, string Figure)> facts, TextStyle body) => new(
        [Column.Shared(title), Column.Fixed("", 76, Align.Right)],
        [.. facts.Select(fact => Row.Of(fact.Name, new TextCell(fact.Figure) { Style = body.In(Weight.SemiBold) }))],
        body) { Padding = 0.22 * body.Size };

    private static string SmallPrint(PlanPaper plan)
    {
        var made = plan.Made.InZone(plan.Plan.Finish.Zone);
        var unfinished = plan.Forecast.Unfinished == 0 ? "" : $" In {CountWords.Number(plan.Forecast.Unfinished)} of them the job is still not done after five years; no plan looks further ahead.";
        var overruns = plan.Forecast.Overruns == 0 ? "" : $" In {ChanceWords.Of((double)plan.Forecast.Overruns / plan.Forecast.Trials)} of them some work ran over its session and went on in the next.";
        return $"Made {DateWords.Of(made.Date)}, {DateWords.At(made)}. Times from {CountWords.Of(plan.Estimate.Draws, "draw")}, seed {CountWords.Number(plan.Estimate.Seed)}; "
            + $"dates from {CountWords.Of(plan.Forecast.Trials, "trial")} of the whole plan, seed {CountWords.Number(plan.Forecast.Seed)}.{unfinished}{overruns} "
            + $"The same files and seed give the same plan. {WaitText.Write(plan.Estimate.Waits)} of waits added up, many of them side by side.";
    }
}
