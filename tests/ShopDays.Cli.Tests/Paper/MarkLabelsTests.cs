using CsCheck;
using ShopDays.Cli.Paper.Overview;
using Xunit;

namespace ShopDays.Cli.Tests.Paper;

public sealed class MarkLabelsTests
{
    private const double Width = 500;
    private const double Slot = 6;

    private static readonly Gen<(double X, double Width)[]> Marks = Gen.Select(Gen.Int[0, 80], Gen.Double[20, 200])
        .Array[1, 4]
        .Select(marks => marks.DistinctBy(mark => mark.Item1).OrderBy(mark => mark.Item1).Select(mark => ((mark.Item1 + 0.5) * Slot, mark.Item2)).ToArray());

    [Fact]
    public void No_tick_runs_through_the_words_of_another_and_no_words_lie_on_others_or_leave_the_picture() => Marks.Sample(marks =>
    {
        var found = MarkLabels.Of(marks, 0, Width);
        Assert.InRange(found.Lines, 1, marks.Length);
        foreach (var (place, label) in found.Labels.Index())
        {
            Assert.InRange(label.Line, 0, found.Lines - 1);
            Assert.InRange(label.Left, 0, Width - marks[place].Width + 1e-9);
            foreach (var (at, other) in found.Labels.Index().Where(one => one.Index != place))
            {
                var isBeside = other.Left >= label.Left + marks[place].Width + MarkLabels.Between - 1e-9 || label.Left >= other.Left + marks[at].Width + MarkLabels.Between - 1e-9;
                var passes = marks[at].X <= label.Left - MarkLabels.Beside + 1e-9 || marks[at].X >= label.Left + marks[place].Width + MarkLabels.Beside - 1e-9;
                Assert.True(other.Line != label.Line || isBeside);
                Assert.True(other.Line <= label.Line || passes);
            }
        }
    });

    [Fact]
    public void Words_with_room_stand_in_one_line_below_the_middle_of_their_ticks()
    {
        var found = MarkLabels.Of([(60, 80), (200, 80), (400, 100)], 0, Width);
        Assert.Equal(1, found.Lines);
        Assert.Equal([20, 160, 350], found.Labels.Select(label => label.Left));
    }
}
