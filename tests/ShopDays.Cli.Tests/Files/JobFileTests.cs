using System.Text;
using NodaTime;
using ShopDays.Cli.Files;
using ShopDays.Cli.Files.Jobs;
using ShopDays.Measures;
using ShopDays.Parts;
using Xunit;

namespace ShopDays.Cli.Tests.Files;

public sealed class JobFileTests
{
    private const string WithEveryKey = """
        job: Tool chest
        start: 2027-03-01
        due: 2027-06-01
        units: inch
        fraction: 1/32
        stock:
          - board: A
            species: black walnut
            size: 8' x 9 1/2" x 5/4
            count: 3
            edges: live
            faces: skip-planed
            cup: 1/8"
            flaws: [{from: 14", to: 19", across: [0", 3"]}, {from: 60, to: 61}]
            end-trim: 2"
            drying: {since: 2025-04-01, moisture: 11%, read: 2027-02-20}
            grain: wavy
            price: 9.40 per board-foot
          - {board: B, species: black walnut, size: 6' x 8" x 4/4, price: 45 each}
        parts:
          - part: front
            count: 2
            size: 30" x 15" x 7/8"
            panel: true
            ends: angled 8
            show: [face, edge]
            surface: {inside: jack, under: scrub}
            spare: 1
            matched: fronts
            from: A
          - {part: end, count: 2, size: 14" x 9" x 3/4"}
        joints:
          - {joint: dovetail, between: [front, end], corners: 4, tails: 6}
          - {joint: groove, in: [front, end], length: 9' 6", depth: 3/8"}
        glue-ups:
          - {glue-up: carcass, joins: [front, end], adhesive: liquid hide glue, joints: 4, clamps: {24": 2, 48": 6}}
        finish:
          - {finish: wiping varnish, on: carcass, coats: 3}
        work:
          - {task: drawings, minutes: {low: 90, likely: 150, high: 5h}, before: layout}
          - {task: bore the vents, operation: "bore for peg, screw or bolt", quantity: 12, on: end, after: carcass, noisy: yes}
          - {task: deliver, minutes: 180, after: [finish, bore the vents], heavy: true, people: 2, paid-travel: 26 mi}
        decisions:
          - {decision: deposit received, after: drawings, before: buying timber, wait: 3d}
          - {decision: walnut, from: the yard, ordered: 2027-03-02, arrived: 2027-03-09, before: sawing, wait: {low: 3d, likely: 5d, high: 2w}}
        methods: {rip: table saw}
        allowances: {kerf: 1/8"}
        """;

    private static readonly LocatedJob Located = Read(WithEveryKey);

    private static Job Job => Located.Job;

    [Fact]
    public void Five_boards_of_one_line_are_marked_one_by_one()
    {
        Assert.Equal(["A1", "A2", "A3", "B"], Job.Boards.Select(board => board.Name));
        Assert.Equal(["A", "A", "A", "B"], Job.Boards.Select(board => board.Line));
    }

    [Fact]
    public void Every_key_of_a_stock_line_is_read()
    {
        var board = Job.Boards[0];
        Assert.Equal((96, 9.5, 1.25), (board.Length.Inches, board.Width.Inches, board.Thickness.Inches));
        Assert.Equal((BoardEdges.Live, BoardFaces.SkipPlaned, BoardGrain.Wavy), (board.Edges, board.Faces, board.Grain));
        Assert.Equal((0.125, 2, 11), (board.Cup.Inches, board.EndTrim.Inches, board.Moisture.Percent));
        Assert.Equal([(14, 19, 0, 3), (60, 61, 0, 9.5)], board.Flaws.Select(flaw => (flaw.From.Inches, flaw.To.Inches, flaw.AcrossFrom.Inches, flaw.AcrossTo.Inches)));

        // 8 ft x 9 1/2 in x 1 1/4 in: 8 x 9.5 x 1.25 / 12 = 7.91667 board feet, at 9.40.
        Assert.Equal(74.42m, board.Price!.Rounded().Amount);
        Assert.Equal(45m, Job.Boards[3].Price!.Amount);
    }

    [Fact]
    public void Every_key_of_a_part_is_read()
    {
        var front = Job.Parts[0];
        Assert.Equal((2, 30, 15, 0.875, true), (front.Count, front.Length.Inches, front.Width.Inches, front.Thickness.Inches, front.IsPanel));
        Assert.Equal((PartEnds.Angled, 8, 1, "fronts", "A"), (front.Ends, front.EndAngle, front.Spare, front.Matched, front.From));
        Assert.Equal([PartSurface.Face, PartSurface.Edge], front.Shows);
        Assert.Equal((SurfaceStandard.Jack, SurfaceStandard.Scrub), (front.Surfaces[PartSurface.Inside], front.Surfaces[PartSurface.Under]));
    }

    [Fact]
    public void A_job_is_in_hand_and_of_usual_weight_unless_it_says_otherwise()
    {
        Assert.Equal((OrderState.InHand, 1), (Job.State, Job.Priority));
        var other = Read(WithEveryKey.Replace("due: 2027-06-01", "due: 2027-06-01\npriority: 4\nstatus: set aside", StringComparison.Ordinal)).Job;
        Assert.Equal((OrderState.SetAside, 4), (other.State, other.Priority));
    }

    // YAML 1.2.2 (2021), section 10.3.2: only plain scalars are resolved to null; what is in quotes is a string.
    [Theory]
    [InlineData("\"~\"")]
    [InlineData("'~'")]
    public void A_tilde_in_quotes_is_a_name(string written) =>
        Assert.Equal("~", Read(WithEveryKey.Replace("job: Tool chest", "job: " + written, StringComparison.Ordinal)).Job.Name);

    [Fact]
    public void A_part_is_of_the_stocks_only_species_when_it_names_none() => Assert.All(Job.Parts, part => Assert.Equal("black walnut", part.Species.Name));

    [Fact]
    public void Every_key_of_joints_glue_ups_and_finishes_is_read()
    {
        Assert.Equal([("dovetail", 4, 6, 0.0), ("groove", 1, 0, 114.0)], Job.Joints.Select(joint => (joint.Kind, joint.Count, joint.Tails, joint.Length.Inches)));
        var glueUp = Assert.Single(Job.GlueUps);
        Assert.Equal(("carcass", "hide glue, liquid", 4), (glueUp.Name, glueUp.Adhesive, glueUp.Joints));
        Assert.Equal([(24, 2), (48, 6)], glueUp.Clamps.Select(clamps => (clamps.Reach.Inches, clamps.Count)));
        var finish = Assert.Single(Job.Finishes);
        Assert.Equal(("wiping varnish (thinned)", 3, "carcass"), (finish.Finish, finish.Coats, finish.On.Single()));
    }

    [Fact]
    public void Every_key_of_work_and_decisions_is_read()
    {
        Assert.Equal((90, 150, 300), (Job.Work[0].Guess!.Value.Low.Minutes, Job.Work[0].Guess!.Value.Likely.Minutes, Job.Work[0].Guess!.Value.High.Minutes));
        Assert.Equal(("bore for peg, screw or bolt", 12, true, "end"), (Job.Work[1].Operation, Job.Work[1].Quantity, Job.Work[1].IsNoisy, Job.Work[1].On.Single()));
        Assert.Equal((1, 2), (Job.Work[1].People, Job.Work[2].People));
        Assert.Equal((180, true), (Job.Work[2].Guess!.Value.Likely.Minutes, Job.Work[2].IsHeavy));
        Assert.Equal(["finish", "bore the vents"], Job.Work[2].After);

        // A mile is 1.609344 km exactly (international yard and pound agreement, 1959); the product is not exact in binary.
        Assert.Equal(41.842944, Job.Work[2].PaidKilometres, 1e-9);
        Assert.Equal((Duration.FromDays(3), "buying timber", "drawings"), (Job.Decisions[0].Wait.Likely, Job.Decisions[0].Before.Single(), Job.Decisions[0].After.Single()));

        // Of a plain length three quarters to twice of it (common practice, no source).
        Assert.Equal(new WaitGuess(Duration.FromHours(54), Duration.FromDays(3), Duration.FromDays(6)), Job.Decisions[0].Wait);
        var walnut = Job.Decisions[1];
        Assert.Equal(("the yard", true, new LocalDate(2027, 3, 2), new LocalDate(2027, 3, 9)), (walnut.From, walnut.IsOrdered, walnut.Asked, walnut.Arrived));
        Assert.Equal(new WaitGuess(Duration.FromDays(3), Duration.FromDays(5), Duration.FromDays(14)), walnut.Wait);
    }

    [Fact]
    public void Methods_and_allowances_of_the_job_go_before_the_shops()
    {
        Assert.Equal("table saw", Job.Methods["rip"]);
        Assert.Equal((0.125, 1), (Job.Allowances.Kerf.Inches, Job.Allowances.Length.Inches));
    }

    [Fact]
    public void Named_things_keep_their_places()
    {
        Assert.Equal("job.yaml:21:11", Located.Places.Of("front").ToString());
        Assert.Equal("job.yaml:36:15", Located.Places.Of("carcass").ToString());
        Assert.Equal("job.yaml:7:12", Located.Places.OfBoard("A2").ToString());
        Assert.Equal("job.yaml:34:5", Located.Places.OfJoint(1).ToString());
        Assert.Equal("3/32\"", Located.Format.Write(Length.FromInches(0.09375m)));
    }

    [Fact]
    public void A_parts_list_is_read_in_any_order_of_columns_and_any_unit()
    {
        var folder = Directory.CreateTempSubdirectory("shopdays-").FullName;
        try
        {
            File.WriteAllText(Path.Combine(folder, "parts.csv"), "species;Width;name;length;thickness;count\r\n;\"9\"\"\";shelf, upper;610 mm;3/4\";2\r\nblack walnut;100;rail;2' 1\";1.8 cm;\r\n");
            var job = Path.Combine(folder, "job.yaml");
            File.WriteAllText(job, "job: Shelf\nunits: mm\nstart: 2027-03-01\nstock: [{board: A, species: black walnut, size: 2500 x 240 x 27}]\nparts-from: parts.csv\n");
            var parts = Read(SourceFile.Read(job, "job.yaml")).Job.Parts;
            Assert.Equal(["shelf, upper", "rail"], parts.Select(part => part.Name));
            Assert.Equal([(2, 610, 228.6, 19.05), (1, 635, 100, 18)], parts.Select(part => (part.Count, part.Length.Millimetres, part.Width.Millimetres, part.Thickness.Millimetres)));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static LocatedJob Read(string text) => Read(new SourceFile("job.yaml", "job.yaml", Encoding.UTF8.GetBytes(text)));

    private static LocatedJob Read(SourceFile file)
    {
        var findings = new Findings();
        var reading = new Reading { Findings = findings, Currency = Currencies.TryFind("GBP") };
        var job = JobFile.Read(file, new(null, reading, new(), new Dictionary<string, string> { ["rip"] = "band saw" }), new(BuiltIn.Species, BuiltIn.Operations, BuiltIn.Waits), findings);
        Assert.Equal([], findings.InOrder().Select(one => one.ToString()));
        return job!;
    }
}
