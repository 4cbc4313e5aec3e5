using NodaTime;
using ShopDays.Choices;
using ShopDays.Cli.Files;
using ShopDays.Cli.Files.Jobs;
using ShopDays.Cli.Phrases;
using ShopDays.Days;
using ShopDays.Measures;
using ShopDays.Parts;
using ShopDays.Times;
using ShopDays.Work;

namespace ShopDays.Cli.Commands;

/// <summary>
/// The single changes that a shop could make to a job: machines that it can get at, a helper on a further day, an hour more
/// on a day, hidden faces left rougher, a spare blank, boards bought planed, another glue. Each is written as the keys of a variant, and
/// read and worked out like one that a maker wrote.
/// </summary>
/// <param name="read">The shop and the job as it is.</param>
/// <param name="asIs">What it comes to.</param>
/// <param name="faces">What rougher hidden faces save.</param>
internal sealed class SingleChanges(ShopAndJob read, Outcome asIs, FaceSavings faces)
{
    private const int MostSpares = 2;

    /// <summary>Work of less than this is not worth a machine's being set up for it.</summary>
    private static readonly WorkTime Noticeable = WorkTime.FromMinutes(15);

    private static readonly IsoDayOfWeek[] Days = [IsoDayOfWeek.Monday, IsoDayOfWeek.Tuesday, IsoDayOfWeek.Wednesday, IsoDayOfWeek.Thursday, IsoDayOfWeek.Friday, IsoDayOfWeek.Saturday, IsoDayOfWeek.Sunday];

    /// <summary>All of them.</summary>
    public IReadOnlyList<SingleChange> All() => [.. Machines(), .. HelperDays(), .. LongerDays(), .. RougherFaces(), .. Spares(), .. PlanedBoards(), .. Glues()];

    private IEnumerable<SingleChange> Machines()
    {
        foreach (var machine in read.Shop.Machines)
        {
            List<string> names =
            [
                .. asIs.Estimate.Operations
                    .GroupBy(one => one.Operation, StringComparer.Ordinal)
                    .Where(one => one.Aggregate(WorkTime.Zero, (sum, time) => sum + time.Time.Mean) >= Noticeable)
                    .Select(one => one.Key)
                    .Where(name => read.Operations.TryFind(name, out var operation)
                        && operation.Methods.Any(method => IsCalled(method, machine))
                        && !IsCalled(operation.MethodIn(read.Job), machine)),
            ];
            foreach (var name in names)
            {
                yield return new($"{name} by {machine}", $"machine: {{{Quoted(name)}: {Quoted(machine)}}}");
            }

            if (names.Count > 1)
            {
                yield return new($"{machine} for all that it can do here", $"machine: {{{string.Join(", ", names.Select(name => $"{Quoted(name)}: {Quoted(machine)}"))}}}");
            }
        }

        static bool IsCalled(Method method, string machine) => string.Equals(method.Name, machine, StringComparison.OrdinalIgnoreCase);
    }

    /// <summary>The first stretch of a day of the maker's on which the first helper does not come.</summary>
    private IEnumerable<SingleChange> HelperDays() => read.Shop.Workers is not [_, { Week: { } theirs } helper, ..]
        ? []
        : from day in Days
          where read.Shop.Week[day].Items.Length > 0 && theirs[day].Items.Length == 0
          let hours = read.Shop.Week[day].Items[0].ToString()
          select new SingleChange($"{helper.Name} on {day} too, {hours}", $"helper: {{{Key(day)}: [\"{hours}\"]}}");

    private IEnumerable<SingleChange> LongerDays()
    {
        foreach (var day in Days)
        {
            if (read.Shop.Week[day].Items is [.., { EndWithTheDay: false } last] all && last.To.Hour < 23)
            {
                var longer = DayHours.Between(last.From, last.To.PlusHours(1));
                var hours = all.SkipLast(1).Append(longer).Select(one => $"\"{one}\"");
                yield return new($"an hour more on {day}, to {longer.ToString().Split('-')[1]}", $"sessions: {{{Key(day)}: [{string.Join(", ", hours)}]}}");
            }
        }
    }

    private IEnumerable<SingleChange> RougherFaces() => faces.Further.Select(one => new SingleChange(
        $"hidden faces left from the {SurfaceWords.Of(one.Standard)} plane: {string.Join(", ", one.Faces.Select(face => face.Part.Name).Distinct())}",
        $"parts: {{{string.Join(", ", one.Faces.Select(face => $"{Quoted(face.Part.Name)}: {{surface: {{{SurfaceWords.Of(face.Surface)}: {SurfaceWords.Of(one.Standard)}}}}}"))}}}"));

    private IEnumerable<SingleChange> Spares() => (asIs.Spoiling?.Spares ?? []).Take(MostSpares).Select(one => one.Part).Select(name => new SingleChange(
        $"a spare blank of {name}",
        $"parts: {{{Quoted(name)}: {{spare: {CountWords.Number(1 + read.Job.Parts.Where(part => part.Name == name).Sum(part => part.Spare))}}}}}"));

    private IEnumerable<SingleChange> PlanedBoards()
    {
        List<string> rough = [.. read.Stock.Where(board => board.Faces != BoardFaces.Planed).Select(board => board.Line ?? board.Name).Distinct()];
        return rough.Count == 0 ? [] : [new("boards bought planed, at the same price", $"stock: {{{string.Join(", ", rough.Select(name => $"{Quoted(name)}: {{faces: planed}}"))}}}")];
    }

    private IEnumerable<SingleChange> Glues() => OtherGlues.Of(read).Select(one => new SingleChange(
        $"{one.Other.Name} in place of {one.Own.Name}",
        $"job: {{glue-ups: {{{string.Join(", ", one.GlueUps.Select(name => $"{Quoted(name)}: {{adhesive: {Quoted(one.Other.Name)}}}"))}}}}}"));

    private static string Key(IsoDayOfWeek day) => day.ToString().ToLowerInvariant();

    /// <summary>A name as YAML takes it: in quotes where it has a sign that may mean something.</summary>
    private static string Quoted(string name) => char.IsLetter(name[0]) && name.All(one => char.IsLetterOrDigit(one) || one is ' ' or '-' or '/')
        && !(name.ToUpperInvariant() is "NULL" or "TRUE" or "FALSE" or "YES" or "NO")
        ? name
        : $"\"{name.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal)}\"";
}
