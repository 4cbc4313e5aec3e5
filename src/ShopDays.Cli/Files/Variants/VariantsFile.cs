using System.Text;
using ShopDays.Cli.Files.Yaml;

namespace ShopDays.Cli.Files.Variants;

/// <summary>Reads <c>jobs/NAME.variants.yaml</c>, and variants that are typed.</summary>
internal static class VariantsFile
{
    /// <summary>How the name of such a file ends.</summary>
    public const string Ending = ".variants.yaml";

    private const string Holds = "variants, such as variants: [{variant: ripped by machine, machine: {rip: band saw}}]";

    /// <summary>Where the variants of a job are looked for.</summary>
    /// <param name="job">The job's file.</param>
    public static string PathFor(string job) => job[..^Path.GetExtension(job).Length] + Ending;

    /// <summary>Reads a file of variants.</summary>
    /// <param name="source">The file.</param>
    /// <param name="findings">Where mistakes go.</param>
    public static IReadOnlyList<Variant> Read(SourceFile source, Findings findings)
    {
        var root = YamlFile.Read(source.Name, source.Bytes, Holds, findings);
        if (root is null || Section.Open(root, "a file of variants", new() { Findings = findings }) is not { } section)
        {
            return [];
        }

        var first = new Dictionary<string, Place>(StringComparer.OrdinalIgnoreCase);
        var variants = section.Lines("variants", "a variant", line =>
        {
            var name = line.Required("variant", Values.Name("what the variant is called"), "what the variant is called");
            if (name.IsRead && !first.TryAdd(name.Value!, name.Place))
            {
                findings.Add(VariantMistakes.VariantTwice(name.Place, name.Value!, first[name.Value!]));
            }

            return VariantReader.Read(line, name.Or(""));
        });
        section.Close();
        return variants;
    }

    /// <summary>Reads a variant as it was typed.</summary>
    /// <param name="text">The keys of one variant, such as <c>machine: {rip: band saw}</c>.</param>
    /// <param name="from">Where it was typed, to stand before what is wrong with it.</param>
    /// <param name="findings">Where mistakes go.</param>
    /// <returns>The variant; null when it is none.</returns>
    public static Variant? ReadTyped(string text, string from, Findings findings)
    {
        var root = YamlFile.Read(from, Encoding.UTF8.GetBytes(text), "the keys of a variant, such as machine: {rip: band saw}", findings);
        if (root is null || Section.Open(root, "a variant", new() { Findings = findings }) is not { } line)
        {
            return null;
        }

        var name = line.Optional("variant", Values.Name("what the variant is called"));
        var variant = VariantReader.Read(line, name.Or(string.Concat(text.Where(one => one is not ('{' or '}' or '"' or '[' or ']'))).Trim()));
        line.Close();
        return variant;
    }
}
