using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using NodaTime;
using ShopDays.Cli.Store;
using ShopDays.Days;
using ShopDays.Logbook;
using ShopDays.Measures;

namespace ShopDays.Cli.Commands.Logging;

/// <summary>The options that several commands of the log have.</summary>
internal static class LogOptions
{
    public static Option<string?> Worker() => new("--worker") { Description = "Who worked; the shop's first worker unless given.", HelpName = "NAME" };

    public static Option<string?> Note() => new("--note") { Description = "A remark to keep with it.", HelpName = "TEXT" };

    public static Option<string?> Stopped(string description = "Where you stopped, and what comes first next time: it is shown before the next session.") => new("--stopped")
    {
        Description = description,
        HelpName = "TEXT",
        CustomParser = typed =>
        {
            var text = typed.Tokens[0].Value.Trim();
            if (StoppedText.Complaint(text) is not { } complaint)
            {
                return text;
            }

            typed.AddError($"--stopped: {complaint}");
            return null;
        },
    };

    public static Option<string?> Why() => new("--why") { Description = "The reason, to be kept with what was before.", HelpName = "TEXT" };

    public static Option<bool> Json() => new("--json") { Description = "Print the answer for other programs." };

    public static Option<bool> Quiet() => new("--quiet", "-q") { Description = "Print nothing but complaints." };

    public static Option<LocalDate?> On() => Read<LocalDate>("--on", "The date; today unless given.", "DATE", DateText.Read);

    public static Option<WorkTime?> Took(string description) => new("--took")
    {
        Description = description,
        HelpName = "TIME",
        CustomParser = typed =>
        {
            if (ReadTook(typed.Tokens[0].Value, out var took) is not { } complaint)
            {
                return took;
            }

            typed.AddError($"--took: {complaint}");
            return null;
        },
    };

    public static Option<double?> Quantity() => Figure("--quantity", "How much of the task's unit was done, where it is not finished.", "quantity", number => number > 0, "above zero", EntryLimits.MostOfAUnit);

    public static Option<double?> Setups() => Figure("--setups", "With --timed: how often it was set up within the time; once unless given.", "number of setups", number => number >= 0, "of zero or more", EntryLimits.MostSetups);

    public static Option<string?> Setback()
    {
        string[] words = [.. LogWords.Setbacks.Select(one => one.Word)];
        return new("--setback")
        {
            Description = "What made it take longer: " + string.Join(", ", words) + ".",
            HelpName = "WHAT",
            CustomParser = typed =>
            {
                var word = LogWords.Hyphened(typed.Tokens[0].Value);
                if (words.Contains(word, StringComparer.Ordinal))
                {
                    return word;
                }

                typed.AddError($"--setback: {LogShop.Unknown("setback", typed.Tokens[0].Value, words, "setbacks")}");
                return null;
            },
        };
    }

    /// <summary>The setback of a word; none where nothing is said.</summary>
    public static Setback SetbackOf(string? word) => word is null ? Logbook.Setback.None : LogWords.ValueOf(LogWords.Setbacks, word);

    public static Argument<EntryId> Number() => new("NUMBER")
    {
        Description = "The number of the entry, as shopdays log list shows it.",
        CustomParser = typed =>
        {
            var text = typed.Tokens[0].Value;
            if (long.TryParse(text.TrimStart('#'), NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number > 0)
            {
                return new(number);
            }

            typed.AddError($"{QuotedText.Of(text)} is no number of an entry; expected a whole number such as 12, as shopdays log list shows it");
            return default;
        },
    };

    /// <summary>Reads a time at the task: above zero.</summary>
    /// <returns>What is wrong with it; null for nothing.</returns>
    public static string? ReadTook(string text, out WorkTime took)
    {
        var read = WorkTimeText.Read(text);
        took = read.IsRead ? read.Value : WorkTime.Zero;
        return read switch
        {
            { IsRead: false, Fault: var fault } => $"{fault.What}; expected {fault.Expected}",
            _ when took == WorkTime.Zero => $"{QuotedText.Of(text)} is no time at all; expected more than zero, such as 45m",
            _ => null,
        };
    }

    private static Option<double?> Figure(string name, string description, string what, Func<double, bool> isFit, string from, double most) => new(name)
    {
        Description = description,
        HelpName = "NUMBER",
        CustomParser = typed =>
        {
            if (TypedNumber.TryRead(typed.Tokens[0].Value, out var number) && isFit(number) && number <= most)
            {
                return number;
            }

            typed.AddError(string.Create(CultureInfo.InvariantCulture, $"{QuotedText.Of(typed.Tokens[0].Value)} is no {what}; expected a number {from}, at most {most:#,0}"));
            return null;
        },
    };

    /// <summary>An option whose value a reader of the library makes of a text.</summary>
    public static Option<T?> Read<T>(string name, string description, string help, Func<string, TextResult<T>> read)
        where T : struct => new(name)
        {
            Description = description,
            HelpName = help,
            CustomParser = typed => Parse(typed, name, read),
        };

    private static T? Parse<T>(ArgumentResult typed, string name, Func<string, TextResult<T>> read)
        where T : struct
    {
        var result = read(typed.Tokens[0].Value);
        if (result.IsRead)
        {
            return result.Value;
        }

        typed.AddError($"{name}: {result.Fault.What}; expected {result.Fault.Expected}");
        return null;
    }
}
