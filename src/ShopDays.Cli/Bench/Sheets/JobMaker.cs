using NodaTime;
using ShopDays.Cli.Bench.Now;
using ShopDays.Cli.Bench.Pages;
using ShopDays.Cli.Phrases;
using ShopDays.Plans;

namespace ShopDays.Cli.Bench.Sheets;

/// <summary>Puts into words how a job stands.</summary>
/// <param name="shop">The shop, worked out.</param>
internal sealed class JobMaker(ShopAtHand shop)
{
    private const int MostBars = 16;

    /// <summary>The jobs in hand, as ways to their pages.</summary>
    public IReadOnlyList<Link> Jobs => [.. shop.Jobs.Select(LinkTo)];

    /// <summary>The sheet of a job.</summary>
    public JobSheet Sheet(JobAtHand job)
    {
        var (forecast, told) = (shop.ForecastOf(job), job.Told);
        return new()
        {
            Jobs = Jobs,
            Title = job.Title,
            // Beside others its dates are those of them all together, which stand below.
            Glance = (shop.Planned.Count > 1 ? told?.PaceNow : told?.Glance) ?? "",
            Stopped = job.Standing.Stopped is { } note ? StoppedWords.Of(note, job.Marks) : "",
            Dates = Dates(forecast, told, shop.Planned.Count > 1),
            Chance = ChanceOf(job, forecast),
            Courses = forecast is null ? [] : [.. FinishBar.Of(forecast, job.Read.Job.Due, shop.Shop.Zone, MostBars).Select(bar => new CourseBar(WhenOf(bar), bar.Share, string.Join(", ", (string[])[ChanceWords.Of(bar.Share), .. bar.Marks])))],
            Hours = new(
                "Hours at the bench",
                [new("", false), new("tasks"), new("promised"), new("spent"), new("to come"), new("difference")],
                told is null ? [] : [.. StateRow.Of(told.Progress).Where(row => row.Tasks > 0).Select(row => (string[])[row.Name, CountWords.Number(row.Tasks), HourWords.Of(row.Promised), HourWords.Of(row.Spent), HourWords.Of(row.Left), HourWords.Signed(row.Difference)])]),
            Moved = told switch
            {
                null => "Being worked out.",
                { Moved: { } moved, Why.Count: > 0 } => MovedRow.Whole(moved, told.IsRecorded) + (shop.Planned.Count > 1 ? " That is as if the shop had this job alone." : ""),
                _ => "",
            },
            Why = told is { Moved: not null } ? [.. told.Why.Select(row => $"{row.Days}: {row.What}")] : [],
            Deciding = forecast is null ? [] : [.. forecast.Deciding.Select(one => one.Order == job.Title ? one.Task.Name : $"{one.Task.Name} ({one.Order})")],
            Notes = told?.Notes ?? [],
            Pieces =
            [
                .. job.Read.Job.Parts.Select(part => new Link(PieceAddress.OfPart(job.Name, part.Name), part.Name)),
                .. job.Workings.Layout.ToCut.Select(board => new Link(PieceAddress.OfBoard(job.Name, board.Board.Name), $"board {board.Board.Name}")),
            ],
            Paper = new($"/job/plan.pdf?job={Uri.EscapeDataString(job.Name)}", "The plan as a PDF"),
        };
    }

    /// <summary>The way to a job's page.</summary>
    public static Link LinkTo(JobAtHand job) => new($"/job?job={Uri.EscapeDataString(job.Name)}", job.Title);

    private static TextTable Dates(FinishForecast? forecast, ToldProgress? told, bool besides)
    {
        string[][] rows = forecast is null
            ? []
            :
            [
                ["as likely as not", told?.DateOf(told.Progress.Promise.P50) ?? "", DateOf(forecast.P50)],
                ["to promise (four in five)", told?.DateOf(told.Progress.Promise.P80) ?? "", DateOf(forecast.P80)],
                ["with bad luck (nine in ten)", told?.DateOf(told.Progress.Promise.P90) ?? "", DateOf(forecast.P90)],
            ];
        return new("Finished", [new("", false), new(told is { IsRecorded: true } ? "promised" : "would have been promised", false), new(besides ? "now, with the other jobs" : "now", false)], rows);
    }

    private static string ChanceOf(JobAtHand job, FinishForecast? forecast) => forecast?.ChanceOfDue is { } chance && job.Due is var (date, isPromised)
        ? $"{(isPromised ? "Promised" : "Due")} {DateWords.Of(date)}: a chance of {ChanceWords.Of(chance)}."
        : "";

    private static string DateOf(ZonedDateTime? time) => time is { } known ? DateWords.Of(known.Date) : "not within the years looked at";

    private static string WhenOf(FinishBar bar) => bar.First == bar.Last ? DateWords.Short(bar.First) : $"{DateWords.Short(bar.First)} to {DateWords.Short(bar.Last)}";
}
