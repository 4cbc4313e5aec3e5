using System.Text;
using System.Text.RegularExpressions;
using NodaTime;
using NodaTime.Text;

namespace ShopDays.Cli.Files;

/// <summary>The files that a new shop or job begins with. They are part of the program.</summary>
internal static partial class Templates
{
    private const string Prefix = "templates/";
    private const string Ending = ".yaml";
    private const string ShopName = "shop";

    /// <summary>The job templates, in ordinal order.</summary>
    public static IReadOnlyList<string> JobNames { get; } =
    [
        .. typeof(Templates).Assembly.GetManifestResourceNames()
            .Where(name => name.StartsWith(Prefix, StringComparison.Ordinal))
            .Select(name => name[Prefix.Length..^Ending.Length])
            .Where(name => name != ShopName)
            .Order(StringComparer.Ordinal),
    ];

    /// <summary>A shop file to begin with.</summary>
    public static string Shop => Read(ShopName);

    /// <summary>A job of its own made of a template.</summary>
    /// <param name="template">One of <see cref="JobNames"/>.</param>
    /// <param name="title">The name of the piece.</param>
    /// <param name="start">The first day of work.</param>
    public static string Job(string template, string title, LocalDate start)
    {
        var text = TitleLine().Replace(Read(template), "job: " + title, 1);
        return StartLine().Replace(text, "start: " + LocalDatePattern.Iso.Format(start), 1);
    }

    private static string Read(string name)
    {
        using var stream = typeof(Templates).Assembly.GetManifestResourceStream(Prefix + name + Ending)
            ?? throw new ArgumentException($"no template is called '{name}'", nameof(name));
        using var reader = new StreamReader(stream, Encoding.UTF8);
        return reader.ReadToEnd();
    }

    [GeneratedRegex("^job: .*$", RegexOptions.Multiline | RegexOptions.CultureInvariant)]
    private static partial Regex TitleLine();

    [GeneratedRegex("^start: [0-9-]+", RegexOptions.Multiline | RegexOptions.CultureInvariant)]
    private static partial Regex StartLine();
}
