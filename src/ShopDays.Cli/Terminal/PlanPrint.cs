using NodaTime;
using ShopDays.Cli.Phrases;
using ShopDays.Plans;
using ShopDays.Work;
using Spectre.Console;

namespace ShopDays.Cli.Terminal;

/// <summary>A plan for the eyes: the dates, then day by day what is done, the waits and the cautions.</summary>
internal static class PlanPrint
{
    /// <summary>Prints it.</summary>
    public static void Print(Screen screen, ToldPlan told)
    {
        PrintDates(screen, told);
        PrintMoved(screen, told.Rest);
        if (told.Kept is { } kept)
        {
            screen.Wrapped(kept.In(told.Read.Shop.Place.Zone));
        }

        TimesPrint.Print(screen, told.Behind);
        foreach (var note in told.OtherNotes)
        {
            screen.Wrapped(note);
        }

        PrintUnused(screen, told.UnusedHours);
        RemarkPrint.Print(screen, told.Remarks);
        PrintVisits(screen, told.Answer.Plan.Visits);
        PrintDays(screen, told);
        PrintWaits(screen, told.Answer.Plan);
        PrintCautions(screen, told.Cautions);
    }

    /// <summary>Prints the hours that give no session; nothing when all can be used.</summary>
    public static void PrintUnused(Screen screen, IReadOnlyList<string> hours)
    {
        if (hours.Count == 0)
        {
            return;
        }

        screen.Out.WriteLine();
        screen.Out.WriteLine("Hours that cannot be used:");
        foreach (var one in hours)
        {
            screen.Wrapped("- " + one, indent: 2);
        }
    }

    /// <summary>Prints why there is no plan.</summary>
    public static void Print(Screen screen, string job, PlanAnswer.CannotBePlanned answer)
    {
        screen.Error.WriteLine($"{job} cannot be planned:");
        foreach (var line in ObstacleWords.Lines(answer.Reasons))
        {
            screen.Wrapped(screen.Error, "- " + line, indent: 2);
        }
    }

    private static void PrintDates(Screen screen, ToldPlan told)
    {
        var (plan, forecast, due) = (told.Answer.Plan, told.Answer.Forecast, told.Due);
        screen.Out.WriteLine(told.Read.Job.Name);
        if (told.Rest is { } rest)
        {
            screen.Wrapped(rest.Said);
        }

        screen.Out.WriteLine();
        var table = new Table().Border(TableBorder.None).HideHeaders().AddColumn("").AddColumn("");
        table.AddTexts("a date to promise (four in five)", Date(forecast.P80));
        table.AddTexts("as likely as not", Date(forecast.P50));
        table.AddTexts("with bad luck (nine in ten)", Date(forecast.P90));
        table.AddTexts("this plan, if all goes as expected", DateWords.Of(plan.Finish));
        table.AddTexts("no plan could end before", DateWords.Of(plan.LowerBound.At));
        if (due is { } date && forecast.ChanceOfDue is { } chance)
        {
            table.AddTexts("due", $"{DateWords.Of(date)}: {(PlanWords.CannotKeep(plan, due) ? "cannot be kept" : $"a chance of {ChanceWords.Of(chance)}")}");
        }

        screen.Console.Write(table);
        foreach (var note in told.DateNotes)
        {
            screen.Wrapped(note);
        }

        screen.Wrapped($"{CountWords.Of(plan.ShopDays, "shop day")} in {CountWords.Of(plan.Sessions.Count, "session")}. {PlanWords.OfBound(plan)}");
        screen.Wrapped(PlanWords.OfSearch(plan, due, told.Budget));
        // Fewer than one in two hundred would be told as none in a hundred.
        if (200 * forecast.Overruns >= forecast.Trials)
        {
            screen.Wrapped($"In {ChanceWords.Of((double)forecast.Overruns / forecast.Trials)} of the {CountWords.Of(forecast.Trials, "drawn course")} some work runs over its session and goes on in the next.");
        }

        if (forecast.Unfinished > 0)
        {
            screen.Wrapped($"In {CountWords.Number(forecast.Unfinished)} of the {CountWords.Of(forecast.Trials, "drawn course")} the job is still not done after five years; no plan looks further ahead.");
        }

        if (forecast.Deciding.Count > 0)
        {
            screen.Wrapped("The finish hangs most on: " + string.Join("; ", forecast.Deciding.Take(3).Select(one => one.Task.Name)) + ".");
        }

        foreach (var sentence in told.SpoilingNotes)
        {
            screen.Wrapped(sentence);
        }

        PrintForecast(screen, told);
    }

    private static void PrintForecast(Screen screen, ToldPlan told)
    {
        var forecast = told.Answer.Forecast;
        if (FinishBar.Of(forecast, told.Due, told.Read.Shop.Place.Zone, FinishSketch.Most) is { Count: > 0 } bars)
        {
            screen.Out.WriteLine();
            screen.Out.WriteLine(FinishSketch.Title(bars, forecast.Trials));
            foreach (var line in FinishSketch.Lines(bars, screen.Width))
            {
                screen.Out.WriteLine(line);
            }
        }

        PrintAtRisk(screen, [.. forecast.SessionsAtRisk.Select(risk => PlanWords.OfRisk(risk, told.Read.Shop.Workers.Count > 1))]);
    }

    /// <summary>Prints the sessions in which a plan slips most easily, and a line of white; that alone where there are none.</summary>
    public static void PrintAtRisk(Screen screen, IReadOnlyList<string> sessions)
    {
        screen.Out.WriteLine();
        if (sessions.Count == 0)
        {
            return;
        }

        screen.Out.WriteLine(PlanWords.AtRisk);
        foreach (var session in sessions)
        {
            screen.Wrapped("- " + session, indent: 2);
        }

        screen.Out.WriteLine();
    }

    private static void PrintMoved(Screen screen, ToldRest? rest)
    {
        if (rest?.Moved is { } moved)
        {
            MovedPrint.Print(screen, moved, rest.Why);
            screen.Out.WriteLine();
        }
    }

    /// <summary>Prints on which days somebody else is needed, where there are any.</summary>
    public static void PrintVisits(Screen screen, IReadOnlyList<HelperVisit> visits)
    {
        if (visits.Count == 0)
        {
            return;
        }

        screen.Out.WriteLine();
        screen.Out.WriteLine(VisitWords.Title);
        foreach (var line in VisitWords.Lines(visits))
        {
            screen.Wrapped("- " + line, indent: 2);
        }
    }

    private static void PrintDays(Screen screen, ToldPlan told)
    {
        var stopped = told.Rest?.Stopped;
        foreach (var day in told.Answer.Plan.Sessions.GroupBy(session => session.Session.Date))
        {
            screen.Out.WriteLine();
            screen.Out.WriteLine(DateWords.Of(day.Key));
            if (stopped is not null)
            {
                screen.Hanging("  ", StoppedWords.Of(stopped, told.Marks));
                stopped = null;
            }

            foreach (var session in day)
            {
                screen.Out.WriteLine($"  {DateWords.At(session.Session.Start)}-{DateWords.At(session.Session.End)}  {session.Session.Worker}");
                foreach (var work in session.Work)
                {
                    var goesOn = work.IsLastPiece ? "" : work.IsFirstPiece ? " (begin)" : " (go on)";
                    screen.Hanging(FormattableString.Invariant($"    {DateWords.At(work.Start)} {work.HandsOn.Minutes,4:0} min  {told.Marks.Of(work.Task.Name),-4} "), work.Task.Name + goesOn + (work.Bouts is { } bouts ? ", " + BoutWords.Of(bouts) : ""));
                }
            }
        }
    }

    private static void PrintWaits(Screen screen, Plan plan)
    {
        if (plan.Waits.Count == 0)
        {
            return;
        }

        screen.Out.WriteLine();
        screen.Out.WriteLine("Waits");
        foreach (var wait in plan.Waits)
        {
            screen.Hanging("  ", $"{DateWords.Of(wait.Start)} to {DateWords.Of(wait.End)}{(wait.AfterWhat is { } after ? ", after " + after : "")}: {AwaitedWords.Reason(wait)}");
        }
    }

    private static void PrintCautions(Screen screen, IReadOnlyList<Caution> cautions)
    {
        screen.Out.WriteLine();
        screen.Out.WriteLine("Cautions for this work");
        foreach (var caution in cautions)
        {
            screen.Wrapped($"- {caution.Kind}: {caution.Text} ({caution.SaidBy})", indent: 2);
        }
    }

    private static string Date(ZonedDateTime? time) => time is { } known ? DateWords.Of(known.Date) : "not within the years looked at";
}
