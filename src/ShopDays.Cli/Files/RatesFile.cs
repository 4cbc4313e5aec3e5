using ShopDays.Cli.Files.Yaml;
using ShopDays.Work;

namespace ShopDays.Cli.Files;

/// <summary>Reads <c>rates.yaml</c>: a shop's own operations, methods, edges and figures over those that are built in.</summary>
internal static class RatesFile
{
    /// <summary>The operations of a shop: those that are built in, and its own where it has a file of them.</summary>
    /// <param name="folder">The shop's folder.</param>
    /// <param name="findings">Where mistakes go.</param>
    /// <exception cref="FileTroubleException">The file is there and cannot be read.</exception>
    public static OperationCatalogue OperationsIn(ShopFolder folder, Findings findings) => File.Exists(Path.Combine(folder.Path, ShopFolder.RatesFileName))
        ? Read(folder.Read(ShopFolder.RatesFileName), BuiltIn.Operations, [.. BuiltIn.Cautions.Select(one => one.Kind)], findings)
        : BuiltIn.Operations;

    /// <summary>Reads a file of rates. An empty one adds nothing. What a line leaves out of a built-in operation keeps its built-in value.</summary>
    /// <param name="source">The file.</param>
    /// <param name="builtIn">What it adds to.</param>
    /// <param name="cautions">The kinds of caution that it may name.</param>
    /// <param name="findings">Where mistakes go.</param>
    public static OperationCatalogue Read(SourceFile source, OperationCatalogue builtIn, IReadOnlyList<string> cautions, Findings findings)
    {
        var reading = new Reading { Findings = findings };
        var root = YamlFile.Read(source.Name, source.Bytes, expected: null, findings);
        if (root is null || Section.Open(root, "the rates", reading) is not { } section)
        {
            return builtIn;
        }

        var own = new Dictionary<string, Operation>(StringComparer.OrdinalIgnoreCase);
        var said = new HashSet<(string, string)>();
        section.Lines<object>("operations", "an operation", line =>
        {
            var name = line.Required("operation", Values.Name("the operation's name"), "the operation's name, built in or new");
            var known = name.IsRead ? own.GetValueOrDefault(name.Value!) ?? (builtIn.TryFind(name.Value!, out var found) ? found : null) : builtIn.All[0];
            var (operation, method) = new RateLine(line, name, known, cautions).Read();
            if (name.IsRead && !said.Add((operation.Name.ToUpperInvariant(), method.ToUpperInvariant())))
            {
                findings.Add(RateMistakes.RateTwice(name.Place, operation.Name, method));
            }

            if (name.IsRead)
            {
                own[operation.Name] = operation;
            }

            return operation;
        });
        var operations = builtIn.With(own.Values);
        var edges = EdgeLines.Read(section, operations);
        section.Close();
        return operations.With(edges.Count == 0 ? [] : operations.All.Select(operation => EdgeLines.Changed(operation, edges)));
    }
}
