using System.CommandLine;
using System.Text;
using NodaTime;
using ShopDays.Cli.Files;
using ShopDays.Cli.Terminal;
using ShopDays.Measures;

namespace ShopDays.Cli.Commands;

/// <summary><c>shopdays new</c>: begins a job from a template, and a shop where there is none.</summary>
internal sealed class NewCommand(Screen screen, IClock clock) : IShopCommand
{
    private const string UsualTemplate = "wall-shelf";
    private const int LongestName = 60;

    private readonly Argument<string> name = new("NAME") { Description = "The job's name: letters, figures, hyphens; it becomes the name of the file." };
    private readonly Option<string> from = new("--from") { Description = "The template to begin with: " + string.Join(", ", Templates.JobNames) + ".", DefaultValueFactory = _ => UsualTemplate, HelpName = "TEMPLATE" };
    private readonly Option<string?> folder = new("--shop") { Description = "The shop's folder itself; when left out, where you stand or a shop's folder above it.", HelpName = "FOLDER" };

    /// <inheritdoc/>
    public Command Describe()
    {
        var command = new Command("new", "Begin a job from a template, and a shop file where there is none.\nExample: shopdays new hall-table --from side-table") { name, from, folder };
        command.SetAction(parsed => Begin(
            parsed.GetRequiredValue(name),
            parsed.GetRequiredValue(from),
            parsed.GetValue(folder)));
        return command;
    }

    private int Begin(string job, string template, string? place)
    {
        if (!IsName(job))
        {
            return WrongUse($"{QuotedText.Of(job)} cannot be a job's name; expected up to {LongestName} letters, figures, hyphens and underscores, beginning with a letter or figure");
        }

        if (place is not null && string.IsNullOrWhiteSpace(place))
        {
            return WrongUse("'--shop' needs the name of a folder");
        }

        if (!Templates.JobNames.Contains(template))
        {
            var nearest = NearestName.To(template, Templates.JobNames);
            return WrongUse($"no template is called {QuotedText.Of(template)}; expected {ValueMistakes.AnyOf(Templates.JobNames, "templates")}{(nearest is null ? "" : "; nearest: " + nearest)}");
        }

        // A folder that is named is meant; only without a name is the shop looked for.
        var here = Directory.GetCurrentDirectory();
        var shop = place is null ? ShopFolder.FindFrom(here) ?? new(here) : new(Path.GetFullPath(place));
        var isNew = !File.Exists(Path.Combine(shop.Path, ShopFolder.ShopFileName));
        var path = Path.Combine(shop.Jobs, job + ShopFolder.JobFileEnding);
        if (File.Exists(path) || Directory.Exists(path))
        {
            throw FileTroubleException.Of(path, "is there already; give the new job another name");
        }

        if (isNew)
        {
            Write(Path.Combine(shop.Path, ShopFolder.ShopFileName), Templates.Shop);
        }

        Write(path, Templates.Job(template, Title(job), Today(shop)));
        screen.Out.WriteLine($"See that it is right: shopdays check {job}");
        return ExitCode.Done;
    }

    /// <summary>Today by the shop's clock; by universal time where the shop file has mistakes.</summary>
    private LocalDate Today(ShopFolder shop)
    {
        var zone = ShopFile.Read(shop.Read(ShopFolder.ShopFileName), BuiltIn.Operations, new()).Shop?.Place.Zone ?? DateTimeZone.Utc;
        return clock.GetCurrentInstant().InZone(zone).Date;
    }

    private void Write(string path, string text)
    {
        WholeFile.Save(path, Encoding.UTF8.GetBytes(text), makeFolder: true);
        screen.Out.WriteLine($"Written: {path}");
    }

    private int WrongUse(string what)
    {
        screen.Error.WriteLine(what);
        return ExitCode.WrongUse;
    }

    private static bool IsName(string name) =>
        name.Length is > 0 and <= LongestName && char.IsAsciiLetterOrDigit(name[0]) && name.All(letter => char.IsAsciiLetterOrDigit(letter) || letter is '-' or '_');

    private static string Title(string name)
    {
        var words = name.Replace('-', ' ').Replace('_', ' ');
        return char.ToUpperInvariant(words[0]) + words[1..];
    }
}
