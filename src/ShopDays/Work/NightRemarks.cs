using NodaTime;
using ShopDays.Layouts;
using ShopDays.Measures;
using ShopDays.Parts;

namespace ShopDays.Work;

/// <summary>What to know of glue and coats in a shop with nights of its own: when it is too cold for them, how slow they are, what damp does.</summary>
public static class NightRemarks
{
    private const int MostNamed = 6;

    /// <summary>Less than this many times as long is not worth a word.</summary>
    private const double Slow = 1.05;

    /// <summary>More than this share of its time to be closed in is not worth a word.</summary>
    private const double Short = 0.9;

    /// <summary>The remarks on a job's panels, glue-ups and finishes; none in a heated shop. Names that are not in the table are left out.</summary>
    /// <param name="job">The job.</param>
    /// <param name="layout">Which panels are glued up from strips; null before boards are laid out: then any may be.</param>
    /// <param name="waits">Adhesives and finishes.</param>
    /// <param name="nights">The nights where the work lies; null in a heated shop.</param>
    public static IReadOnlyList<Remark> Of(Job job, Layout? layout, WaitTable waits, ShopNights? nights)
    {
        if (nights is null)
        {
            return [];
        }

        var panels = job.Parts.Where(part => part.IsPanel && layout?.Boards.Any(board => board.Blanks.Any(placed => placed.Blank.Part.Name == part.Name && placed.Blank.Strip > 0)) != false);
        var glued = panels.Select(part => (Name: Panels.AdhesiveNameFor(job, part), About: part.Name))
            .Concat(job.GlueUps.Select(one => (Name: one.Adhesive, About: one.Name)))
            .SelectMany(one => waits.TryFindAdhesive(one.Name, out var glue) ? [(Setting.Of(glue, waits, nights), one.About)] : Array.Empty<(Setting, string)>());
        var coated = job.Finishes.SelectMany(one => waits.TryFindFinish(one.Finish, out var finish) ? [(Setting.Of(finish, waits, nights), string.Join(", ", one.On))] : Array.Empty<(Setting, string)>());
        return [.. glued.Concat(coated).GroupBy(one => one.Item1.Name, StringComparer.Ordinal).SelectMany(same => Of(same.First().Item1, [.. same.Select(one => one.Item2).Distinct(StringComparer.Ordinal)], job.Start))];
    }

    /// <summary>What would help where it is too cold: a warm room, or something that sets in that cold; nothing else is named that would be refused as well.</summary>
    /// <param name="setting">What sets.</param>
    /// <param name="lies">How cold it is where the work lies.</param>
    internal static string Cure(Setting setting, Temperature lies)
    {
        var room = $"a warm room with {setting.Least} or more for the nights";
        return setting.Others is [var (name, least), ..] && least <= lies ? $"{room}, or '{name}', which sets at {lies} too" : room;
    }

    private static IEnumerable<Remark> Of(Setting setting, IReadOnlyList<string> names, LocalDate start)
    {
        var nights = setting.Nights;
        var about = string.Join(", ", names.Take(MostNamed)) + (names.Count > MostNamed ? FormattableString.Invariant($" and {names.Count - MostNamed} more") : "");
        var barred = setting.BarredMonths;
        if (barred.Count > 0)
        {
            var lies = nights.WhereWorkLies(nights.ColdestMonth);
            var later = barred.Count == ShopNights.AllMonths.Count ? "" : $", or work that comes to it in {MonthText.Of(AfterTheCold(barred, start.Month))}";
            yield return new(
                RemarkKind.Nights,
                about,
                $"{about}: too cold for {setting.Name} in {MonthText.Runs(barred)}: it needs {setting.Least} until it has set, and the nights have {lies} at the coldest; it is not planned then",
                Cure(setting, lies) + later);
        }

        List<int> open = [.. ShopNights.AllMonths.Except(barred)];
        List<int> inRoom = [.. open.Where(nights.IsWarmRoomUsed)];
        if (open.Count > 0 && open.Max(setting.FactorIn) is >= Slow and var most)
        {
            var slowest = open.MaxBy(setting.FactorIn);
            var where = inRoom.Count > 0 ? $"; it spends the nights of {MonthText.Runs(inRoom)} in the warm room" : "";
            yield return new(
                RemarkKind.Nights,
                about,
                FormattableString.Invariant($"{about}: {setting.Name} takes up to {most:0.0} times as long as at 20 °C ({MonthText.Of(slowest)}, {nights.WhereWorkLies(slowest)}){where}"),
                "the waits are reckoned so; what the tin says goes before them");
        }

        if (!setting.IsGlue && inRoom.Count > 0)
        {
            yield return new(
                RemarkKind.Nights,
                about,
                $"{about}: {setting.Name} dries in the warm room",
                "no flame and no glowing heater near a wet coat, and moving air, by day and by night");
        }

        if (setting.IsGlue && setting.AssemblyTimeIn(nights.WarmestMonth) is var least && least < setting.AssemblyTime * Short)
        {
            yield return new(
                RemarkKind.Nights,
                about,
                FormattableString.Invariant($"{about}: {setting.Name} leaves {least.Minutes:0.#} min instead of {setting.AssemblyTime.Minutes:0.#} at {nights.InShop(nights.WarmestMonth)}, which {MonthText.Of(nights.WarmestMonth)} has even at night"),
                "glue up in the cool of the morning, in stages, or with a slower glue");
        }

        if (setting.MayBloom)
        {
            yield return new(
                RemarkKind.Nights,
                about,
                FormattableString.Invariant($"{about}: {setting.Name} may turn white, the nights have {nights.Humidity!.Value.Value:0} % humidity"),
                "coat on a dry morning, or where the air is dry until it has hardened");
        }
    }

    /// <summary>The first month after the cold that is on at a time, or that comes next.</summary>
    private static int AfterTheCold(IReadOnlyList<int> barred, int month)
    {
        while (!barred.Contains(month))
        {
            month = MonthText.After(month);
        }

        while (barred.Contains(month))
        {
            month = MonthText.After(month);
        }

        return month;
    }
}
