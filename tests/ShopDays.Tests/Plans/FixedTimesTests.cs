using NodaTime;
using ShopDays.Plans;
using ShopDays.Tests.Days;
using Xunit;

namespace ShopDays.Tests.Plans;

/// <summary>Work that is fixed for a time when what seems most urgent would make it late.</summary>
public sealed class FixedTimesTests
{
    private static readonly LocalDateTime Wednesday = new(2027, 3, 3, 9, 0);

    [Fact]
    public void A_time_is_kept_although_what_has_most_behind_it_must_give_way()
    {
        // The oil has longest to dry, so the planing seems to come first: the glue would then not be hard in time.
        Assert.Equal(Wednesday, BeginOf(One(Wednesday).Plan(), "client chooses"));
        Assert.Equal(PlanOf(One(Wednesday)), PlanOf(One(Wednesday)));
    }

    [Fact]
    public void The_time_to_agree_on_is_the_earliest_that_was_found_and_is_kept()
    {
        var reason = Assert.Single(One(new(2027, 3, 2, 9, 30)).Reasons());
        Assert.Equal(UnplannableKind.AppointmentNotKept, reason.Kind);
        Assert.StartsWith("agree on 2027-03-03 09:00, the earliest that was found, or on a later time", reason.Cure, StringComparison.Ordinal);
    }

    [Fact]
    public void Two_such_times_are_both_kept()
    {
        var tuesday = new LocalDateTime(2027, 3, 9, 9, 0);
        var plan = Two(tuesday).Plan();
        Assert.Equal(Wednesday, BeginOf(plan, "client chooses"));
        Assert.Equal(tuesday, BeginOf(plan, "client fetches"));

        // On Monday the glue is hard at half past nine at the earliest.
        Assert.Contains("agree on 2027-03-08 09:30", Assert.Single(Two(new(2027, 3, 8, 9, 15)).Reasons()).Cure, StringComparison.Ordinal);
        Two(new(2027, 3, 8, 9, 30)).Plan();
    }

    [Fact]
    public void An_appointment_is_moved_away_only_where_that_is_enough()
    {
        // Five hours of planing in sessions of two are not done on Tuesday, whoever else comes.
        static AJob Job(LocalDate start, bool isMoved = false) => new AJob { Start = start }
            .Worker("09:00-11:00")
            .With(calendar => calendar with { Appointments = isMoved ? [] : [new("timber delivered", new(2027, 3, 2), Shops.Span("10:00-10:30"))] })
            .Task("plane", 300, task => task with { IsSplittable = true })
            .Task("client chooses", 60, task => task with { Appointed = new(new(2027, 3, 2), new(9, 30)) })
            .Then("plane", "client chooses");
        var reason = Assert.Single(Job(AJob.Monday).Reasons());
        Assert.Contains("the appointment 'timber delivered' on 2027-03-02, 10:00-10:30, takes that time; besides, what must come before it is not done by then", reason.Limit, StringComparison.Ordinal);
        Assert.Equal("move 'timber delivered' of 2027-03-02 to another date, and begin by 2027-02-25, if that is still to come, or another time, such as 2027-03-04 09:00", reason.Cure);
        Assert.Single(Job(AJob.Monday, isMoved: true).Reasons());
        Assert.Single(Job(new(2027, 2, 25)).Reasons());
        Assert.Single(Job(new(2027, 2, 26), isMoved: true).Reasons());
        Job(new(2027, 2, 25), isMoved: true).Plan();
    }

    private static AJob One(LocalDateTime at) => Pair(new AJob(), "client chooses", at, Duration.FromHours(24), null, "chest");

    private static AJob Two(LocalDateTime at) => Pair(One(Wednesday), "client fetches", at, Duration.FromHours(96), new(2027, 3, 4), "table");

    /// <summary>The glue must be hard and the parts planed when the client comes; what is planed is oiled.</summary>
    private static AJob Pair(AJob job, string client, LocalDateTime at, Duration hard, LocalDate? from, string piece) => job
        .Task($"plane the {piece}", 110, task => task with { NotBefore = from })
        .Task($"glue the {piece}", 30, task => task with { NotBefore = from })
        .Task(client, 10, task => task with { Appointed = new(at.Date, at.TimeOfDay) })
        .Task($"oil the {piece}", 20)
        .Then($"plane the {piece}", client)
        .Then($"glue the {piece}", client, new(hard, "it hardens"))
        .Then($"plane the {piece}", $"oil the {piece}")
        .Closing($"oil the {piece}", new(Duration.FromDays(20), "it dries"));

    private static LocalDateTime BeginOf(Plan plan, string task) => plan.Sessions.SelectMany(session => session.Work).First(work => work.Task.Name == task).Start.LocalDateTime;

    private static string PlanOf(AJob job) => string.Join("\n", job.Plan().Sessions.SelectMany(session => session.Work).Select(work => $"{work.Start} {work.Task.Name}"));
}
