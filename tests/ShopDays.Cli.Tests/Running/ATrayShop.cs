using ShopDays.Cli.Tests.Commands;

namespace ShopDays.Cli.Tests.Running;

/// <summary>A shop with one small job in a fresh folder, quick to plan and easy to spoil.</summary>
internal static class ATrayShop
{
    public const string Shop = """
        shop: Gannet Shed
        place: {latitude: 55.95, longitude: -3.19, zone: Europe/London}
        units: mm
        currency: GBP
        paper: a4
        week:
          monday:   ["09:00-12:30", "13:15-17:00"]
          thursday: ["09:00-12:30"]
        overhead: {open-up: 10m, sweep-up: 15m}
        limits: {heavy-per-day: 2h, lift-alone: 23 kg, longest-pass: 2 m}
        clamps: [{reach: 600 mm, count: 6}]
        workers: [{name: maker}]

        """;

    public const string Job = """
        job: Tray
        start: 2027-03-01
        due: 2027-04-30
        stock:
          - {board: A, species: black cherry, size: 1500 mm x 200 mm x 25 mm, edges: rough-sawn, faces: rough, end-trim: 30 mm}
        parts:
          - {part: side, count: 2, size: 420 mm x 60 mm x 18 mm, show: [face]}
          - {part: end, count: 2, size: 280 mm x 60 mm x 18 mm, show: [face]}
        joints:
          - {joint: dovetail, between: [side, end], corners: 4, tails: 2}
        glue-ups:
          - {glue-up: frame, joins: [side, end], adhesive: "PVA, slow-set", clamps: {600 mm: 4}}
        finish:
          - {finish: wiping varnish, on: [frame], coats: 2}

        """;

    /// <summary>Writes the shop and its job <c>tray</c> into the folder.</summary>
    public static FreshFolder WithATray(this FreshFolder folder) => folder.WithShop(Shop).WithJob("tray", Job);

    public static FreshFolder WithShop(this FreshFolder folder, string text) => folder.With("shop.yaml", text);

    public static FreshFolder WithJob(this FreshFolder folder, string name, string text) => folder.With($"jobs/{name}.yaml", text);

    /// <summary>Writes one file, and the folders above it.</summary>
    public static FreshFolder With(this FreshFolder folder, string file, string text)
    {
        var path = folder.File(file);
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        File.WriteAllText(path, text);
        return folder;
    }
}
