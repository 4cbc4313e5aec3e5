using ShopDays.Cli.Terminal;
using ShopDays.Layouts;
using ShopDays.Measures;
using Xunit;

namespace ShopDays.Cli.Tests.Terminal;

public sealed class ProgressTests
{
    [Fact]
    public void On_a_terminal_the_passing_line_is_gone_before_the_answer()
    {
        using var writer = new StringWriter();
        var seen = Progress(writer, isTerminal: true).During("sawing", writer.ToString);
        Assert.Equal("sawing", seen);
        Assert.Equal("sawing\r      \r", writer.ToString());
    }

    [Fact]
    public void Where_each_step_is_asked_for_it_keeps_its_line()
    {
        using var writer = new StringWriter();
        Assert.Equal(3, Progress(writer, isVerbose: true, isTerminal: true).During("sawing", () => 3));
        Assert.Equal("sawing\n", writer.ToString().ReplaceLineEndings("\n"));
    }

    [Fact]
    public void In_a_pipe_nothing_is_said()
    {
        using var writer = new StringWriter();
        var progress = Progress(writer);
        Assert.Equal(3, progress.During("sawing", () => Working(progress, 3)));
        Assert.Equal("", writer.ToString());
    }

    [Fact]
    public void A_step_that_takes_over_a_second_says_how_far_it_has_come_and_leaves_no_trace()
    {
        using var writer = new StringWriter();
        var progress = Progress(writer, isTerminal: true);
        progress.During("sawing", () => Working(progress, 0.5));
        Assert.DoesNotContain("half", writer.ToString(), StringComparison.Ordinal);

        progress.During("sawing", () => Working(progress, 1.5));
        Assert.Contains("sawing: half of it", writer.ToString(), StringComparison.Ordinal);
        Assert.Equal("", Left(writer.ToString()).Trim());
    }

    [Fact]
    public void A_passing_line_changes_no_oftener_than_an_eye_follows()
    {
        using var writer = new StringWriter();
        var progress = Progress(writer, isTerminal: true);
        progress.During("sawing", () => Enumerable.Range(0, 200).Sum(_ => Working(progress, 0.02)));

        // Four seconds in steps of a fiftieth, of which the first second is silent: three seconds, a fifth each.
        Assert.InRange(writer.ToString().Split("half of it").Length - 1, 13, 16);
    }

    [Fact]
    public void A_passing_line_never_wraps()
    {
        using var writer = new StringWriter();
        var progress = Progress(writer, isTerminal: true);
        progress.During(new string('x', 75), () => Working(progress, 1.5));
        Assert.All(writer.ToString().Split('\r'), line => Assert.True(line.Length < 80));
    }

    [Fact]
    public void A_layout_in_the_making_says_its_round_what_is_left_and_its_cost()
    {
        string? said = null;
        void Say(Func<string> words) => said = words();
        new LayoutSteps(Say, new Currency("EUR", 2)).Report(new LayoutStep(120, 4000, 1, 512.345));
        Assert.Equal("round 120 of 4000, 1 part without a place, 512.35 EUR so far", said);

        new LayoutSteps(Say, null).Report(new LayoutStep(3, 200, 0, 512));
        Assert.Equal("round 3 of 200, all placed", said);
    }

    private readonly PassingTime time = new();

    private Progress Progress(TextWriter writer, bool isVerbose = false, bool isTerminal = false) => new(writer, isVerbose, isTerminal, 80, time);

    private int Working(Progress progress, double seconds)
    {
        time.Pass(seconds);
        progress.Now(() => "half of it");
        return 3;
    }

    /// <summary>What a terminal shows in its line after all that was written.</summary>
    private static string Left(string written)
    {
        var line = new char[200];
        Array.Fill(line, ' ');
        var at = 0;
        foreach (var sign in written)
        {
            if (sign == '\r')
            {
                at = 0;
            }
            else
            {
                line[at++] = sign;
            }
        }

        return new(line);
    }

    private sealed class PassingTime : TimeProvider
    {
        private double seconds;

        public override long TimestampFrequency => 1_000_000;

        public void Pass(double more) => seconds += more;

        public override long GetTimestamp() => (long)(seconds * TimestampFrequency);
    }
}
