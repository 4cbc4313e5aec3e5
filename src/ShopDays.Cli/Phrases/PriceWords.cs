using System.Diagnostics;
using System.Globalization;
using ShopDays.Measures;
using ShopDays.Prices;

namespace ShopDays.Cli.Phrases;

/// <summary>The lines of a price in words.</summary>
/// <param name="Format">How lengths, and so volumes, are written.</param>
internal sealed record PriceWords(LengthFormat Format)
{
    /// <summary>What a line is for.</summary>
    public static string NameOf(CostLine line) => line switch
    {
        CostLine.Labour labour => Kind(labour.Share.Kind),
        CostLine.TimberUsed used => $"{used.Line.Species.Name}, in the piece",
        CostLine.TimberLost lost => $"{lost.Line.Species.Name}, lost or left over",
        CostLine.Hardware hardware => hardware.Item.Name,
        CostLine.Consumables => "glue, abrasives, finish",
        CostLine.Outside outside => outside.Work.Name,
        CostLine.Travel => "travel",
        CostLine.Slack => "hours for bad luck",
        CostLine.Spare spare => $"a spare board of {spare.Board.Species.Name}",
        _ => throw new UnreachableException(),
    };

    /// <summary>How its amount comes about; empty where that goes without saying.</summary>
    /// <param name="line">The line.</param>
    /// <param name="rate">What an hour has to earn.</param>
    public string WorkingOf(CostLine line, Money rate) => line switch
    {
        CostLine.Labour labour => $"{Hours(labour.Share.Minutes)} at {MoneyWords.Of(rate)}",
        CostLine.TimberUsed { Line: var used } => $"{Figure(used.InThePiece)} of {SawnWords.Of(used.Bought, Format)}",
        CostLine.TimberLost { Line: var lost } => $"{SawnWords.Of(lost.Bought - lost.InThePiece, Format)}, {CountWords.Of(lost.Boards, "board")} in all",
        CostLine.Hardware { Item: var item } => item.Count == 1 ? "" : $"{CountWords.Number(item.Count)} at {MoneyWords.Of(item.Each)}",
        CostLine.Consumables { OfPrice: { } share } => $"{MoneyWords.Share(share)} of the price",
        CostLine.Outside { Work.By: { } by } => $"by {by}",
        CostLine.Travel { Way: { } way } => $"{way.Distance.ToString("0.0", CultureInfo.InvariantCulture)} {(way.Each.Unit == PriceUnit.Mile ? "mi" : "km")} at {MoneyWords.Of(way.Each.Amount)}",
        CostLine.Slack slack => $"{Hours(slack.Minutes)} at {MoneyWords.Of(rate)}",
        CostLine.Spare spare => $"like {spare.Board.Like}",
        _ => "",
    };

    /// <summary>Minutes as <c>12:05</c>.</summary>
    public static string Hours(long minutes) => HourWords.Of(WorkTime.FromMinutes(minutes));

    /// <summary>A group of lines.</summary>
    public static string GroupOf(CostLine line) => line switch
    {
        CostLine.Labour => "hours",
        CostLine.TimberUsed or CostLine.TimberLost => "timber",
        CostLine.Hardware or CostLine.Consumables or CostLine.Outside or CostLine.Travel => "bought and paid for",
        CostLine.Slack or CostLine.Spare => "for what may go wrong",
        _ => throw new UnreachableException(),
    };

    private string Figure(Volume volume) => SawnWords.Of(volume, Format).Split(' ')[0];

    /// <summary>When a stage is paid.</summary>
    public static string When(StagePoint point) => point switch
    {
        StagePoint.Order => "on order",
        StagePoint.DryFit => "at the dry fit, before glue",
        StagePoint.Finish => "before the finish",
        StagePoint.Delivery => "on delivery",
        _ => throw new UnreachableException(),
    };

    private static string Kind(LabourKind kind) => kind switch
    {
        LabourKind.Sawing => "sawing",
        LabourKind.Planing => "planing",
        LabourKind.Joinery => "joints",
        LabourKind.Assembly => "gluing and fitting together",
        LabourKind.Finishing => "smoothing and finish",
        LabourKind.Other => "all other work",
        LabourKind.Delivery => "delivery and placing",
        LabourKind.DoneAgain => "work done again, on average",
        _ => throw new UnreachableException(),
    };
}
