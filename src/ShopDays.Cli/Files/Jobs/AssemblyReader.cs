using ShopDays.Cli.Files.Yaml;
using ShopDays.Parts;
using ShopDays.Work;

namespace ShopDays.Cli.Files.Jobs;

/// <summary>Reads the <c>glue-ups</c> and the <c>finish</c> of a job.</summary>
internal sealed class AssemblyReader(WaitTable waits, JobNames names, JobPlaces places)
{
    private const int MostClamps = 1_000;

    public GlueUp ReadGlueUp(Section line)
    {
        var name = line.Required("glue-up", Values.Name("what comes out of it, such as carcass"), "what comes out of it, such as carcass");
        names.Declare(name, NameKind.GlueUp);
        var joins = line.Required("joins", names.PartsAndGlueUps, "the parts and earlier glue-ups that it joins");
        var adhesive = line.Required("adhesive", Values.Text("an adhesive, such as liquid hide glue"), "an adhesive, such as liquid hide glue");
        adhesive = adhesive.Unless(line.Findings, typed => waits.TryFindAdhesive(typed, out _)
            ? null
            : JobMistakes.UnknownAdhesive(adhesive.Place, typed, [.. waits.Adhesives.Select(one => one.Name)]));
        return new GlueUp
        {
            Name = name.Or(""),
            Joins = joins.Or([]),
            Adhesive = waits.TryFindAdhesive(adhesive.Or(""), out var found) ? found.Name : "",
            Joints = line.Optional("joints", Values.Whole("a count of joints", 1, 10_000)) is { IsRead: true } joints ? joints.Value : null,
            Clamps = line.Optional("clamps", Clamps).Or([]),
        };
    }

    public FinishWork ReadFinish(Section line)
    {
        places.AddFinish(line.Place);
        var finish = line.Required("finish", Values.Text("a finish, such as wiping varnish"), "a finish, such as wiping varnish");
        finish = finish.Unless(line.Findings, typed => waits.TryFindFinish(typed, out _)
            ? null
            : JobMistakes.UnknownFinish(finish.Place, typed, [.. waits.Finishes.Select(one => one.Name)]));
        return new FinishWork
        {
            Finish = waits.TryFindFinish(finish.Or(""), out var found) ? found.Name : "",
            On = line.Required("on", names.PartsAndGlueUps, "the parts and glue-ups that get it").Or([]),
            Coats = line.Optional("coats", Values.Whole("a count of coats", 1, 100), 1),
        };
    }

    private static ValueReader<IReadOnlyList<ClampsHeld>> Clamps { get; } = (node, reading) =>
    {
        if (node is not YamlMap map)
        {
            reading.Findings.Add(ValueMistakes.NotKeys(node.Place, node.Shape, "the clamps, each reach with its count,"));
            return Field<IReadOnlyList<ClampsHeld>>.Wrong(node.Place);
        }

        var clamps = new List<ClampsHeld>();
        foreach (var (key, value) in map.Entries)
        {
            var reach = LengthValues.AboveZero("the reach of a clamp", LengthValues.Longest)(key, reading);
            var count = Values.Whole("a count of clamps", 1, MostClamps)(value, reading);
            if (reach.IsRead && clamps.Exists(one => one.Reach == reach.Value))
            {
                reading.Findings.Add(ShopMistakes.ClampsTwice(reach.Place, reading.Format.Write(reach.Value)));
            }
            else if (reach.IsRead && count.IsRead)
            {
                clamps.Add(new(reach.Value, count.Value));
            }
        }

        return Field<IReadOnlyList<ClampsHeld>>.Read(node.Place, clamps);
    };
}
