using System.CommandLine;
using NodaTime;
using ShopDays.Cli.Calendars;
using ShopDays.Cli.Files;
using ShopDays.Cli.Paper;
using ShopDays.Cli.Phrases;
using ShopDays.Cli.Sheets;
using ShopDays.Prices;

namespace ShopDays.Cli.Commands;

/// <summary>The files that a plan is written to: paper, calendar, workbook, CSV.</summary>
internal sealed class PlanFiles
{
    private readonly Option<string?> pdf = WrittenTo.AFile("--pdf", "Write the plan to this PDF file.");
    private readonly Option<string?> ical = WrittenTo.AFile("--ical", "Write sessions, reminders and dates to this iCalendar file; one that is there is brought up to date.");
    private readonly Option<string?> xlsx = WrittenTo.AFile("--xlsx", "Write parts, work and plan to this workbook (.xlsx).");
    private readonly Option<string?> csv = WrittenTo.AFolder("--csv", "Write the same tables as CSV files into this folder.");

    /// <summary>Adds the options.</summary>
    public void AddTo(Command command)
    {
        command.Add(pdf);
        command.Add(ical);
        command.Add(xlsx);
        command.Add(csv);
    }

    /// <summary>Sees before the work that each has a place, and that no calendar of others would be written over.</summary>
    /// <param name="parsed">What was typed.</param>
    /// <param name="job">The job's name.</param>
    /// <param name="findings">Told what stands against it.</param>
    /// <exception cref="FileTroubleException">A place is none.</exception>
    public Wanted Look(ParseResult parsed, string job, Findings findings)
    {
        var wanted = new Wanted(parsed.GetValue(pdf), parsed.GetValue(xlsx), parsed.GetValue(csv));
        WrittenTo.SeeThatItHasAPlace(wanted.Pdf);
        WrittenTo.SeeThatItHasAPlace(wanted.Xlsx);
        return wanted with { Ical = CalendarToWrite(parsed.GetValue(ical), job, findings) };
    }

    /// <summary>A calendar that is to be written; null for none.</summary>
    /// <param name="path">Where; null for none.</param>
    /// <param name="of">What it is to be of.</param>
    /// <param name="findings">Told what stands against it.</param>
    /// <exception cref="FileTroubleException">The place is none.</exception>
    public static CalendarFile? CalendarToWrite(string? path, string of, Findings findings)
    {
        WrittenTo.SeeThatItHasAPlace(path);
        return path is null ? null : CalendarFile.Open(path, of, findings);
    }

    /// <summary>The files that are wanted.</summary>
    /// <param name="Pdf">The paper; null for none.</param>
    /// <param name="Xlsx">The workbook; null for none.</param>
    /// <param name="Csv">The folder of tables; null for none.</param>
    internal sealed record Wanted(string? Pdf, string? Xlsx, string? Csv)
    {
        /// <summary>The calendar; null for none.</summary>
        public CalendarFile? Ical { get; init; }

        /// <summary>Writes all but the calendar.</summary>
        /// <param name="paper">What the plan's paper says.</param>
        /// <param name="price">Reckons the price of the job, null for none; asked for where tables are written.</param>
        /// <returns>What was written.</returns>
        /// <exception cref="FileTroubleException">One cannot be written.</exception>
        public IReadOnlyList<string> Save(PlanPaper paper, Func<PriceBuildUp?> price)
        {
            List<string> written = [];
            if (Pdf is not null)
            {
                WholeFile.Save(Pdf, PlanBook.Set(paper));
                written.Add(Pdf);
            }

            if (Xlsx is null && Csv is null)
            {
                return written;
            }

            var tables = new PlanTables
            {
                Shop = paper.Shop,
                Format = paper.Format,
                Job = paper.Job,
                Layout = paper.Layout,
                Graph = paper.Graph,
                Marks = paper.Marks,
                TaskTimes = paper.TaskTimes,
                Plan = paper.Plan,
                Price = price(),
            }.All;
            if (Xlsx is not null)
            {
                WholeFile.Save(Xlsx, Workbook.Write(tables));
                written.Add(Xlsx);
            }

            if (Csv is not null)
            {
                WholeFile.SaveAll(Csv, [.. tables.Select(table => ($"{table.Name}.csv", SheetCsv.Write(table)))]);
                written.AddRange(tables.Select(table => Path.Combine(Csv, $"{table.Name}.csv")));
            }

            return written;
        }

        /// <summary>Writes the calendar.</summary>
        /// <returns>What was written.</returns>
        /// <exception cref="FileTroubleException">It cannot be written.</exception>
        public IReadOnlyList<string> SaveCalendar(ToldPlan told, OnRecord record, Instant now)
        {
            if (Ical is null)
            {
                return [];
            }

            var read = told.Read;
            var promised = (told.Kept?.Promise ?? (record.Promises is [.., var last] ? last : null))?.P80?.InZone(read.Shop.Place.Zone).Date;
            var order = new CalendarOrder(read.LogName, read.LogName, read.Job.Name, told.Marks)
            {
                Due = read.Job.Due,
                Promise = promised ?? told.Answer.Forecast.P80?.Date,
                IsPromised = promised is not null,
            };
            Ical.Save(new PlanEvents(read.Shop, Ical.Of, [order]).Of(told.Answer.Plan), now);
            return [Ical.Path];
        }
    }
}
