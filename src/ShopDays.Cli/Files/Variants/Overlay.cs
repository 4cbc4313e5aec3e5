using System.Diagnostics.CodeAnalysis;
using ShopDays.Cli.Files.Yaml;

namespace ShopDays.Cli.Files.Variants;

/// <summary>
/// Lays keys over the keys of a file: sections key by key, lines of a list by their names where keys stand over a list, and
/// anything else in place of what is there. A key with nothing behind it takes the key, or the line, away, and what a meter
/// said takes the place of what it said before, in whichever way either is written. What comes out is read like any file,
/// and each piece still knows the file that it is from.
/// </summary>
internal static class Overlay
{
    /// <summary>Stands for a line more under <c>outside</c>; no key that can be written, for it has a space.</summary>
    public const string CostsBesides = "costs besides";

    /// <summary>Stands for the hours of the shop's first helper, who is taken on where there is none.</summary>
    public const string HelperHours = "helper's hours";

    private const string Maker = "maker";
    private const string Helper = "helper";

    /// <summary>The key by which the lines of a list are named.</summary>
    private static readonly Dictionary<string, string> NamedBy = new(StringComparer.Ordinal)
    {
        ["stock"] = "board",
        ["parts"] = "part",
        ["glue-ups"] = "glue-up",
        ["finish"] = "finish",
        ["work"] = "task",
        ["hardware"] = "hardware",
        ["outside"] = "work",
        ["workers"] = "name",
    };

    /// <summary>Keys of a section that say one thing in two ways: those of the one take those of the other away.</summary>
    private static readonly Dictionary<string, (string[] One, string[] Other)> SaidInTwoWays = new(StringComparer.Ordinal)
    {
        ["drying"] = (["moisture", "read"], ["readings"]),
    };

    /// <summary>Lays keys over a file.</summary>
    /// <param name="file">The file; null where it could not be read.</param>
    /// <param name="keys">What is laid over it; null for nothing.</param>
    /// <param name="findings">Where mistakes go.</param>
    [return: NotNullIfNotNull(nameof(file))]
    public static YamlNode? On(YamlNode? file, YamlMap? keys, Findings findings) =>
        file is YamlMap map && keys is not null ? Merged(map, keys, findings) : file;

    private static YamlMap Merged(YamlMap under, YamlMap over, Findings findings)
    {
        var entries = under.Entries.ToList();
        foreach (var entry in over.Entries)
        {
            var at = entries.FindIndex(one => one.Key.Value == entry.Key.Value);
            if (entry.Key.Value == CostsBesides)
            {
                AddLine(entries, "outside", entry.Value);
            }
            else if (entry is { Key.Value: HelperHours, Value: YamlMap hours })
            {
                CallInHelper(entries, hours, findings);
            }
            else if (at < 0)
            {
                entries.Add(entry);
            }
            else if (entry.Value is YamlText { IsLeftOut: true })
            {
                entries.RemoveAt(at);
            }
            else
            {
                entries[at] = new(entry.Key, Laid(entries[at].Value, entry.Value, entry.Key, findings));
            }
        }

        return new(under.Place, entries);
    }

    private static void AddLine(List<YamlEntry> entries, string list, YamlNode line)
    {
        var at = entries.FindIndex(one => one.Key.Value == list);
        if (at < 0)
        {
            entries.Add(new(new(line.Place, list), new YamlList(line.Place, [line])));
        }
        else if (entries[at].Value is YamlList lines)
        {
            entries[at] = entries[at] with { Value = new YamlList(lines.Place, [.. lines.Items, line]) };
        }
    }

    /// <summary>The second of the workers is the helper; a maker who works alone takes one on.</summary>
    private static void CallInHelper(List<YamlEntry> entries, YamlMap hours, Findings findings)
    {
        var at = entries.FindIndex(one => one.Key.Value == "workers");
        if (at < 0)
        {
            AddLine(entries, "workers", WorkerCalled(Maker, hours.Place, []));
            at = entries.Count - 1;
        }

        if (entries[at].Value is not YamlList { Items.Count: > 0 } workers)
        {
            return;
        }

        var (maker, others) = (workers.Items[0], workers.Items.Skip(1).ToArray());
        // A helper without hours of their own keeps the shop's.
        var theirs = others is [YamlMap { } one, ..] && one.Entries.All(entry => entry.Key.Value != "hours") && entries.Find(entry => entry.Key.Value == "week")?.Value is YamlMap week
            ? Merged(week, hours, findings)
            : hours;
        var hoursEntry = new YamlEntry(new(hours.Place, "hours"), theirs);
        entries[at] = entries[at] with
        {
            Value = others is [YamlMap helper, ..]
                ? new YamlList(workers.Place, [maker, Merged(helper, new(hours.Place, [hoursEntry]), findings), .. others.Skip(1)])
                : new YamlList(workers.Place, [maker, WorkerCalled(Helper, hours.Place, [hoursEntry])]),
        };
    }

    private static YamlMap WorkerCalled(string name, Place place, YamlEntry[] more) => new(place, [new(new(place, "name"), new YamlText(place, name)), .. more]);

    private static YamlNode Laid(YamlNode under, YamlNode over, YamlText key, Findings findings) => (under, over) switch
    {
        (YamlMap section, YamlMap keys) => Merged(WithoutTheOtherWay(section, keys, key.Value), keys, findings),
        (YamlList list, YamlMap lines) => ByName(list, lines, key, findings),
        _ => over,
    };

    private static YamlMap WithoutTheOtherWay(YamlMap under, YamlMap over, string section)
    {
        if (!SaidInTwoWays.TryGetValue(section, out var ways))
        {
            return under;
        }

        string[] gone = [.. Says(ways.One) ? ways.Other : [], .. Says(ways.Other) ? ways.One : []];
        return new(under.Place, [.. under.Entries.Where(entry => !gone.Contains(entry.Key.Value) || Names(entry.Key.Value))]);

        bool Names(string key) => over.Entries.Any(entry => entry.Key.Value == key);

        bool Says(string[] keys) => over.Entries.Any(entry => keys.Contains(entry.Key.Value) && entry.Value is not YamlText { IsLeftOut: true });
    }

    private static YamlList ByName(YamlList under, YamlMap over, YamlText key, Findings findings)
    {
        if (!NamedBy.TryGetValue(key.Value, out var naming))
        {
            findings.Add(VariantMistakes.NoLinesByName(key.Place, key.Value, [.. NamedBy.Keys]));
            return under;
        }

        var lines = under.Items.ToList();
        foreach (var entry in over.Entries)
        {
            var at = lines.FindIndex(line => NameOf(line, naming) == entry.Key.Value);
            switch (at, entry.Value)
            {
                case (< 0, _):
                    findings.Add(VariantMistakes.NoSuchLine(entry.Key.Place, entry.Key.Value, key.Value, [.. under.Items.Select(line => NameOf(line, naming)).OfType<string>()]));
                    break;
                case (_, YamlText { IsLeftOut: true }):
                    lines.RemoveAt(at);
                    break;
                default:
                    lines[at] = Laid(lines[at], entry.Value, entry.Key, findings);
                    break;
            }
        }

        return new(under.Place, lines);
    }

    private static string? NameOf(YamlNode line, string naming) =>
        (line as YamlMap)?.Entries.FirstOrDefault(entry => entry.Key.Value == naming)?.Value is YamlText name ? name.Value.Trim() : null;
}
