using System.Text;
using NodaTime;
using ShopDays.Cli.Files;
using ShopDays.Days;
using ShopDays.Measures;
using Xunit;

namespace ShopDays.Cli.Tests.Files;

public sealed class ShopFileTests
{
    private const string WithEveryKey = """
        shop: The Old Net Loft
        place: {latitude: 57.14, longitude: -2.09, zone: Europe/London}
        units: mm
        currency: GBP
        paper: letter
        week: {monday: "18:00-20:00", saturday: ["09:00-12:00", "13:00-16:00"]}
        daylight: {limit: civil-twilight, margin: 20m}
        closed: [2027-12-24..2027-12-31, 2027-06-01]
        extra: {2027-06-02: ["10:00-15:00"]}
        quiet: ["21:00-08:00"]
        overhead: {open-up: 12m, sweep-up: 18m}
        least-session: 1h
        limits: {heavy-per-day: 2h, heavy-in-two-days: 3h, bout: 20m, lift-alone: 20 kg, longest-pass: 2.2 m}
        clamps: [{reach: 300, count: 6}, {reach: 1.2 m, count: 4}]
        benches: 2
        floor: 3.5 m2
        nights: {temperature: 43 F, months: {december: 2 C, july: 14 C}, humidity: 80%, warm-room: 16 C}
        workers: [{name: maker, closed: 2027-06-07}, {name: niece, hours: {saturday: ["09:00-12:00"]}, extra: {2027-06-01: ["14:00-15:30"], 2027-06-03: "10:00-12:00"}, closed: 2027-06-12, heavy-per-day: 45m, heavy-in-two-days: 1h}]
        appointments:
          - {appointment: timber delivery, on: 2027-06-05, at: "10:00-11:00", who: Maker}
          - {appointment: meter reading, on: 2027-06-05, at: "14:00-14:30"}
        money: {rate: 31.50 per hour, overhead: 220 per month, billable: 60 h per month, margin: 12.5%, tax: 20%}
        learning: {half-life: 540d}
        methods: {rip: band saw}
        allowances: {kerf: 2 mm, length: 30 mm}
        """;

    [Fact]
    public void Every_key_of_a_shop_is_read()
    {
        var shop = Read(WithEveryKey);
        Assert.Equal(("The Old Net Loft", "GBP", "letter", LengthUnit.Millimetre), (shop.Name, shop.Currency.Code, shop.Paper.Name, shop.Units));
        Assert.Equal((57.14, -2.09, "Europe/London"), (shop.Place.Latitude, shop.Place.Longitude, shop.Place.Zone.Id));
        Assert.Equal(["09:00-12:00", "13:00-16:00"], shop.Week[IsoDayOfWeek.Saturday].Items.Select(hours => hours.ToString()));
        Assert.Equal((DaylightLimit.CivilTwilight, Duration.FromMinutes(20)), (shop.Daylight.Limit, shop.Daylight.Margin));
        Assert.True(shop.Closed.Contains(new(2027, 12, 31)) && shop.Closed.Contains(new(2027, 6, 1)) && !shop.Closed.Contains(new(2028, 1, 1)));
        Assert.Equal("10:00-15:00", shop.Extra.On(new(2027, 6, 2))!.Items.Single().ToString());
        Assert.Equal("21:00-08:00", shop.Quiet.Hours.Single().ToString());
        Assert.Equal((12, 18, 60), (shop.Overhead.OpenUp.Minutes, shop.Overhead.SweepUp.Minutes, shop.LeastSession.Minutes));
        Assert.Equal((120, 20, 2200, 2, 2), (shop.Limits.HeavyPerDay.Minutes, shop.Limits.LiftAlone.Kilograms, shop.Limits.LongestPass.Millimetres, shop.Limits.Benches, shop.Limits.Workers));
        Assert.Equal((120, 45), (shop.Limits.HeavyPerDayOf("maker").Minutes, shop.Limits.HeavyPerDayOf("niece").Minutes));
        Assert.Equal((180, 60, 20), (shop.Limits.HeavyInTwoDaysOf("maker")?.Minutes, shop.Limits.HeavyInTwoDaysOf("niece")?.Minutes, shop.Limits.Bout.Minutes));
        Assert.Equal([(300, 6), (1200, 4)], shop.Limits.Clamps!.Select(clamps => (clamps.Reach.Millimetres, clamps.Count)));
        Assert.Equal((31.50m, 2_640m, 720, 0.125m, 20), (shop.Money!.Hour.Amount, shop.Money.Terms.Rate.PerYear[1].PerYear.Amount, shop.Money.Terms.Rate.Billable!.Value.Hours, shop.Money.Terms.Margin.Share, shop.Money.Terms.Tax.Rate.Value));
        Assert.Equal(35.17m, shop.Money.Terms.Rate.PerHour.Amount);
        Assert.Equal(3.5, shop.Limits.Floor!.Value.SquareMetres);
        Assert.Equal([2.0, 14, 6.1], new[] { 12, 7, 1 }.Select(month => Math.Round(shop.Limits.Nights!.InShop(month).Celsius, 1)));
        Assert.Equal((80, 16), (shop.Limits.Nights!.Humidity!.Value.Value, shop.Limits.Nights.WarmRoom!.Value.Celsius));
        Assert.Equal([("timber delivery", "maker"), ("meter reading", "")], shop.Appointments.Select(one => (one.What.Name, string.Join(", ", one.Who))));
        Assert.Equal(Duration.FromDays(540), shop.Learning.HalfLife);
        Assert.Equal("band saw", shop.Methods["rip"]);
        Assert.Equal((2, 30), (shop.Allowances.Kerf.Millimetres, shop.Allowances.Length.Millimetres));
        Assert.Equal(new ShopDays.Parts.Allowances().Width, shop.Allowances.Width);
    }

    [Theory]
    [InlineData("A4", "a4")]
    [InlineData("Letter", "letter")]
    public void The_paper_may_be_written_with_a_large_letter(string written, string read) =>
        Assert.Equal(read, Read(WithEveryKey.Replace("paper: letter", $"paper: {written}", StringComparison.Ordinal)).Paper.Name);

    [Fact]
    public void How_long_new_timber_takes_is_a_range_or_its_likely_length_alone_and_may_be_left_out()
    {
        Assert.Equal(new ShopDays.Parts.WaitGuess(Duration.FromDays(1), Duration.FromDays(3), Duration.FromDays(9)), Read(WithEveryKey + "\nnew-timber: {low: 1d, likely: 3d, high: 9d}\n").NewTimber);
        Assert.Equal(ShopDays.Parts.WaitGuess.About(Duration.FromDays(4)), Read(WithEveryKey + "\nnew-timber: 4d\n").NewTimber);
        Assert.Null(Read(WithEveryKey).NewTimber);
    }

    [Fact]
    public void A_helper_with_hours_of_their_own_comes_only_then()
    {
        var shop = Read(WithEveryKey);
        var helper = shop.CalendarOf(shop.Workers[1]);
        Assert.Empty(helper.Between(new(2027, 6, 2), new(2027, 6, 2)).Sessions);
        Assert.Single(helper.Between(new(2027, 6, 5), new(2027, 6, 5)).Sessions);
        Assert.Single(shop.CalendarOf(shop.Workers[0]).Between(new(2027, 6, 2), new(2027, 6, 2)).Sessions);
    }

    [Fact]
    public void A_helpers_morning_is_a_date_with_hours_of_its_own_even_when_the_shop_is_closed()
    {
        var shop = Read(WithEveryKey);
        var helper = shop.CalendarOf(shop.Workers[1]);
        Assert.Equal([1, 3, 5], helper.Between(new(2027, 6, 1), new(2027, 6, 12)).Sessions.Select(session => session.Date.Day).Distinct());
    }

    [Fact]
    public void A_worker_does_not_come_on_dates_that_are_closed_for_them_alone()
    {
        var shop = Read(WithEveryKey);
        var (maker, helper) = (shop.CalendarOf(shop.Workers[0]), shop.CalendarOf(shop.Workers[1]));
        Assert.Empty(maker.On(new(2027, 6, 7)).Sessions);
        Assert.Single(maker.On(new(2027, 6, 14)).Sessions);
        Assert.Empty(helper.On(new(2027, 6, 12)).Sessions);
        Assert.NotEmpty(maker.On(new(2027, 6, 12)).Sessions);
    }

    [Fact]
    public void An_appointment_takes_the_time_of_those_that_it_names_or_of_all()
    {
        var shop = Read(WithEveryKey);
        var (maker, helper) = (shop.CalendarOf(shop.Workers[0]).On(new(2027, 6, 5)), shop.CalendarOf(shop.Workers[1]).On(new(2027, 6, 5)));
        Assert.Equal(["timber delivery", "meter reading"], maker.Unused.Select(one => one.Appointment).OfType<string>());
        Assert.Empty(helper.Unused);
        Assert.Single(helper.Sessions);
    }

    private static Shop Read(string text)
    {
        var findings = new Findings();
        var read = ShopFile.Read(new("shop.yaml", "shop.yaml", Encoding.UTF8.GetBytes(text)), BuiltIn.Operations, findings);
        Assert.Equal([], findings.InOrder());
        return read.Shop!;
    }
}
