using System.Text.Json;
using ShopDays.Cli.Tests.Commands;
using Xunit;

namespace ShopDays.Cli.Tests.Running;

/// <summary>Going on from boards that are sawn, as a maker does it: record, lay out again, spoil a blank, lay out again.</summary>
public sealed class SawnTests
{
    private const string Job = """
        job: Tray, with "feet"
        start: 2027-03-01
        stock:
          - {board: A, species: black cherry, size: 1000 mm x 150 mm x 25 mm, count: 3, faces: rough, end-trim: 30 mm, price: 20 each}
        parts:
          - {part: side, count: 2, size: 420 mm x 60 mm x 18 mm, show: [face], best-face: true}
          - {part: "end: short", count: 2, size: 280 mm x 60 mm x 18 mm, show: [face], matched: ends}
          - {part: bottom, size: 430 mm x 300 mm x 12 mm, panel: true, not-from: A1}
        joints:
          - {joint: dovetail, between: [side, "end: short"], corners: 4, tails: 2}
        glue-ups:
          - {glue-up: frame, joins: [side, "end: short", bottom], adhesive: "PVA, slow-set", clamps: {600 mm: 4}}
        finish:
          - {finish: wiping varnish, on: [frame], coats: 2}

        """;

    [Fact]
    public async Task A_recorded_board_stays_as_it_was_and_the_rest_is_laid_out_around_it()
    {
        using var folder = AShop();
        var before = (await Ran.In(folder.Path, "layout", "tray", "--json")).WentWell().ReadJson();
        Assert.All(Boards(before).Single(board => board.Text("board") == "A1").List("pieces"), piece => Assert.NotEqual("bottom", piece.Text("part")));
        var first = Boards(before)[0];
        var name = first.Text("board");
        var told = (await Ran.In(folder.Path, "layout", "tray", "--sawn", name)).WentWell();
        Assert.Contains($"{name} is sawn", told.Out);
        Assert.Contains("jobs/tray.sawn.yaml", told.Out);

        var after = (await Ran.In(folder.Path, "layout", "tray", "--json")).WentWell().ReadJson();
        Assert.Equal(Pieces(before), Pieces(after));
        var sawn = Boards(after).Single(board => board.Text("board") == name);
        Assert.True(sawn.YesOrNo("sawn"));
        Assert.Empty(sawn.List("cuts"));
        Assert.Equal(first.Field("pieces").ToString(), sawn.Field("pieces").ToString());
        Assert.All(Boards(after).Where(board => board.Text("board") != name), board => Assert.False(board.YesOrNo("sawn")));
        Assert.True(after.Number("ripFeet") < before.Number("ripFeet"));
    }

    [Fact]
    public async Task Drawings_asked_for_while_recording_are_of_the_boards_that_are_cut_after_it()
    {
        using var folder = AShop();
        var before = (await Ran.In(folder.Path, "layout", "tray", "--json")).WentWell().ReadJson();
        var name = Boards(before)[0].Text("board");
        var told = (await Ran.In(folder.Path, "layout", "tray", "--sawn", name, "--svg", "drawings")).WentWell();
        Assert.Contains("Written: ", told.Out);

        var after = (await Ran.In(folder.Path, "layout", "tray", "--svg", "later", "--json")).WentWell().ReadJson();
        var left = Boards(after).Where(board => !board.YesOrNo("sawn")).Select(board => $"board-{board.Text("board").Replace(' ', '-')}.svg").Order(StringComparer.Ordinal).ToList();
        Assert.NotEmpty(left);
        Assert.Equal(left, Directory.GetFiles(folder.File("drawings")).Select(Path.GetFileName).Order(StringComparer.Ordinal));
        Assert.All(left, one => Assert.Equal(File.ReadAllText(folder.File("later", one)), File.ReadAllText(folder.File("drawings", one))));
    }

    [Fact]
    public async Task A_spoiled_blank_that_is_taken_out_of_the_file_is_wanted_again()
    {
        using var folder = AShop();
        var all = (await Ran.In(folder.Path, "layout", "tray", "--json")).WentWell().ReadJson();
        string[] names = [.. Boards(all).Select(board => board.Text("board"))];
        (await Ran.In(folder.Path, ["layout", "tray", "--sawn", .. names])).WentWell();
        var done = (await Ran.In(folder.Path, "layout", "tray", "--json")).WentWell().ReadJson();
        Assert.All(Boards(done), board => Assert.True(board.YesOrNo("sawn")));
        Assert.Equal(0, done.Number("ripFeet") + done.Number("crosscutFeet") + done.Number("sawingMinutes"));
        Assert.Contains("No board is left to be sawn.", (await Ran.In(folder.Path, "layout", "tray")).WentWell().Out);

        var file = folder.File("jobs", "tray.sawn.yaml");
        var lines = await File.ReadAllLinesAsync(file, TestContext.Current.CancellationToken);
        await File.WriteAllLinesAsync(file, lines.Where(line => !line.Contains("part: side, number: 2", StringComparison.Ordinal)), TestContext.Current.CancellationToken);
        var again = (await Ran.In(folder.Path, "layout", "tray", "--json")).WentWell().ReadJson();
        Assert.Equal(Pieces(done), Pieces(again));
        var cut = Assert.Single(Boards(again), board => !board.YesOrNo("sawn"));
        var piece = Assert.Single(cut.List("pieces"));
        Assert.Equal(("side", 2), (piece.Text("part"), (int)piece.Number("number")));

        // What is cut now is recorded beside what was; offcuts are boards too.
        (await Ran.In(folder.Path, "layout", "tray", "--sawn", cut.Text("board"))).WentWell();
        var last = (await Ran.In(folder.Path, "layout", "tray", "--json")).WentWell().ReadJson();
        Assert.All(Boards(last), board => Assert.True(board.YesOrNo("sawn")));
        Assert.Equal(Pieces(done), Pieces(last));
    }

    [Fact]
    public async Task Every_later_task_is_still_there_and_no_sawing_of_what_is_sawn()
    {
        using var folder = AShop();
        var before = (await Ran.In(folder.Path, "estimate", "tray", "--json")).WentWell().ReadJson();
        var all = (await Ran.In(folder.Path, "layout", "tray", "--json")).WentWell().ReadJson();
        (await Ran.In(folder.Path, ["layout", "tray", "--sawn", .. Boards(all).Select(board => board.Text("board"))])).WentWell();
        var after = (await Ran.In(folder.Path, "estimate", "tray", "--json")).WentWell().ReadJson();
        string[] gone = ["rip", "crosscut", "straighten a live edge", "fetch and stack boards", "choose and chalk out parts on boards"];
        Assert.Equal(Quantities(before).Where(one => !gone.Contains(one.Operation)), Quantities(after));
        var plan = (await Ran.In(folder.Path, "plan", "tray", "--json", "--pdf", "plan.pdf")).WentWell().ReadJson();
        Assert.True(plan.Number("shopDays") > 0);
        Assert.True(new FileInfo(folder.File("plan.pdf")).Length > 0);
    }

    [Fact]
    public async Task A_board_that_is_not_cut_is_refused_and_nothing_is_written()
    {
        using var folder = AShop();
        var cut = Boards((await Ran.In(folder.Path, "layout", "tray", "--json")).WentWell().ReadJson())[0].Text("board");
        var before = folder.Everything();
        var refused = await Ran.In(folder.Path, "layout", "tray", "--sawn", cut, "A9");
        Assert.Equal(1, refused.ExitCode);
        Assert.StartsWith("this layout cuts no board called 'A9'; expected ", refused.Error);
        Assert.Contains("; nearest: A", refused.Error);
        Assert.Contains("nothing was recorded", refused.Error);
        Assert.Equal(before, folder.Everything());

        (await Ran.In(folder.Path, "layout", "tray", "--sawn", cut)).WentWell();
        var twice = await Ran.In(folder.Path, "layout", "tray", "--sawn", cut);
        Assert.Equal(1, twice.ExitCode);
        Assert.Contains($"the board '{cut}' is recorded as sawn already, in jobs/tray.sawn.yaml", twice.Error);
    }

    [Fact]
    public async Task Mistakes_in_the_file_are_told_at_their_places_by_every_command()
    {
        using var folder = AShop();
        folder.With("jobs/tray.sawn.yaml", "sawn:\n  - board: A7\n    blanks:\n");
        foreach (var command in (string[])["check", "layout", "estimate", "plan"])
        {
            var refused = await Ran.In(folder.Path, command, "tray");
            Assert.Equal(1, refused.ExitCode);
            Assert.Contains("jobs/tray.sawn.yaml:2:12: no board is called 'A7'; expected A1, A2 or A3", refused.Out + refused.Error);
        }
    }

    [Fact]
    public async Task Taking_the_file_away_undoes_it_all()
    {
        using var folder = AShop();
        var before = (await Ran.In(folder.Path, "layout", "tray")).WentWell().Out;
        (await Ran.In(folder.Path, "layout", "tray", "--sawn", "A2")).WentWell();
        File.Delete(folder.File("jobs", "tray.sawn.yaml"));
        Assert.Equal(before, (await Ran.In(folder.Path, "layout", "tray")).WentWell().Out);
    }

    private static FreshFolder AShop() => new FreshFolder().WithShop(ATrayShop.Shop).WithJob("tray", Job);

    private static IReadOnlyList<JsonElement> Boards(JsonElement layout) => layout.List("boards");

    private static IEnumerable<string> Pieces(JsonElement layout) => Boards(layout)
        .SelectMany(board => board.List("pieces"))
        .Select(piece => FormattableString.Invariant($"{piece.Text("part")} {piece.Number("number")} {piece.Number("strip")}"))
        .Order(StringComparer.Ordinal);

    // What differs in the sum of floating point is below a ten-thousandth.
    private static IEnumerable<(string Operation, decimal Quantity)> Quantities(JsonElement estimate) => estimate.List("operations")
        .Select(one => (one.Text("operation"), Math.Round((decimal)one.Number("quantity"), 4, MidpointRounding.AwayFromZero)))
        .OrderBy(one => one.Item1, StringComparer.Ordinal);
}
