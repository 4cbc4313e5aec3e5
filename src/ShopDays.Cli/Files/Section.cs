using ShopDays.Cli.Files.Yaml;
using ShopDays.Measures;

namespace ShopDays.Cli.Files;

/// <summary>Reads one value: what it is, or that it is wrong, which has then been reported.</summary>
internal delegate Field<T> ValueReader<T>(YamlNode node, Reading reading);

/// <summary>
/// The keys of one section while they are read. Every key that is asked for is a valid key: the list in a message about
/// an unknown key is made of the very questions that read the section, so it cannot go stale.
/// </summary>
internal sealed class Section
{
    private readonly HashSet<string> written;
    private readonly Dictionary<string, YamlEntry> unread;
    private readonly List<string> valid = [];
    private readonly List<(string Key, string Expected)> missed = [];
    private readonly string name;

    private Section(YamlMap map, string name, Reading reading)
    {
        (this.name, Place, Reading) = (name, map.Place, reading);
        written = [.. map.Entries.Select(entry => entry.Key.Value)];
        unread = map.Entries.ToDictionary(entry => entry.Key.Value, StringComparer.Ordinal);
    }

    /// <summary>Where it begins.</summary>
    public Place Place { get; }

    /// <summary>What is known while it is read; may be made more exact by its first keys.</summary>
    public Reading Reading { get; set; }

    /// <summary>Where mistakes go.</summary>
    public Findings Findings => Reading.Findings;

    /// <summary>Whether every line of every list so far was a section; otherwise names may be missing that are meant.</summary>
    public bool AllLinesAreRead { get; private set; } = true;

    /// <summary>Opens a section.</summary>
    /// <param name="node">What should be keys with values.</param>
    /// <param name="name">What it is, with its article: <c>a stock line</c>.</param>
    /// <param name="reading">What is known.</param>
    /// <returns>The section; null when it is something else, which has been reported.</returns>
    public static Section? Open(YamlNode node, string name, Reading reading)
    {
        if (node is YamlMap map)
        {
            return new(map, name, reading);
        }

        reading.Findings.Add(node is YamlText { IsLeftOut: true }
            ? ValueMistakes.NothingWritten(node.Place, $"the keys of {name}")
            : ValueMistakes.NotKeys(node.Place, node.Shape, name));
        return null;
    }

    /// <summary>Whether a key is written, right or wrong.</summary>
    public bool Has(string key) => written.Contains(key);

    /// <summary>Reads a key that may be left out.</summary>
    public Field<T> Optional<T>(string key, ValueReader<T> read)
    {
        valid.Add(key);
        return unread.Remove(key, out var entry) ? read(entry.Value, Reading) : Field<T>.Missing(Place);
    }

    /// <summary>Reads a key that may be left out, and then means a certain value.</summary>
    public T Optional<T>(string key, ValueReader<T> read, T usual) => Optional(key, read).Or(usual);

    /// <summary>Reads a key that must be there.</summary>
    /// <param name="key">The key.</param>
    /// <param name="read">How it is read.</param>
    /// <param name="expected">What its value is, with an example; stands in the message when it is missing.</param>
    public Field<T> Required<T>(string key, ValueReader<T> read, string expected)
    {
        var field = Optional(key, read);
        if (!field.IsWritten)
        {
            missed.Add((key, expected));
        }

        return field;
    }

    /// <summary>Reads a section within this one, and closes it; null when it is not there or no section.</summary>
    public T? Inner<T>(string key, string innerName, Func<Section, T> read)
        where T : class =>
        Optional<T>(key, (node, reading) =>
        {
            if (Open(node, innerName, reading) is not { } inner)
            {
                return Field<T>.Wrong(node.Place);
            }

            var value = read(inner);
            inner.Close();
            return Field<T>.Read(node.Place, value);
        }).Value;

    /// <summary>Reads a list of sections, and closes each; empty when it is not there or no list.</summary>
    /// <param name="key">The key.</param>
    /// <param name="lineName">What each line is, with its article.</param>
    /// <param name="read">How a line is read.</param>
    /// <param name="mayBeEmpty">Whether the key may stand there with nothing behind it.</param>
    public IReadOnlyList<T> Lines<T>(string key, string lineName, Func<Section, T?> read, bool mayBeEmpty = false)
        where T : class =>
        Optional<IReadOnlyList<T>>(key, (node, reading) =>
        {
            if (mayBeEmpty && node is YamlText { IsLeftOut: true })
            {
                return Field<IReadOnlyList<T>>.Read(node.Place, []);
            }

            if (node is not YamlList list)
            {
                reading.Findings.Add(node is YamlText { IsLeftOut: true }
                    ? ValueMistakes.NothingWritten(node.Place, $"a list, each line of it {lineName}")
                    : ValueMistakes.NotAList(node.Place, node.Shape, lineName));
                AllLinesAreRead = false;
                return Field<IReadOnlyList<T>>.Wrong(node.Place);
            }

            var lines = new List<T>();
            foreach (var item in list.Items)
            {
                if (Open(item, lineName, reading) is not { } line)
                {
                    AllLinesAreRead = false;
                    continue;
                }

                var value = read(line);
                line.Close();
                if (value is not null)
                {
                    lines.Add(value);
                }
            }

            return Field<IReadOnlyList<T>>.Read(node.Place, lines);
        }).Or([]);

    /// <summary>Reports what was missed and what is left over. A missing key that stands there misspelt is said once.</summary>
    public void Close()
    {
        foreach (var (key, entry) in unread)
        {
            var nearest = NearestName.To(key, valid);
            missed.RemoveAll(one => one.Key == nearest);
            Findings.Add(ValueMistakes.UnknownKey(entry.Key.Place, key, name, valid));
        }

        foreach (var (key, expected) in missed)
        {
            Findings.Add(ValueMistakes.KeyMissing(Place, key, name, expected));
        }
    }
}
