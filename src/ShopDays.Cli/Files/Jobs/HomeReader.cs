using ShopDays.Cli.Files.Yaml;
using ShopDays.Measures;
using ShopDays.Parts;

namespace ShopDays.Cli.Files.Jobs;

/// <summary>Reads the <c>home</c> of a job: what its timber goes through where the piece will stand.</summary>
internal static class HomeReader
{
    /// <summary>Timber indoors never comes to more: above it the air would have to be wet.</summary>
    private const double DampestHome = 30;

    private static readonly ValueReader<MoistureContent> Indoors = (node, reading) => node is YamlMap
        ? ByClimate(node, reading)
        : Values.Percentage(node, reading)
            .Unless(reading.Findings, percent => percent.Value > DampestHome ? ValueMistakes.NotInRange(node.Place, ((YamlText)node).Value, "the moisture of timber indoors", "0% to 30%") : null)
            .Select(percent => MoistureContent.FromPercent(percent.Value));

    /// <summary>Reads between what moistures timber goes up and down where a piece will stand.</summary>
    public static MoistureRange? Read(Section job)
    {
        MoistureRange? range = null;
        job.Inner<object>("home", "the place where the piece will stand", home =>
        {
            const string Expected = "a moisture such as 6%, or {temperature: 21 C, humidity: 30%}";
            var driest = home.Required("driest", Indoors, Expected);
            var dampest = home.Required("dampest", Indoors, Expected);
            dampest = dampest.Unless(home.Findings, most => driest.IsRead && most < driest.Value ? DryingMistakes.DrierAtItsDampest(dampest.Place, driest.Value, most) : null);
            range = driest.IsRead && dampest.IsRead ? new(driest.Value, dampest.Value) : null;
            return home;
        });
        return range;
    }

    private static Field<MoistureContent> ByClimate(YamlNode node, Reading reading)
    {
        var before = reading.Findings.Count;
        var section = Section.Open(node, "the air of a room", reading)!;
        var climate = AirReader.ReadClimate(section);
        section.Close();
        return reading.Findings.Count == before ? Field<MoistureContent>.Read(node.Place, climate.Equilibrium) : Field<MoistureContent>.Wrong(node.Place);
    }
}
