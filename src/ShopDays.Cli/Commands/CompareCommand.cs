using System.CommandLine;
using NodaTime;
using ShopDays.Cli.Files;
using ShopDays.Cli.Files.Variants;
using ShopDays.Cli.Json;
using ShopDays.Cli.Paper.Comparisons;
using ShopDays.Cli.Phrases;
using ShopDays.Cli.Terminal;

namespace ShopDays.Cli.Commands;

/// <summary><c>shopdays compare</c>: ways of doing a job side by side, and the single changes that would save most.</summary>
internal sealed class CompareCommand(Screen screen, IClock clock) : IShopCommand
{
    private readonly Option<string?> file = new("--variants") { Description = "The file of variants; the one beside the job unless given.", HelpName = "FILE" };
    private readonly Option<string[]> typed = new("--variant") { Description = "A variant, such as 'machine: {rip: band saw}'; may be given again.", HelpName = "KEYS" };
    private readonly Option<bool> suggest = new("--suggest") { Description = "Try single changes that the shop could make, and show those that save days or money." };
    private readonly Option<double?> risk = RiskOption.Make();
    private readonly Option<string?> pdf = WrittenTo.AFile("--pdf", "Write the ways side by side, with what each changes and why, to this PDF file.");

    /// <inheritdoc/>
    public Command Describe()
    {
        var command = new JobCommand(screen, clock, "compare", "Compare ways of doing the job: days, dates, hours, timber, cost, and the price at equal risk.", "shopdays compare writing-table --variant 'machine: {rip: band saw}'").ThatPlans();
        command.Command.Add(file);
        command.Command.Add(typed);
        command.Command.Add(suggest);
        command.Command.Add(risk);
        command.Command.Add(pdf);
        command.AnswerWith(asked =>
        {
            WrittenTo.SeeThatItHasAPlace(asked.Parsed.GetValue(pdf));
            return Answer(asked);
        });
        return command.Command;
    }

    private int Answer(Question asked)
    {
        var findings = new Findings();
        var variants = VariantsOf(asked, findings);
        List<(Variant Variant, ShopAndJobReading Reading)> readings = [.. variants.Select(one => (one, asked.Workings.Read.Otherwise(one, clock.GetCurrentInstant())))];
        if (!findings.AreNone || readings.Exists(one => one.Reading.Read is null))
        {
            return SayMistakes(asked, findings.InOrder(), readings);
        }

        if (variants.Count == 0 && !asked.Parsed.GetValue(suggest))
        {
            return SayNoVariants(asked);
        }

        var chance = RiskOption.Of(asked.Parsed, risk);
        var asIs = WayOfDoing.Try("as it is", asked.Workings, chance);
        List<Tried> others = [.. readings.Select(one => WayOfDoing.Try(one.Variant.Name, Otherwise(asked.Workings, one.Variant, one.Reading.Read!), chance))];
        var told = ToldOf(asked, asIs, others, chance);
        if (!asked.Parsed.GetValue(suggest))
        {
            return Tell(asked, told, told, null);
        }

        var suggestions = new Suggestions(asked.Workings, asIs, chance, clock.GetCurrentInstant());
        if (others.Count > 0)
        {
            PrintOrNot(asked, told);
        }

        var best = told with { Others = suggestions.Best(), Suggested = suggestions.Count };
        return Tell(asked, best with { Others = [.. asked.AsJson ? others : [], .. best.Others] }, told, best);
    }

    private static Workings Otherwise(Workings workings, Variant variant, ShopAndJob read) =>
        workings.Otherwise(read, variant.Job is null ? workings.Layout : null, workings.Schedules, workings.Courses);

    private IReadOnlyList<Variant> VariantsOf(Question asked, Findings findings)
    {
        var (read, given, keys) = (asked.Workings.Read, asked.Parsed.GetValue(file), asked.Parsed.GetValue(typed) ?? []);
        var beside = VariantsFile.PathFor(Path.Combine(read.Folder.Path, read.JobFileName));
        var path = given is null ? beside : Path.Combine(Directory.GetCurrentDirectory(), given);

        // Without being named, the file beside the job is left alone where something else is asked for.
        var isRead = given is not null || (keys.Length == 0 && !asked.Parsed.GetValue(suggest) && File.Exists(beside));
        return
        [
            .. isRead ? VariantsFile.Read(read.Folder.Read(path), findings) : [],
            .. keys.Index().Select(one => VariantsFile.ReadTyped(one.Item, keys.Length == 1 ? "--variant" : FormattableString.Invariant($"--variant {one.Index + 1}"), findings)).OfType<Variant>(),
        ];
    }

    private static ToldComparison ToldOf(Question asked, Tried asIs, IReadOnlyList<Tried> others, double chance) => new()
    {
        Read = asked.Workings.Read,
        AsIs = asIs,
        Others = others,
        Risk = chance,
        Behind = asked.Workings.Rates.Behind,
        Seed = asked.Workings.Seed,
        IsBegun = asked.Workings.Rates.EntriesOf(asked.Workings.Read).Count > 0,
    };

    private static void PrintOrNot(Question asked, ToldComparison told)
    {
        if (!asked.AsJson)
        {
            ComparisonPrint.Print(asked.Screen, told);
            asked.Screen.Out.WriteLine();
        }
    }

    private int Tell(Question asked, ToldComparison told, ToldComparison wanted, ToldComparison? suggested)
    {
        if (asked.AsJson)
        {
            JsonAnswer.Write(asked.Screen.Out, ComparisonJson.Of(told));
        }

        PrintOrNot(asked, told);
        Save(asked, wanted, suggested);
        return told.AsIs.Outcome is null && told.Others.All(one => one.Outcome is null) ? ExitCode.No : ExitCode.Done;
    }

    private void Save(Question asked, ToldComparison wanted, ToldComparison? suggested)
    {
        if (asked.Parsed.GetValue(pdf) is not { } path)
        {
            return;
        }

        var now = clock.GetCurrentInstant();
        WholeFile.Save(path, ComparisonBook.Set(wanted, suggested, now.InZone(wanted.Read.Shop.Place.Zone).Date, now));
        if (!asked.AsJson)
        {
            asked.Screen.Out.WriteLine($"Written: {path}");
        }
    }

    /// <summary>Says what is wrong with the variants, and with what the job or the shop would be by each; a mistake of several is said once.</summary>
    private int SayMistakes(Question asked, IReadOnlyList<Finding> own, IReadOnlyList<(Variant Variant, ShopAndJobReading Reading)> readings)
    {
        List<Finding> said = [.. own];
        foreach (var finding in own)
        {
            screen.Located(screen.Error, finding.Place.ToString(), finding.Message);
        }

        foreach (var (variant, reading) in readings)
        {
            foreach (var finding in reading.Findings)
            {
                screen.Located(screen.Error, finding.Place.ToString(), $"{finding.Message}; so it is in the variant {Measures.QuotedText.Of(variant.Name)}");
            }

            said.AddRange(reading.Findings);
        }

        screen.Error.WriteLine($"{CountWords.Of(said.Count, "mistake")}; nothing was worked out or written");
        if (asked.AsJson)
        {
            JsonAnswer.Write(asked.Screen.Out, RefusalJson.Of(said));
        }

        return ExitCode.No;
    }

    private int SayNoVariants(Question asked)
    {
        var name = VariantsFile.PathFor(asked.Workings.Read.JobFileName);
        screen.Wrapped(screen.Error, $"there is nothing to compare: {name} is not there, and no variant was typed; expected such a file, --variant 'machine: {{rip: band saw}}', or --suggest");
        if (asked.AsJson)
        {
            JsonAnswer.Write(asked.Screen.Out, new { Missing = "variants" });
        }

        return ExitCode.No;
    }
}
