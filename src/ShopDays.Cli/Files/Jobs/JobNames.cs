using ShopDays.Cli.Files.Yaml;
using ShopDays.Work;

namespace ShopDays.Cli.Files.Jobs;

/// <summary>What a name in a job stands for.</summary>
internal enum NameKind
{
    Part,
    GlueUp,
    Task,
    Decision,
}

/// <summary>
/// The names of a job while it is read. Names may be used above the line that gives them, so references are looked up
/// when the whole file has been read. Two names that differ in case alone are one; a reference is spelt as the name is.
/// </summary>
internal sealed class JobNames(JobPlaces places, Findings findings)
{
    private readonly Dictionary<string, (NameKind Kind, string Name, Place Place)> declared = new(StringComparer.OrdinalIgnoreCase);
    private readonly List<Action> references = [];

    /// <summary>
    /// Whether every name could be read. Where one could not, a name that seems unknown may be just that one, and nothing
    /// is said of it.
    /// </summary>
    public bool AreAllKnown { get; set; } = true;

    /// <summary>Gives a name to a thing; a name that is taken is reported.</summary>
    public void Declare(Field<string> name, NameKind kind)
    {
        if (!name.IsRead)
        {
            AreAllKnown = false;
            return;
        }

        if (declared.TryGetValue(name.Value!, out var first))
        {
            findings.Add(JobMistakes.NameTaken(name.Place, name.Value!, Noun(first.Kind), first.Place));
            AreAllKnown &= first.Name == name.Value;
        }
        else if (StageNames.TryFind(name.Value!, out _))
        {
            findings.Add(JobMistakes.NameOfAStage(name.Place, name.Value!));
            declared.Add(name.Value!, (kind, name.Value!, name.Place));
        }
        else
        {
            declared.Add(name.Value!, (kind, name.Value!, name.Place));
            places.Add(name.Value!, name.Place);
        }
    }

    /// <summary>Reads one or more names of parts.</summary>
    public ValueReader<IReadOnlyList<string>> Parts => Names("a part's name", name => IsOne(name.Value!, NameKind.Part)
        ? null
        : JobMistakes.UnknownPart(name.Place, name.Value!, Of(NameKind.Part)));

    /// <summary>Reads one or more names of parts and glue-ups.</summary>
    public ValueReader<IReadOnlyList<string>> PartsAndGlueUps => Names("the name of a part or glue-up", name => IsOne(name.Value!, NameKind.Part, NameKind.GlueUp)
        ? null
        : JobMistakes.UnknownPartOrGlueUp(name.Place, name.Value!, Of(NameKind.Part, NameKind.GlueUp)));

    /// <summary>Reads one or more names of anything that work can come before or after.</summary>
    public ValueReader<IReadOnlyList<string>> Anchors => Names("the name of a stage, part, glue-up, task or decision", name => IsOne(name.Value!, Enum.GetValues<NameKind>()) || StageNames.TryFind(name.Value!, out _)
        ? null
        : JobMistakes.UnknownAnchor(name.Place, name.Value!, StageNames.All, [.. declared.Keys]));

    /// <summary>Looks up all the names that were used.</summary>
    public void LookUp()
    {
        foreach (var reference in AreAllKnown ? references : [])
        {
            reference();
        }
    }

    private ValueReader<IReadOnlyList<string>> Names(string expected, Func<Field<string>, Finding?> mistake) => (node, reading) =>
    {
        if (node is YamlMap)
        {
            reading.Findings.Add(ValueMistakes.NotOneValue(node.Place, node.Shape, expected + ", or a list of them"));
            return Field<IReadOnlyList<string>>.Wrong(node.Place);
        }

        var names = Values.OneOrMore(Values.Text(expected))(node, reading).Value!;
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var name in names.Where(one => one.IsRead))
        {
            if (!seen.Add(name.Value!))
            {
                findings.Add(ValueMistakes.SaidTwiceInAList(name.Place, name.Value!));
            }

            references.Add(() =>
            {
                if (mistake(name) is { } found)
                {
                    findings.Add(found);
                }
            });
        }

        return Field<IReadOnlyList<string>>.Read(node.Place, [.. names.Where(one => one.IsRead).Select(one => one.Value!)]);
    };

    private bool IsOne(string name, params NameKind[] kinds) => declared.TryGetValue(name, out var found) && found.Name == name && kinds.Contains(found.Kind);

    private string[] Of(params NameKind[] kinds) => [.. declared.Where(one => kinds.Contains(one.Value.Kind)).Select(one => one.Key)];

    private static string Noun(NameKind kind) => kind switch
    {
        NameKind.Part => "a part",
        NameKind.GlueUp => "a glue-up",
        NameKind.Task => "a task",
        NameKind.Decision => "a decision",
        _ => throw new System.Diagnostics.UnreachableException(),
    };
}
