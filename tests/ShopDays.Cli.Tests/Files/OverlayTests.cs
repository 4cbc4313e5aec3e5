using System.Text;
using ShopDays.Cli.Files;
using ShopDays.Cli.Files.Variants;
using ShopDays.Cli.Files.Yaml;
using Xunit;

namespace ShopDays.Cli.Tests.Files;

/// <summary>What comes out where a variant's keys are laid over those of a job.</summary>
public sealed class OverlayTests
{
    private const string Readings = "[{on: 2026-08-15, moisture: 22%}, {on: 2026-11-07, moisture: 19%}]";

    [Theory]
    [InlineData("{since: 2024-11-01, readings: " + Readings + "}", "{moisture: 14%, read: 2026-11-07}", "since, moisture, read")]
    [InlineData("{since: 2024-11-01, readings: " + Readings + "}", "{moisture: 14%, readings: ~}", "since, moisture")]
    [InlineData("{since: 2024-11-01, moisture: 22%, read: 2026-08-15}", "{readings: " + Readings + "}", "since, readings")]
    [InlineData("{moisture: 22%, read: 2026-08-15}", "{moisture: 14%}", "moisture, read")]
    [InlineData("{readings: " + Readings + "}", "{moisture: 14%, readings: " + Readings + "}", "readings, moisture")]
    public void What_a_meter_said_takes_the_place_of_what_it_said_before_in_either_spelling(string before, string variant, string keys) =>
        Assert.Equal(keys, KeysOfDrying(before, variant));

    [Theory]
    [InlineData("{since: 2025-11-01}")]
    [InlineData("{moisture: ~}")]
    [InlineData("{weighings: [{on: 2026-11-07, weight: 4 kg}]}")]
    public void Readings_stay_where_a_variant_says_nothing_of_a_meter(string variant) =>
        Assert.Contains("readings", KeysOfDrying("{since: 2024-11-01, readings: " + Readings + "}", variant), StringComparison.Ordinal);

    [Fact]
    public void A_reading_stays_where_a_variant_only_takes_readings_away() =>
        Assert.Equal("moisture, read", KeysOfDrying("{moisture: 22%, read: 2026-08-15, readings: " + Readings + "}", "{readings: ~}"));

    private static string KeysOfDrying(string before, string variant)
    {
        var findings = new Findings();
        var job = YamlFile.Read("job.yaml", Encoding.UTF8.GetBytes($"stock: [{{board: L, drying: {before}}}]"), "a job", findings);
        var typed = VariantsFile.ReadTyped($"stock: {{L: {{drying: {variant}}}}}", "typed", findings);
        var laid = Assert.IsType<YamlMap>(Overlay.On(job, typed!.Job, findings));
        Assert.True(findings.AreNone);
        var line = Assert.IsType<YamlMap>(Assert.Single(Assert.IsType<YamlList>(Assert.Single(laid.Entries).Value).Items));
        var drying = Assert.IsType<YamlMap>(line.Entries.Single(entry => entry.Key.Value == "drying").Value);
        return string.Join(", ", drying.Entries.Select(entry => entry.Key.Value));
    }
}
