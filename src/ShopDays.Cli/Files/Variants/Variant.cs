using ShopDays.Cli.Files.Yaml;

namespace ShopDays.Cli.Files.Variants;

/// <summary>One way of doing a job otherwise: what its job file and its shop file would say instead.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Place">Where it is written.</param>
/// <param name="Job">Keys that are laid over the job file; null for none.</param>
/// <param name="Shop">Keys that are laid over the shop file; null for none.</param>
internal sealed record Variant(string Name, Place Place, YamlMap? Job, YamlMap? Shop);
