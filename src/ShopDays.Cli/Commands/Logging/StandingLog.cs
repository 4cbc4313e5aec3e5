using System.CommandLine;
using NodaTime;
using ShopDays.Cli.Phrases;
using ShopDays.Cli.Store;
using ShopDays.Cli.Terminal;
using ShopDays.Logbook;

namespace ShopDays.Cli.Commands.Logging;

/// <summary><c>shopdays log keep</c> and <c>shopdays log unusual</c>: the maker's answer where a time looks odd.</summary>
internal sealed class StandingLog(Screen screen, IClock clock, string name, Standing standing, string description)
{
    private readonly Argument<EntryId[]> numbers = new("NUMBER")
    {
        Description = "The numbers of the entries, as shopdays log list shows them.",
        Arity = ArgumentArity.OneOrMore,
        CustomParser = typed =>
        {
            var read = typed.Tokens.Select(token => long.TryParse(token.Value, System.Globalization.NumberStyles.None, System.Globalization.CultureInfo.InvariantCulture, out var number) ? number : 0).ToList();
            if (read.Contains(0))
            {
                typed.AddError("entries are named by whole numbers such as 12, as shopdays log list shows them");
            }

            return [.. read.Select(number => new EntryId(number))];
        },
    };

    private readonly Option<string?> why = LogOptions.Why();
    private readonly Option<bool> quiet = LogOptions.Quiet();

    public Command Describe()
    {
        var command = new Command(name, $"{description}\nExample: shopdays log {name} 12") { numbers, why, quiet };
        command.SetAction(parsed =>
        {
            if (LogShop.Read(screen) is not { } shop)
            {
                return ExitCode.No;
            }

            using var log = ShopLog.OpenToRead(shop.Folder);
            var all = parsed.GetRequiredValue(numbers);
            var missing = all.Where(id => log?.Find(id) is null).ToList();
            if (missing.Count > 0)
            {
                missing.ForEach(id => EntryAnswer.SayNone(screen, id));
                screen.Error.WriteLine("nothing was changed");
                return ExitCode.No;
            }

            foreach (var id in all)
            {
                if (log!.Change(id, entry => entry with { Standing = standing }, clock.GetCurrentInstant(), parsed.GetValue(why) ?? "") is { } change && !parsed.GetValue(quiet))
                {
                    screen.Wrapped($"{LogPhrases.Of(change.After)}: {LogPhrases.Of(standing)}.");
                }
            }

            return ExitCode.Done;
        });
        return command;
    }
}
