using NodaTime;
using ShopDays.Cli.Paper.Setting;
using ShopDays.Cli.Phrases;
using ShopDays.Plans;

namespace ShopDays.Cli.Paper.Overview;

/// <summary>Some dates of a plan one below the other.</summary>
internal sealed class CalendarPicture
{
    private const double Names = 60;
    private const double Head = 16;
    private const double WidestLane = 22;

    private readonly PlanPaper plan;
    private readonly IReadOnlyList<LocalDate> dates;
    private readonly double row;
    private readonly int fromHour;
    private readonly int toHour;

    /// <summary>Prepares the picture.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="dates">Following dates, at least one.</param>
    /// <param name="row">Height of a date, in points.</param>
    public CalendarPicture(PlanPaper plan, IReadOnlyList<LocalDate> dates, double row)
    {
        (this.plan, this.dates, this.row) = (plan, dates, row);
        fromHour = plan.Plan.Sessions.Select(one => one.Session.Start.Hour).DefaultIfEmpty(8).Min();
        toHour = plan.Plan.Sessions.Select(one => one.Session.End).Select(end => end.Minute > 0 || end.Second > 0 ? end.Hour + 1 : end.Hour == 0 ? 24 : end.Hour).DefaultIfEmpty(18).Max();
    }

    /// <summary>Its height in all, in points.</summary>
    public double Height => Head + (dates.Count * row) + 2;

    /// <summary>What it shows, for who cannot see it; day sheets and the list of waits say all of it in words.</summary>
    public string Description
    {
        get
        {
            LocalDate[] worked = [.. plan.Plan.Sessions.Where(session => session.Work.Count > 0).Select(session => session.Session.Date).Where(dates.Contains).Distinct().Order()];
            LocalDate[] closed = [.. dates.Where(plan.Shop.Closed.Contains)];
            var waits = plan.Plan.Waits.Count(wait => wait.Start.Date <= dates[^1] && wait.End.Date >= dates[0]);
            return $"The dates from {DateWords.Long(dates[0])} to {DateWords.Long(dates[^1])}, one below the other. "
                + (worked.Length == 0 ? "No work on any of them." : $"Work on {CountWords.Of(worked.Length, "date")}: {string.Join(", ", worked.Select(DateWords.Short))}.")
                + (closed.Length == 0 ? "" : $" Closed: {string.Join(", ", closed.Select(DateWords.Short))}.")
                + (waits == 0 ? "" : $" {CountWords.Of(waits, "wait")} beside them, told in the list of waits.");
        }
    }

    /// <summary>Draws it from the upper left corner of a place.</summary>
    public void Draw(Surface page, Box place)
    {
        var lanes = WaitLanes.Of(plan.Plan.Waits);
        var count = lanes.Select(bar => bar.Lane + 1).DefaultIfEmpty(0).Max();
        var lane = Math.Min(WidestLane, place.Width * 0.38 / Math.Max(1, count));
        var waitsWidth = (lane * count) + 10;
        var hours = new Box(place.X + Names, place.Y + Head, place.Width - Names - waitsWidth, dates.Count * row);

        for (var order = 0; order < dates.Count; order++)
        {
            DrawDate(page, place, dates[order], place.Y + Head + (order * row));
        }

        DrawHours(page, hours);
        foreach (var session in plan.Plan.Sessions.Where(one => one.Session.Date >= dates[0] && one.Session.Date <= dates[^1]))
        {
            DrawSession(page, hours, session);
        }

        if (lanes.Count > 0)
        {
            page.Text("waits", hours.Right + 10, place.Y + 9, TypeScale.Label);
        }

        foreach (var bar in lanes)
        {
            DrawWait(page, hours, bar, hours.Right + 10 + (bar.Lane * lane), lane);
        }

        page.Line(place.X, hours.Bottom, place.Right, hours.Bottom, Pen.Fine);
    }

    private void DrawDate(Surface page, Box place, LocalDate date, double top)
    {
        var closed = plan.Shop.Closed.Contains(date);
        if (closed)
        {
            page.Rectangle(new Box(place.X, top, place.Width, row), null, Fill.Shade(0.88));
        }

        var weekBegins = date.DayOfWeek == IsoDayOfWeek.Monday;
        page.Line(place.X, top, place.Right, top, weekBegins ? Pen.Fine : new Pen(0.4, 0.8));
        var works = plan.Plan.Sessions.Any(session => session.Session.Date == date);
        var style = new TextStyle(Math.Min(9, row * 0.8), works ? Weight.SemiBold : Weight.Regular, works ? 0 : 0.35);
        page.Text(DateWords.Short(date), place.X + 2, top + (row / 2) + (style.CapHeight / 2), style);
        if (closed)
        {
            page.Text("closed", place.X + Names + 4, top + (row / 2) + (style.CapHeight / 2), style);
        }
    }

    private void DrawHours(Surface page, Box hours)
    {
        var span = toHour - fromHour;
        // A figure takes some 24 points.
        var step = Math.Max(1, (int)Math.Ceiling(24 * span / hours.Width));
        for (var hour = fromHour; hour <= toHour; hour += step)
        {
            var x = X(hours, hour);
            page.Line(x, hours.Y, x, hours.Bottom, new Pen(0.4, 0.8));
            page.Text(CountWords.Number(hour), x, hours.Y - 5, TypeScale.Label with { Size = 8 }, Align.Centre);
        }
    }

    private void DrawSession(Surface page, Box hours, PlannedSession session)
    {
        string[] workers = [.. plan.Shop.Workers.Select(worker => worker.Name)];
        var rows = Math.Max(1, workers.Length);
        var among = Math.Max(0, Array.IndexOf(workers, session.Session.Worker));
        var height = (row - 1.6) / rows;
        var top = hours.Y + (Period.DaysBetween(dates[0], session.Session.Date) * row) + 0.8 + (among * height);
        Box Bar(ZonedDateTime start, ZonedDateTime end)
        {
            var left = X(hours, HourOf(session.Session.Date, start));
            return new(left, top, Math.Max(0.5, X(hours, HourOf(session.Session.Date, end)) - left), height);
        }

        page.Rectangle(Bar(session.Session.Start, session.Session.End), null, Fill.Shade(1));
        // Pieces of one stage that follow each other are one bar.
        foreach (var run in Runs(session.Work))
        {
            page.Rectangle(Bar(run.Start, run.End), new Pen(0.5), StagePattern.Of(run.Stage));
        }

        page.Rectangle(Bar(session.Session.Start, session.Session.End), new Pen(0.9));
    }

    private static List<(Work.Stage Stage, ZonedDateTime Start, ZonedDateTime End)> Runs(IReadOnlyList<PlannedWork> work)
    {
        List<(Work.Stage Stage, ZonedDateTime Start, ZonedDateTime End)> runs = [];
        foreach (var piece in work.OrderBy(piece => piece.Start.ToInstant()))
        {
            if (runs.Count > 0 && runs[^1].Stage == piece.Task.Stage && (piece.Start - runs[^1].End).TotalMinutes < 10)
            {
                runs[^1] = runs[^1] with { End = piece.End };
            }
            else
            {
                runs.Add((piece.Task.Stage, piece.Start, piece.End));
            }
        }

        return runs;
    }

    private void DrawWait(Surface page, Box hours, WaitBar wait, double left, double lane)
    {
        var (start, end) = (Y(hours, wait.Start), Y(hours, wait.End));
        if (end <= hours.Y || start >= hours.Bottom)
        {
            return;
        }

        var bar = new Box(left + (lane * 0.15), Math.Max(start, hours.Y), lane * 0.7, 0);
        bar = bar with { Height = Math.Max(1.5, Math.Min(end, hours.Bottom) - bar.Y) };
        page.Rectangle(bar, new Pen(0.6), Fill.Hatched(Hatch.Falling, 3.5));
        var words = wait.Numbers;
        var style = new TextStyle(7.5, Weight.SemiBold).Fitted(words, (lane * 0.7) - 1.5, 4);
        // At the head of a long bar, across the middle of a short one.
        var top = bar.Height > style.Size + 4 ? bar.Y + 2 : bar.Middle.Y - (style.CapHeight / 2) - 1;
        page.Rectangle(new Box(bar.Middle.X - (style.WidthOf(words) / 2) - 0.8, top, style.WidthOf(words) + 1.6, style.CapHeight + 2), null, Fill.Shade(1));
        page.Text(words, bar.Middle.X, top + 1 + style.CapHeight, style, Align.Centre);
    }

    private double X(Box hours, double hour) => hours.X + ((hour - fromHour) / (toHour - fromHour) * hours.Width);

    private double Y(Box hours, ZonedDateTime time) =>
        hours.Y + ((Period.DaysBetween(dates[0], time.Date) + (time.TimeOfDay.TickOfDay / (double)NodaConstants.TicksPerDay)) * row);

    // A session that ends at midnight ends on the next date, at hour 24 of its own.
    private static double HourOf(LocalDate date, ZonedDateTime time) =>
        (Period.DaysBetween(date, time.Date) * 24) + (time.TimeOfDay.TickOfDay / (double)NodaConstants.TicksPerHour);
}
