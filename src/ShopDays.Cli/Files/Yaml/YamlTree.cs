using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace ShopDays.Cli.Files.Yaml;

/// <summary>Builds nodes from the parser's events.</summary>
/// <param name="file">The file's name for the maker.</param>
/// <param name="parser">Where the events come from.</param>
/// <param name="findings">Where mistakes go.</param>
internal sealed class YamlTree(string file, Parser parser, Findings findings)
{
    public const int Deepest = 32;
    public const int MostAliases = 100;

    /// <summary>The most nodes in all, repetition counted: as many as a file of the largest size can hold in earnest.</summary>
    public const int MostNodes = 100_000;

    private readonly Dictionary<string, YamlNode> marked = new(StringComparer.Ordinal);
    private readonly HashSet<string> open = new(StringComparer.Ordinal);
    private int aliases;
    private int repeated;

    /// <summary>Goes on to the next event that says something.</summary>
    public ParsingEvent Next()
    {
        do
        {
            MoveOn();
        }
        while (parser.Current is StreamStart or Comment);

        return parser.Current!;
    }

    /// <summary>Where an event begins.</summary>
    public Place PlaceOf(ParsingEvent one) => new(file, (int)one.Start.Line, (int)one.Start.Column);

    /// <summary>Reads the node that the current event begins; null when the file cannot be read further in earnest.</summary>
    public YamlNode? ReadNode(int depth)
    {
        if (Next() is AnchorAlias alias)
        {
            return Repeat(alias, depth);
        }

        return ReadCurrent(depth);
    }

    private void MoveOn()
    {
        var at = parser.Current?.End ?? Mark.Empty;
        try
        {
            if (!parser.MoveNext())
            {
                throw new YamlException(at, at, "the end");
            }
        }
        catch (InvalidOperationException fault)
        {
            // The parser meets a key in an open bracket so, not with an exception of its own.
            throw new YamlException(at, at, "in a flow", fault);
        }
    }

    private YamlNode? ReadCurrent(int depth)
    {
        if (parser.Current is not NodeEvent begin)
        {
            // The parser lets some values pass that are none, such as a second colon in a bracket.
            throw new YamlException(parser.Current!.Start, parser.Current.End, "in a flow");
        }

        var place = PlaceOf(begin);
        if (depth > Deepest)
        {
            findings.Add(YamlMistakes.TooDeep(place, Deepest));
            return null;
        }

        if (!begin.Tag.IsEmpty && !begin.Tag.IsNonSpecific)
        {
            findings.Add(YamlMistakes.TagWithoutMeaning(place, begin.Tag.Value));
        }

        var anchor = begin.Anchor.IsEmpty ? null : begin.Anchor.Value;
        if (anchor is not null)
        {
            open.Add(anchor);
        }

        YamlNode? node = begin switch
        {
            Scalar scalar => new YamlText(place, scalar.Value) { IsQuoted = scalar.Style is not ScalarStyle.Plain },
            SequenceStart => ReadList(place, depth),
            MappingStart => ReadMap(place, depth),
            _ => throw new System.Diagnostics.UnreachableException(),
        };
        if (anchor is not null && node is not null)
        {
            open.Remove(anchor);
            marked[anchor] = node;
        }

        return node;
    }

    private YamlList? ReadList(Place place, int depth)
    {
        var items = new List<YamlNode>();
        while (Next() is not SequenceEnd)
        {
            if ((parser.Current is AnchorAlias alias ? Repeat(alias, depth + 1) : ReadCurrent(depth + 1)) is not { } item)
            {
                return null;
            }

            items.Add(item);
        }

        return new(place, items);
    }

    private YamlMap? ReadMap(Place place, int depth)
    {
        var entries = new List<YamlEntry>();
        var seen = new Dictionary<string, Place>(StringComparer.Ordinal);
        while (Next() is not MappingEnd)
        {
            if ((parser.Current is AnchorAlias alias ? Repeat(alias, depth + 1) : ReadCurrent(depth + 1)) is not { } key
                || ReadNode(depth + 1) is not { } value)
            {
                return null;
            }

            if (key is not YamlText name)
            {
                findings.Add(YamlMistakes.KeyIsNoText(key.Place, key.Shape));
            }
            else if (seen.TryGetValue(name.Value, out var first))
            {
                findings.Add(YamlMistakes.KeyTwice(name.Place, name.Value, first));
            }
            else
            {
                seen.Add(name.Value, name.Place);
                entries.Add(new(name, value));
            }
        }

        return new(place, entries);
    }

    private YamlNode? Repeat(AnchorAlias alias, int depth)
    {
        var place = PlaceOf(alias);
        var name = alias.Value.Value;
        if (++aliases > MostAliases)
        {
            findings.Add(YamlMistakes.TooManyAliases(place, MostAliases));
            return null;
        }

        if (open.Contains(name))
        {
            findings.Add(YamlMistakes.AliasInItself(place, name));
            return null;
        }

        if (!marked.TryGetValue(name, out var node))
        {
            findings.Add(YamlMistakes.UnknownAlias(place, name, marked.Keys));
            return null;
        }

        if ((repeated += node.Size) > MostNodes)
        {
            findings.Add(YamlMistakes.TooMuchRepeated(place, MostNodes));
            return null;
        }

        if (depth + node.Height - 1 > Deepest)
        {
            findings.Add(YamlMistakes.TooDeep(place, Deepest));
            return null;
        }

        return node;
    }
}
