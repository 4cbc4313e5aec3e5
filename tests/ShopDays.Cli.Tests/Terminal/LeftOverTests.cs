using ShopDays.Cli.Phrases;
using ShopDays.Cli.Tests.Paper;
using ShopDays.Layouts;
using ShopDays.Measures;
using ShopDays.Parts;
using Xunit;

namespace ShopDays.Cli.Tests.Terminal;

/// <summary>What no board yields is told in a line for each part and reason, however many pieces that is.</summary>
public sealed class LeftOverTests
{
    private static readonly Part Rail = ALayout.Part("rail", 25, 30, 2) with { Spare = 1 };
    private static readonly Part Top = ALayout.Part("top", 1, 40, 20);
    private static readonly UnplacedReason NoRoom = new UnplacedReason.NoRoom();

    [Fact]
    public void Pieces_of_one_part_with_one_reason_share_a_line() => Assert.Equal(
        ["rail 3 to 26 (24 of 26, 1 spare): the other parts take the room"],
        Lines(Enumerable.Range(3, 24).Reverse().Select(number => new Unplaced(Rail, number, NoRoom))));

    [Fact]
    public void A_part_has_a_line_for_each_reason_with_gaps_in_its_numbers() => Assert.Equal(
        [
            "rail 1, 2, 5, 7 to 9 (6 of 26): the other parts take the room",
            "rail 26 (spare): it must come from B, and no such board of its timber is on hand",
        ],
        Lines([.. ((int[])[1, 2, 5, 7, 8, 9]).Select(number => new Unplaced(Rail, number, NoRoom)), new Unplaced(Rail, 26, new UnplacedReason.NoSuchStock("B"))]));

    [Fact]
    public void All_of_a_part_is_said_and_one_of_one_has_no_number() => Assert.Equal(
        ["rail 1 to 26 (all 26, 1 spare): the other parts take the room", "top: the other parts take the room"],
        Lines([.. Enumerable.Range(1, 26).Select(number => new Unplaced(Rail, number, NoRoom)), new Unplaced(Top, 1, NoRoom)]));

    [Fact]
    public void Two_of_two_are_both() => Assert.Equal(
        ["rail 1, 2 (both): the other parts take the room"],
        Lines(((int[])[1, 2]).Select(number => new Unplaced(Rail with { Count = 2, Spare = 0 }, number, NoRoom))));

    private static IEnumerable<string> Lines(IEnumerable<Unplaced> unplaced) => UnplacedWords.Lines(unplaced, LengthFormat.Inches(16));
}
