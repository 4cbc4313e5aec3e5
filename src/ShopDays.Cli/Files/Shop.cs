using NodaTime;
using ShopDays.Cli.Paper.Setting;
using ShopDays.Days;
using ShopDays.Measures;
using ShopDays.Parts;
using ShopDays.Times;

namespace ShopDays.Cli.Files;

/// <summary>What <c>shop.yaml</c> says, as values.</summary>
internal sealed record Shop
{
    /// <summary>The shop's name.</summary>
    public required string Name { get; init; }

    /// <summary>Where it stands.</summary>
    public required ShopPlace Place { get; init; }

    /// <summary>The unit of a length without one.</summary>
    public required LengthUnit Units { get; init; }

    /// <summary>How lengths are printed.</summary>
    public required LengthFormat Format { get; init; }

    /// <summary>The currency of every price.</summary>
    public required Currency Currency { get; init; }

    /// <summary>What the printer holds.</summary>
    public required PaperSize Paper { get; init; }

    /// <summary>The hours of an ordinary week.</summary>
    public required ShopWeek Week { get; init; }

    /// <summary>How hours are cut to the light.</summary>
    public required DaylightRule Daylight { get; init; }

    /// <summary>Dates on which nobody works.</summary>
    public required ClosedDates Closed { get; init; }

    /// <summary>Dates with hours of their own.</summary>
    public required ExtraDates Extra { get; init; }

    /// <summary>Hours of single dates that are promised to something else, with whose they are.</summary>
    public IReadOnlyList<ShopAppointment> Appointments { get; init; } = [];

    /// <summary>Hours without noise.</summary>
    public required QuietHours Quiet { get; init; }

    /// <summary>What every session loses.</summary>
    public required Overhead Overhead { get; init; }

    /// <summary>A session shorter than this, overhead taken out, is not used.</summary>
    public required WorkTime LeastSession { get; init; }

    /// <summary>Limits of body and room, clamps, benches, and how many people work.</summary>
    public required ShopLimits Limits { get; init; }

    /// <summary>How long new timber for a spoiled piece may take to come; null for the table's range.</summary>
    public WaitGuess? NewTimber { get; init; }

    /// <summary>Who works, at least one.</summary>
    public required IReadOnlyList<Worker> Workers { get; init; }

    /// <summary>What the shop charges and costs; null when it does not say.</summary>
    public required ShopMoney? Money { get; init; }

    /// <summary>How it learns from its log.</summary>
    public ShopLearning Learning { get; init; } = new(null);

    /// <summary>Method by operation where it is not by hand; a job may say otherwise.</summary>
    public required IReadOnlyDictionary<string, string> Methods { get; init; }

    /// <summary>Machines that the shop has or can get at, by the names of the catalogue's methods; a job uses none of them unasked.</summary>
    public IReadOnlyList<string> Machines { get; init; } = [];

    /// <summary>Allowances; a job may say otherwise.</summary>
    public required Allowances Allowances { get; init; }

    /// <summary>How rates are learned from its log: they are those of the first of its workers.</summary>
    /// <param name="date">The date from which the ages of times count.</param>
    public Learning LearningAsOf(LocalDate date) => new(date, Workers[0].Name, Learning.HalfLife);

    /// <summary>When one of the workers is in the shop.</summary>
    public WorkingCalendar CalendarOf(Worker worker) => new()
    {
        Worker = worker.Name,
        Place = Place,
        Week = worker.Week ?? Week,
        // A helper with hours of their own keeps to these on the shop's extra dates; what is said of one worker goes before what is said of all.
        Extra = (worker.Week is null ? Extra.Without(worker.Closed) : ExtraDates.None).With(worker.Extra),
        Closed = new(Closed.Spans.Concat(worker.Closed.Spans)),
        Appointments = [.. Appointments.Where(one => one.Who.Count == 0 || one.Who.Contains(worker.Name)).Select(one => one.What)],
        Daylight = Daylight,
        Quiet = Quiet,
        Overhead = Overhead,
        LeastUseful = LeastSession,
    };
}

/// <summary>How a shop learns from its log.</summary>
/// <param name="HalfLife">The age at which a logged time counts half as much as one of today; null when all count alike.</param>
internal sealed record ShopLearning(Duration? HalfLife);

/// <summary>Somebody who works in the shop.</summary>
/// <param name="Name">The name, one of a kind in the shop.</param>
/// <param name="Week">Hours of their own; null for the shop's.</param>
internal sealed record Worker(string Name, ShopWeek? Week)
{
    /// <summary>Dates with hours of their own, the helper's mornings.</summary>
    public ExtraDates Extra { get; init; } = ExtraDates.None;

    /// <summary>Dates on which they do not come, beside those on which the shop is closed.</summary>
    public ClosedDates Closed { get; init; } = ClosedDates.None;

    /// <summary>Heavy work that they do in one day at most; null for as much as the shop allows.</summary>
    public WorkTime? HeavyPerDay { get; init; }

    /// <summary>Heavy work that they do in two days running at most; null where nothing of their own is said.</summary>
    public WorkTime? HeavyInTwoDays { get; init; }
}

/// <summary>An appointment of a shop.</summary>
/// <param name="What">What and when.</param>
/// <param name="Who">The workers whose time it takes; none for all.</param>
internal sealed record ShopAppointment(Appointment What, IReadOnlyList<string> Who);
