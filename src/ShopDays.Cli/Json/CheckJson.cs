using NodaTime;
using ShopDays.Cli.Files;
using ShopDays.Cli.Phrases;
using ShopDays.Measures;
using ShopDays.Plans;
using ShopDays.Work;

namespace ShopDays.Cli.Json;

/// <summary>The answer of <c>shopdays check --json</c>.</summary>
internal static class CheckJson
{
    /// <summary>The mistakes, or the stock and the parts.</summary>
    /// <param name="reading">What was read.</param>
    /// <param name="foreseen">What stands against a plan as it is.</param>
    /// <param name="now">The moment.</param>
    public static object Of(ShopAndJobReading reading, IReadOnlyList<Unplannable> foreseen, Instant now) => new
    {
        Mistakes = RefusalJson.MistakesOf(reading.Findings),
        Doubts = RefusalJson.MistakesOf(reading.Doubts),
        Job = reading.Read?.Job.Name,
        Boards = reading.Read is { } stock ? BoardsOf(stock) : null,
        Parts = reading.Read is { } list ? PartsOf(list) : null,
        Movement = reading.Read is { } moving ? DrynessJson.Of(Movement.Of(moving.Job, null, moving.Waits), moving.Job) : null,
        Nights = reading.Read is { Shop.Limits.Nights: { } nights } cold ? NightsJson.Of(cold, nights) : null,
        UnusedHours = reading.Read is { } shop ? UnusedJson.Of(UnusedWords.OfYear(shop), shop.Shop) : null,
        Awaited = reading.Read is { } job ? AwaitedWords.InFile(job, now) : null,
        CannotBePlanned = foreseen.Select(one => new { Task = one.Task?.Name, one.Kind, one.Limit, one.Cure }),
        ClampsMissing = reading.Read is { } owned ? ClampsOf(owned) : null,
    };

    private static IEnumerable<object> BoardsOf(ShopAndJob read)
    {
        var limits = read.Shop.Limits;
        return read.Job.Boards.Select(board => new
        {
            Board = board.Name,
            Species = board.Species.Name,
            LengthMm = JsonAnswer.Millimetres(board.Length),
            WidthMm = JsonAnswer.Millimetres(board.Width),
            ThicknessMm = JsonAnswer.Millimetres(board.Thickness),
            WeightKg = Kilograms(board.Weight),
            Heavy = limits.IsForTwo(board.Weight),
            Dryness = DrynessJson.Of(board, read),
        });
    }

    private static IEnumerable<object> ClampsOf(ShopAndJob read) =>
        from glueUp in read.Job.GlueUps
        from missing in ClampShortage.Of(glueUp.Clamps, read.Shop.Limits)
        select new { glueUp = glueUp.Name, ReachMm = JsonAnswer.Millimetres(missing.Reach), missing.Needed, missing.Owned };

    private static IEnumerable<object> PartsOf(ShopAndJob read)
    {
        var limits = read.Shop.Limits;
        return read.Job.Parts.Select(part => new
        {
            Part = part.Name,
            part.Count,
            Species = part.Species.Name,
            LengthMm = JsonAnswer.Millimetres(part.Length),
            WidthMm = JsonAnswer.Millimetres(part.Width),
            ThicknessMm = JsonAnswer.Millimetres(part.Thickness),
            WeightKg = Kilograms(Weights.OfPart(part, read.Job.Boards)),
            Heavy = limits.IsForTwo(Weights.OfPart(part, read.Job.Boards)),
        });
    }

    private static double Kilograms(Mass mass) => Math.Round(mass.Kilograms, 2, MidpointRounding.AwayFromZero);
}
