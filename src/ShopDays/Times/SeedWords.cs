namespace ShopDays.Times;

/// <summary>Seeds of streams of chance that belong to something by its name.</summary>
internal static class SeedWords
{
    /// <summary>A seed mixed with words, by the steps of FNV-1a (G. Fowler, L. C. Noll and P. Vo, from memory).</summary>
    public static int Mix(int seed, string words)
    {
        unchecked
        {
            var hash = 2166136261u ^ (uint)seed;
            foreach (var letter in words)
            {
                hash = (hash ^ letter) * 16777619u;
            }

            return (int)hash;
        }
    }
}
