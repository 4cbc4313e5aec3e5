using CsCheck;
using ShopDays.Layouts.Search;
using Xunit;

namespace ShopDays.Tests.Layouts;

public sealed class BoardFillTests
{
    private static readonly Gen<(int Length, int Width, Candidate[] Candidates)> Boards =
        from length in Gen.Int[4, 14]
        from width in Gen.Int[2, 9]
        from candidates in (
            from along in Gen.Int[1, 9]
            from across in Gen.Int[1, 6]
            from value in Gen.Int[1, 40]
            from most in Gen.Int[1, 2]
            select new Candidate(along, across, value, most)).Array[1, 3]
        select (length, width, candidates);

    [Fact]
    public void Nothing_that_can_be_built_is_better_than_what_is_proven() => Boards.Sample(
        board =>
        {
            // Costs that are sums of halves: every sum is exact in any order.
            var cuts = new CostOfCuts(1, 0.5, 2, 0.25);
            foreach (var cost in (CostOfCuts[])[default, cuts])
            {
                var plain = Plainly(board.Length, board.Width, board.Candidates, cost);
                foreach (var (hope, detail) in ((double, int)[])[(1, 128), (0.9, 3)])
                {
                    var filled = new BoardFill(board.Length, board.Width, board.Candidates, cost, detail).Find(int.MaxValue, hope: hope);
                    Assert.True(filled.IsProven);
                    Assert.Equal(plain, filled.Value);
                }
            }
        },
        iter: 3000);

    [Fact]
    public void What_is_found_within_a_limit_is_no_better_than_what_is_proven() => Boards.Sample(
        board =>
        {
            var best = new BoardFill(board.Length, board.Width, board.Candidates).Find(int.MaxValue);
            var some = new BoardFill(board.Length, board.Width, board.Candidates).Find(3);
            Assert.True(some.Value <= best.Value);
            Assert.True(!some.IsProven || some.Value == best.Value);
        },
        iter: 300);

    [Fact]
    public void A_piece_of_every_size_is_worth_what_the_plainest_recursion_says() => Boards.Sample(
        board =>
        {
            var table = new PieceValues(board.Length, board.Width, board.Candidates);
            var coarse = new PieceValues(board.Length, board.Width, board.Candidates, 2, 2);
            var plain = new double[board.Length + 1, board.Width + 1];
            for (var length = 1; length <= board.Length; length++)
            {
                for (var width = 1; width <= board.Width; width++)
                {
                    var whole = board.Candidates.Where(one => one.Length <= length && one.Width <= width).Select(one => one.Value);
                    var crosscut = Enumerable.Range(1, length - 1).Select(at => plain[at, width] + plain[length - at, width]);
                    var ripped = Enumerable.Range(1, width - 1).Select(at => plain[length, at] + plain[length, width - at]);
                    plain[length, width] = whole.Concat(crosscut).Concat(ripped).DefaultIfEmpty().Max();
                    Assert.Equal(plain[length, width], table.Best(length, width));
                    Assert.True(coarse.Best(length, width) >= plain[length, width]);
                }
            }
        },
        iter: 300);

    [Fact]
    public void No_filling_earns_more_than_the_limit_says_in_steps_of_any_size() => Boards.Sample(
        board =>
        {
            var cuts = new CostOfCuts(1, 0.5, 2, 0.25);
            Candidate[] fitting = [.. board.Candidates.Where(one => one.Length <= board.Length && one.Width <= board.Width)];
            var filled = new BoardFill(board.Length, board.Width, fitting, cuts).Find(int.MaxValue);
            var (along, across) = (fitting.Select(one => one.Length).Append(board.Length).Min(), fitting.Select(one => one.Width).Append(board.Width).Min());
            foreach (var step in ((int, int)[])[(1, 1), (along, across), ((along + 1) / 2, (across + 1) / 2)])
            {
                var taken = new double[fitting.Length];
                var most = new SawnValues((board.Length, board.Width), fitting, step, cuts, 0, default).Most([.. fitting.Select(one => one.Value)], taken);
                Assert.True(most >= filled.Value);
                Assert.Equal(most > 0, taken.Any(count => count > 0));
            }
        },
        iter: 300);

    [Fact]
    public void A_cut_that_costs_more_than_its_blank_is_worth_is_not_made()
    {
        Candidate[] candidates = [new(5, 4, 10, 1)];
        Assert.Null(new BoardFill(10, 4, candidates, new CostOfCuts(11, 0, 1, 0)).Find(100).Filling);
        Assert.Equal(1, new BoardFill(10, 4, candidates, new CostOfCuts(9, 0, 1, 0)).Find(100).Value);
    }

    [Fact]
    public void A_filling_as_long_as_the_board_is_kept_beside_a_shorter_one_of_the_same_blanks()
    {
        // Worked out by hand; a crosscut is 1 and 0.5 a width, a rip 2 and 0.25 a length. Two of 3 x 3 and the one of
        // 7 x 2 make 7 x 5, worth 95 - 2.5 (3 from 3) - 2.5 (6 to length) - 3.75 (rip) = 86.25, or 10 x 5, worth
        // 95 - 2.5 (3 to length) - 3.75 (rip) - 2.75 (3 to width) - 3.5 (crosscut) = 82.5. Trimmed by a crosscut of 3.5
        // the first is still worth more, but with one of 9 x 2 beside it (18, rip 4.25) all is 9 x 7 and has to be cut
        // off the board as well (4.5): 86.25 - 3.5 + 18 - 4.25 - 4.5 = 92. The second needs no cut but the blank's
        // trim (2) and a rip (4.5): 82.5 + 18 - 6.5 = 94. The other way to 9 x 7, the two of 3 x 3 (63.5) beside the
        // other two (29 + 18 - 2 - 4.25 = 40.75), is 63.5 + 40.75 - 2.5 - 4.25 - 4.5 = 93.
        // Cut with its waste there is one more to be had: two rips of the whole board (4.5 each) and four crosscuts
        // (2.5 twice, 2 twice) free the same four blanks: 113 - 18 = 95.
        Candidate[] candidates = [new(3, 3, 33, 2), new(7, 2, 29, 1), new(9, 2, 18, 2)];
        var cuts = new CostOfCuts(1, 0.5, 2, 0.25);
        Assert.Equal(95, AnyCuts(10, 7, candidates, cuts));
        foreach (var (hope, detail) in ((double, int)[])[(1, 128), (0.9, 3)])
        {
            var filled = new BoardFill(10, 7, candidates, cuts, detail).Find(int.MaxValue, hope: hope);
            Assert.True(filled.IsProven);
            Assert.Equal(94, filled.Value);
            Assert.Equal((10, 7), (filled.Filling!.Length, filled.Filling.Width));
        }
    }

    [Fact]
    public void Cutting_right_across_in_any_way_yields_no_more_when_cuts_are_free_and_no_less_when_they_cost() => Boards.Sample(
        board =>
        {
            var cuts = new CostOfCuts(1, 0.5, 2, 0.25);
            var free = new BoardFill(board.Length, board.Width, board.Candidates).Find(int.MaxValue);
            var costly = new BoardFill(board.Length, board.Width, board.Candidates, cuts).Find(int.MaxValue);
            Assert.Equal(AnyCuts(board.Length, board.Width, board.Candidates, default), free.Value);
            Assert.True(AnyCuts(board.Length, board.Width, board.Candidates, cuts) >= costly.Value);
        },
        iter: 100);

    /// <summary>
    /// The most of a board by any cuts right across, waste and all: the best of every piece with at most so many of each
    /// kind, from every cut of it and every way to share them out.
    /// </summary>
    private static double AnyCuts(int length, int width, Candidate[] candidates, CostOfCuts cuts)
    {
        int[][] shares = [[]];
        foreach (var one in candidates)
        {
            shares = [.. shares.SelectMany(share => Enumerable.Range(0, one.Most + 1).Select(count => (int[])[.. share, count]))];
        }

        // For every share the pairs of shares that make it up.
        var pairs = shares.Select(all => (
            from first in Enumerable.Range(0, shares.Length)
            where shares[first].Zip(all).All(pair => pair.First <= pair.Second)
            let rest = Array.FindIndex(shares, share => share.Zip(shares[first], (one, other) => one + other).SequenceEqual(all))
            select (Near: first, Far: rest)).ToArray()).ToArray();
        var best = new double[length + 1, width + 1, shares.Length];
        for (var along = 1; along <= length; along++)
        {
            for (var across = 1; across <= width; across++)
            {
                for (var all = 0; all < shares.Length; all++)
                {
                    var most = candidates.Where((one, kind) => one.Length == along && one.Width == across && shares[all][kind] > 0).Select(one => one.Value).Append(0).Max();
                    foreach (var (near, far) in pairs[all])
                    {
                        for (var at = 1; at < along; at++)
                        {
                            most = Math.Max(most, best[at, across, near] + best[along - at, across, far] - cuts.CrosscutOf(across));
                        }

                        for (var at = 1; at < across; at++)
                        {
                            most = Math.Max(most, best[along, at, near] + best[along, across - at, far] - cuts.RipOf(along));
                        }
                    }

                    best[along, across, all] = most;
                }
            }
        }

        return best[length, width, shares.Length - 1];
    }

    /// <summary>Builds all that can be built, end to end and side by side, until nothing new comes, and takes the best.</summary>
    private static double Plainly(int length, int width, Candidate[] candidates, CostOfCuts cuts)
    {
        var known = new Dictionary<(int Length, int Width, string Counts), (double Value, int[] Counts)>();
        var fresh = new Queue<(int Length, int Width, int[] Counts, double Value)>();
        for (var kind = 0; kind < candidates.Length; kind++)
        {
            var counts = new int[candidates.Length];
            counts[kind] = 1;
            Keep(candidates[kind].Length, candidates[kind].Width, counts, candidates[kind].Value);
        }

        while (fresh.TryDequeue(out var one))
        {
            foreach (var ((otherLength, otherWidth, _), (otherValue, otherCounts)) in known.ToList())
            {
                int[] counts = [.. one.Counts.Zip(otherCounts, (first, second) => first + second)];
                var (along, across) = (Math.Max(one.Length, otherLength), Math.Max(one.Width, otherWidth));
                var rip = one.Width == otherWidth ? 0 : cuts.RipOf(one.Width < otherWidth ? one.Length : otherLength);
                var crosscut = one.Length == otherLength ? 0 : cuts.CrosscutOf(one.Length < otherLength ? one.Width : otherWidth);
                Keep(one.Length + otherLength, across, counts, one.Value + otherValue - rip - cuts.CrosscutOf(across));
                Keep(along, one.Width + otherWidth, counts, one.Value + otherValue - crosscut - cuts.RipOf(along));
            }
        }

        return known.Select(made => made.Value.Value - Math.Min(
            Crosscut(made.Key.Length, width) + Rip(made.Key.Width, made.Key.Length), Rip(made.Key.Width, length) + Crosscut(made.Key.Length, made.Key.Width))).Append(0).Max();

        double Crosscut(int at, int wide) => at < length ? cuts.CrosscutOf(wide) : 0;

        double Rip(int at, int along) => at < width ? cuts.RipOf(along) : 0;

        void Keep(int along, int across, int[] counts, double value)
        {
            var key = (along, across, string.Join(',', counts));
            var fits = along <= length && across <= width && counts.Zip(candidates).All(pair => pair.First <= pair.Second.Most);
            if (fits && (!known.TryGetValue(key, out var before) || before.Value < value))
            {
                known[key] = (value, counts);
                fresh.Enqueue((along, across, counts, value));
            }
        }
    }
}
