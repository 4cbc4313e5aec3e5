namespace ShopDays.Cli.Files.Yaml;

/// <summary>A piece of a YAML file that knows where it stands.</summary>
/// <param name="Place">Where it begins.</param>
internal abstract record YamlNode(Place Place)
{
    /// <summary>How many nodes it holds, itself included; what an alias repeats counts each time.</summary>
    public abstract int Size { get; }

    /// <summary>How many levels it has, itself included.</summary>
    public abstract int Height { get; }

    /// <summary>What it is, as a maker would say.</summary>
    public abstract string Shape { get; }
}

/// <summary>A piece of text, whatever it means.</summary>
/// <param name="Place">Where it begins.</param>
/// <param name="Value">The text, quotes and escapes undone.</param>
internal sealed record YamlText(Place Place, string Value) : YamlNode(Place)
{
    /// <summary>Whether it stands in quotes, and is then text whatever its signs.</summary>
    public bool IsQuoted { get; init; }

    /// <summary>Whether a value is left out here: there is nothing, or <c>~</c>, which means nothing in such files.</summary>
    public bool IsLeftOut => !IsQuoted && Value is ("" or "~");

    public override int Size => 1;

    public override int Height => 1;

    public override string Shape => "text";
}

/// <summary>A list.</summary>
internal sealed record YamlList(Place Place, IReadOnlyList<YamlNode> Items) : YamlNode(Place)
{
    public override int Size { get; } = 1 + Items.Sum(item => item.Size);

    public override int Height { get; } = 1 + Items.Select(item => item.Height).DefaultIfEmpty().Max();

    public override string Shape => "a list";
}

/// <summary>Keys with their values, in the order written; no key stands twice.</summary>
internal sealed record YamlMap(Place Place, IReadOnlyList<YamlEntry> Entries) : YamlNode(Place)
{
    public override int Size { get; } = 1 + Entries.Sum(entry => 1 + entry.Value.Size);

    public override int Height { get; } = 1 + Entries.Select(entry => entry.Value.Height).DefaultIfEmpty().Max();

    public override string Shape => "a set of keys";
}

/// <summary>One key with its value.</summary>
internal sealed record YamlEntry(YamlText Key, YamlNode Value);
