using NodaTime;
using ShopDays.Plans.Scheduling;
using ShopDays.Work;

namespace ShopDays.Plans;

/// <summary>Numbers what sets in the orders in hand, and the stretches of the year that are too cold for it.</summary>
internal sealed class NightsCompiler(OpenHours hours)
{
    /// <summary>What begins on the last day that is looked at may take a while yet.</summary>
    private const int MonthsBeyond = 24;

    private readonly List<CompiledSetting> settings = [];
    private readonly List<BarredNights> barred = [];
    private readonly Dictionary<(Setting Of, Duration For), int> known = [];
    private readonly Dictionary<(Setting Of, Duration For), int> knownBarred = [];
    private LocalDate[] months = [];
    private int[] begins = [];

    /// <summary>All that was numbered.</summary>
    public CompiledNights Nights => settings.Count + barred.Count == 0 ? CompiledNights.None : new([.. settings], [.. barred]);

    /// <summary>The number of what sets.</summary>
    /// <param name="setting">The glue or coat; null for nothing.</param>
    /// <param name="atTwenty">How long at 20 degrees C.</param>
    public int NumberOf(Setting? setting, Duration atTwenty)
    {
        if (setting is null || atTwenty <= Duration.Zero)
        {
            return CompiledNights.Nothing;
        }

        if (!known.TryGetValue((setting, atTwenty), out var number))
        {
            settings.Add(Of(setting, atTwenty));
            known[(setting, atTwenty)] = number = settings.Count;
        }

        return number;
    }

    /// <summary>The number of what sets slowest of some waits.</summary>
    public int NumberOf(IEnumerable<Wait> waits) => waits.Where(wait => wait.Sets is not null).OrderByDescending(wait => wait.Duration).FirstOrDefault() is { } longest
        ? NumberOf(longest.Sets, longest.Duration)
        : CompiledNights.Nothing;

    /// <summary>How long a wait lasts at least.</summary>
    public int LeastOf(Wait wait, int minutes) => NumberOf(wait.Sets, wait.Duration) is > CompiledNights.Nothing and var number ? settings[number - 1].Least : minutes;

    /// <summary>The number of the stretches in which a task may not be done.</summary>
    public int BarredFor(ShopTask task)
    {
        if (task.Sets is not { } setting || setting.BarredMonths.Count == 0)
        {
            return CompiledNights.Nothing;
        }

        if (!knownBarred.TryGetValue((setting, task.SetsFor), out var number))
        {
            barred.Add(new([.. Stretches(setting, Of(setting, task.SetsFor))]));
            knownBarred[(setting, task.SetsFor)] = number = barred.Count;
        }

        return number;
    }

    private CompiledSetting Of(Setting setting, Duration atTwenty)
    {
        LookAhead();
        return new(begins, [.. months.Select(month => setting.FactorIn(month.Month))], (int)Math.Ceiling(Math.Min(atTwenty.TotalMinutes, CompiledCalendar.Never)));
    }

    /// <summary>The cold months, those that follow each other as one, each with the time before it from which something would not have set when it comes.</summary>
    private IEnumerable<(int From, int To)> Stretches(Setting setting, CompiledSetting time)
    {
        var from = -1;
        for (var month = 0; month < months.Length; month++)
        {
            if (setting.IsBarredIn(months[month].Month))
            {
                from = from < 0 ? month : from;
                continue;
            }

            if (from >= 0)
            {
                yield return (BeginOf(from), begins[month]);
                from = -1;
            }
        }

        if (from >= 0)
        {
            yield return (BeginOf(from), CompiledCalendar.Never);
        }

        int BeginOf(int month) => month == 0 ? int.MinValue : time.LatestFor(begins[month]);
    }

    private void LookAhead()
    {
        if (months.Length == 0)
        {
            var first = hours.First.With(DateAdjusters.StartOfMonth);
            var last = hours.First.PlusDays(hours.Days);
            months = [.. Enumerable.Range(0, Period.Between(first, last, PeriodUnits.Months).Months + MonthsBeyond).Select(month => first.PlusMonths(month))];
            begins = [.. months.Select(hours.MinuteOf)];
        }
    }
}
