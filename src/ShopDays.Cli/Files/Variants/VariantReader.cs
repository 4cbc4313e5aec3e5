using ShopDays.Cli.Files.Yaml;

namespace ShopDays.Cli.Files.Variants;

/// <summary>Reads one variant: its short keys become what they stand for in the job file and the shop file.</summary>
internal static class VariantReader
{
    private static readonly ValueReader<YamlMap> Keys = (node, reading) =>
    {
        if (node is YamlMap map)
        {
            return Field<YamlMap>.Read(node.Place, map);
        }

        reading.Findings.Add(ValueMistakes.NotKeys(node.Place, node.Shape, "a change"));
        return Field<YamlMap>.Wrong(node.Place);
    };

    /// <summary>Reads it; what its keys say of the job and the shop is read with these.</summary>
    /// <param name="line">The variant, its name read.</param>
    /// <param name="name">The name.</param>
    public static Variant Read(Section line, string name)
    {
        List<YamlEntry> job =
        [
            .. Under("methods", line.Optional("machine", Keys)),
            .. Under("stock", line.Optional("stock", Keys)),
            .. Under("parts", line.Optional("parts", Keys)),
            .. CostsOf(line, name),
        ];
        List<YamlEntry> shop =
        [
            .. Under("week", line.Optional("sessions", Keys)),
            .. Under(Overlay.HelperHours, line.Optional("helper", Keys)),
        ];
        job.AddRange(line.Optional("job", Keys).Value?.Entries ?? []);
        shop.AddRange(line.Optional("shop", Keys).Value?.Entries ?? []);
        if (job.Count + shop.Count == 0)
        {
            line.Findings.Add(VariantMistakes.NothingIsOtherwise(line.Place));
        }

        return new(name, line.Place, MapOf(line, job), MapOf(line, shop));
    }

    private static IEnumerable<YamlEntry> Under(string key, Field<YamlMap> keys) =>
        keys.IsRead ? [new(new(keys.Place, key), keys.Value!)] : [];

    /// <summary>Money besides is work by others: it is in the cost, in the price, and no time.</summary>
    private static IEnumerable<YamlEntry> CostsOf(Section line, string name)
    {
        var costs = line.Optional<YamlNode>("costs", (node, _) => Field<YamlNode>.Read(node.Place, node));
        return costs.IsRead
            ? [new(new(costs.Place, Overlay.CostsBesides), new YamlMap(costs.Place, [new(new(costs.Place, "work"), new YamlText(costs.Place, name)), new(new(costs.Place, "price"), costs.Value!)]))]
            : [];
    }

    private static YamlMap? MapOf(Section line, List<YamlEntry> entries) => entries.Count == 0 ? null : new(line.Place, entries);
}
