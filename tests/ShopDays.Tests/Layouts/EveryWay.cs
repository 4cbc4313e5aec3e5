namespace ShopDays.Tests.Layouts;

/// <summary>Tries every way of cutting a few blanks out of a few boards without flaws or kerf; sizes are whole numbers.</summary>
internal static class EveryWay
{
    /// <summary>The least area of boards out of which all blanks can be cut, every cut going right across.</summary>
    public static int LeastArea((int Length, int Width)[] boards, (int Length, int Width)[] blanks)
    {
        var least = int.MaxValue;
        Deal(0, new int[boards.Length]);
        return least;

        void Deal(int blank, int[] hands)
        {
            if (blank == blanks.Length)
            {
                var area = boards.Zip(hands).Where(pair => pair.Second != 0).Sum(pair => pair.First.Length * pair.First.Width);
                if (area < least && boards.Zip(hands).All(pair => Fits(pair.First.Length, pair.First.Width, pair.Second)))
                {
                    least = area;
                }

                return;
            }

            for (var board = 0; board < boards.Length; board++)
            {
                hands[board] |= 1 << blank;
                Deal(blank + 1, hands);
                hands[board] &= ~(1 << blank);
            }
        }

        bool Fits(int length, int width, int hand)
        {
            var held = Enumerable.Range(0, blanks.Length).Where(blank => (hand >> blank & 1) != 0).ToList();
            if (held.Sum(blank => blanks[blank].Length * blanks[blank].Width) > length * width
                || held.Exists(blank => blanks[blank].Length > length || blanks[blank].Width > width))
            {
                return false;
            }

            if (held.Count <= 1)
            {
                return true;
            }

            // The first blank is always in the nearer part: which part is nearer makes no difference.
            var first = 1 << held[0];
            for (var near = hand & (hand - 1); ; near = (near - 1) & hand & ~first)
            {
                var (one, other) = (near | first, hand & ~(near | first));
                if (other != 0 && (Enumerable.Range(1, length - 1).Any(at => Fits(at, width, one) && Fits(length - at, width, other))
                    || Enumerable.Range(1, width - 1).Any(at => Fits(length, at, one) && Fits(length, width - at, other))))
                {
                    return true;
                }

                if (near == 0)
                {
                    return false;
                }
            }
        }
    }
}
