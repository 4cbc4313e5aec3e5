using CsCheck;
using ShopDays.Measures;
using Xunit;

namespace ShopDays.Tests.Measures;

public sealed class LengthTests
{
    private static readonly Gen<Length> AnyLength = Gen.Long[-800_000_000, 800_000_000].Select(Length.FromEighthMicrometres);

    [Fact]
    public void Parts_taken_off_and_put_back_make_the_same_board() =>
        Gen.Select(AnyLength, AnyLength).Sample((board, part) => board - part + part == board && board + -board == Length.Zero);

    [Fact]
    public void So_many_pieces_are_as_long_as_their_sum() =>
        Gen.Select(AnyLength, Gen.Int[0, 40]).Sample((piece, count) =>
            Enumerable.Repeat(piece, count).Aggregate(Length.Zero, (sum, next) => sum + next) == count * piece && count * piece == piece * count);

    [Fact]
    public void Sixty_four_64ths_are_an_inch_to_the_last_digit() =>
        Assert.Equal(Length.FromInches(1m), 64 * Length.FromInches(1m / 64));

    [Fact]
    public void A_share_is_never_too_long() =>
        Gen.Select(AnyLength.Where(length => length >= Length.Zero), Gen.Int[1, 12]).Sample((length, shares) =>
            length / shares * shares <= length && length - (length / shares * shares) < Length.FromEighthMicrometres(shares));

    [Fact]
    public void Order_is_by_length() => Gen.Select(AnyLength, AnyLength).Sample((left, right) =>
        Length.Min(left, right) <= Length.Max(left, right)
        && left < right == (left.CompareTo(right) < 0)
        && left >= right == !(left < right)
        && left.Abs() >= Length.Zero);

    [Theory]
    [InlineData(0.00006, 0)]
    [InlineData(0.0000625, 1)]
    [InlineData(-0.0000625, -1)]
    public void Halves_of_the_smallest_step_go_away_from_zero(double millimetres, long steps) =>
        Assert.Equal(steps, Length.FromMillimetres((decimal)millimetres).EighthMicrometres);

    [Fact]
    public void A_length_beyond_the_range_is_an_error_and_no_small_number()
    {
        Assert.Throws<OverflowException>(() => Length.FromMillimetres(1e18m));
        Assert.Throws<OverflowException>(() => Length.FromEighthMicrometres(long.MaxValue) + Length.FromEighthMicrometres(1));
        Assert.Throws<OverflowException>(() => Length.FromEighthMicrometres(long.MaxValue) * 2);
    }

    [Fact]
    public void One_length_goes_into_another_so_many_times() =>
        Assert.Equal(9.5, Length.FromInches(114m) / Length.FromFeet(1));
}
