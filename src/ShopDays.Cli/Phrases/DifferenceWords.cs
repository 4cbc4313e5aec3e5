using NodaTime;
using ShopDays.Choices;
using ShopDays.Measures;

namespace ShopDays.Cli.Phrases;

/// <summary>What doing a job otherwise changes, and what causes it, in sentences.</summary>
internal static class DifferenceWords
{
    private const int MostOperations = 3;

    /// <summary>Below so much of an hour a change of an operation is not worth a word.</summary>
    private static readonly WorkTime Noticeable = WorkTime.FromMinutes(3);

    /// <summary>What it changes: <c>promise 12 days sooner, 2 shop days fewer, price 84.00 lower</c>.</summary>
    public static string Changes(Difference difference, double risk)
    {
        string?[] said =
        [
            Counted(difference.DaysAtP80, "promise ", "day", "sooner", "later"),
            Counted(difference.DaysAtP50, "as likely as not ", "day", "sooner", "later"),
            Counted(difference.ShopDays, "", "shop day", "fewer", "more"),
            Counted(difference.CalledIn, "called in on ", "day", "less", "more"),
            Hours(difference.HandsOn, "at the bench"),
            Hours(difference.Heavy, "of heavy work"),
            Priced(difference.Cost, "cost"),
            Priced(difference.Least, $"price at {MoneyWords.Share((decimal)risk)} risk"),
        ];
        return said.OfType<string>().ToList() is { Count: > 0 } some ? string.Join(", ", some) : "nothing that shows";
    }

    /// <summary>What causes it; empty where there is nothing to say.</summary>
    public static string Causes(Difference difference, Outcome asIs, Outcome other)
    {
        List<string> said = [.. difference.Hours.Where(one => Size(one.By) >= Noticeable).Take(MostOperations).Select(Cause)];
        if (difference.Boards != 0 || difference.Timber is { Amount: not 0 })
        {
            said.Add(string.Join(", ", ((string?[])["timber", Counted(difference.Boards, "", "board", "fewer", "more"), Priced(difference.Timber, "price")]).OfType<string>()));
        }

        said.AddRange(CausesOfMoney(asIs, other));
        if (difference.Waits != Duration.Zero)
        {
            var hours = (int)Math.Round(Math.Abs(difference.Waits.TotalHours), MidpointRounding.AwayFromZero);
            said.Add($"waits, all added up, {CountWords.Of(hours, "hour")} {(difference.Waits < Duration.Zero ? "less" : "more")}");
        }

        said.Add(BoundOf(asIs, other));
        return string.Join("; ", said);
    }

    /// <summary>What of the money is neither hours nor timber.</summary>
    private static IEnumerable<string> CausesOfMoney(Outcome asIs, Outcome other)
    {
        if (asIs.Money is not { Price: { Terms.Rate.PerHour: var before } priced } || other.Money is not { Price: { Terms.Rate.PerHour: var now } otherwise })
        {
            yield break;
        }

        if (now != before)
        {
            yield return $"an hour has to earn {MoneyWords.Of(now)} and not {MoneyWords.Of(before)}";
        }

        if (Priced(otherwise.BoughtBesideTimber - priced.BoughtBesideTimber, "what is bought and paid for beside the timber") is { } bought)
        {
            yield return bought;
        }
    }

    private static string BoundOf(Outcome asIs, Outcome other)
    {
        var (one, two) = (asIs.Plan.LowerBound, other.Plan.LowerBound);
        var days = Period.DaysBetween(one.At.Date, two.At.Date);
        var moved = Counted(days, "is ", "day", "sooner", "later") ?? "stays";
        return $"the earliest end that any plan could have {moved}, bound by {(one.Kind == two.Kind ? $"{two.Kind} as before" : $"{two.Kind} now, by {one.Kind} before")}";
    }

    private static string Cause(HoursOtherwise one)
    {
        var by = $"{HourWords.Signed(one.By)} h";
        return (one.Operation, one.Methods, one.OtherMethods) switch
        {
            (null, _, _) => $"work done again {by} on average",
            (_, [], _) => $"{one.Operation} comes in, {by}",
            (_, _, []) => $"{one.Operation} falls away, {by}",
            var (operation, before, after) => before.SequenceEqual(after) ? $"{operation} {by}" : $"{operation} by {string.Join(" and ", after)}, {by}",
        };
    }

    private static string? Counted(int? by, string lead, string one, string less, string more) => by switch
    {
        null or 0 => null,
        < 0 and var fewer => $"{lead}{CountWords.Of(-fewer, one)} {less}",
        var others => $"{lead}{CountWords.Of(others.Value, one)} {more}",
    };

    private static string? Hours(WorkTime by, string what) =>
        HourWords.WholeMinutes(by) == 0 ? null : $"{HourWords.Of(Size(by))} h {(by < WorkTime.Zero ? "less" : "more")} {what}";

    private static string? Priced(Money? by, string what) => by switch
    {
        null or { Amount: 0 } => null,
        var money => $"{what} {MoneyWords.Of(money with { Amount = Math.Abs(money.Amount) })} {(money.Amount < 0 ? "lower" : "higher")}",
    };

    private static WorkTime Size(WorkTime time) => time < WorkTime.Zero ? WorkTime.Zero - time : time;
}
