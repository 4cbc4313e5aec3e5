namespace ShopDays.Layouts.Search;

/// <summary>
/// Looks for a good arrangement: several attempts from nothing by different rules, then the best is bettered by giving a
/// few boards back uncut and placing what came out of them anew. Bounded by counts; one seed gives one answer.
/// </summary>
internal sealed class ArrangementSearch(LayoutProblem problem, Random random)
{
    /// <summary>How much worse, as a share of what its boards cost on average, an arrangement may be at first and still be gone on from.</summary>
    private const double FirstLeeway = 0.15;

    /// <summary>So many rounds for each board are enough for all of that leeway; with fewer there is less time to come down again.</summary>
    private const double RoundsPerBoard = 2_000;

    /// <summary>After so many rounds without anything better it is told all the same how far the search has come.</summary>
    private const int RoundsUntold = 250;

    /// <summary>How many spells as long as the usual one the most thorough effort adds.</summary>
    private const int ThoroughSpells = 9;

    private readonly Want[] many = [.. problem.Wants.Where(want => want.Ways.Count > 1)];
    private readonly Want[] panels = [.. problem.Wants.Where(want => want.MostStrips > 0)];

    /// <summary>The best arrangement found.</summary>
    /// <param name="effort">How many attempts are made.</param>
    /// <param name="enough">When to stop at once; null to go on to the end.</param>
    /// <param name="share">Which share of the rounds that go with the effort is made, 0 to 1.</param>
    public Arrangement Find(LayoutEffort effort, Predicate<Arrangement>? enough = null, double share = 1)
    {
        var best = Start(PlacingRules.Plain[0], plainly: true);
        var bestScore = best.Score();
        var spells = Spells(effort, share);
        var (made, all) = (0, spells.Sum(spell => spell.Rounds));
        Tell(best, bestScore, 0, all);
        foreach (var rules in PlacingRules.Plain.Skip(1).TakeWhile(_ => enough?.Invoke(best) != true))
        {
            Keep(Start(rules, plainly: true));
        }

        foreach (var spell in spells)
        {
            for (var start = 0; start < spell.Starts && enough?.Invoke(best) != true; start++)
            {
                Keep(Start(PlacingRules.Draw(random), plainly: false));
            }

            if (spell.Sticks > 0 && enough?.Invoke(best) != true && StickArrangement.Make(problem, spell.Sticks, random) is { } endToEnd)
            {
                Keep(endToEnd.Arrangement);
                if (endToEnd.IsFull)
                {
                    return best;
                }
            }

            Keep(Improve(best, spell.Rounds, enough, made, all));
            if (enough?.Invoke(best) == true)
            {
                return best;
            }

            Keep(CutAnew(best));
            made += spell.Rounds;
        }

        return best;

        void Keep(Arrangement next)
        {
            var score = next.Score();
            if (score.Beats(bestScore))
            {
                (best, bestScore) = (next, score);
                Tell(best, bestScore, made, all);
            }
        }
    }

    /// <summary>
    /// The spells that go with an effort, each from the best of those before: the usual effort begins as the quick one does, and the
    /// most thorough as the usual one, so that with one seed more effort never ends worse.
    /// </summary>
    private List<(int Starts, int Sticks, int Rounds)> Spells(LayoutEffort effort, double share)
    {
        var blanks = problem.Wants.Sum(want => want.Ways[0].Blanks.Count);
        var usual = (int)(share * Math.Clamp(300 * blanks, 4_000, 18_000));
        List<(int, int, int)> spells = [(0, 6_000, (int)(share * Math.Clamp(10 * blanks, 200, 1_000)))];
        if (effort != LayoutEffort.Quick)
        {
            spells.Add((12, 60_000, usual));
        }

        if (effort == LayoutEffort.Thorough)
        {
            spells.Add((0, 400_000, usual));
            spells.AddRange(Enumerable.Repeat((0, 0, usual), ThoroughSpells - 1));
        }

        return spells;
    }

    /// <summary>The best arrangement found from one that is there.</summary>
    /// <param name="from">Where to begin.</param>
    /// <param name="rounds">How often a few boards are placed anew.</param>
    /// <param name="enough">When to stop at once; null to go on to the end.</param>
    /// <param name="before">How many rounds were made before.</param>
    /// <param name="inAll">How many rounds are made in all; those of this spell when not given.</param>
    public Arrangement Improve(Arrangement from, int rounds, Predicate<Arrangement>? enough = null, int before = 0, int? inAll = null)
    {
        var (best, bestScore) = (from, from.Score());
        var (current, currentScore) = (best, bestScore);
        var told = 0;
        var leewayAtFirst = FirstLeeway * Math.Min(1, rounds / (RoundsPerBoard * Math.Max(1, from.BoardsCut)));
        for (var round = 0; round < rounds && enough?.Invoke(best) != true; round++)
        {
            var next = Rearrange(current);
            var score = next.Score();
            var leeway = leewayAtFirst * (1 - ((round + 1.0) / rounds)) * random.NextDouble() / Math.Max(1, next.BoardsCut);
            if (score.Beats(currentScore, bestScore.Money * leeway, bestScore.Bought * leeway))
            {
                (current, currentScore) = (next, score);
                if (score.Beats(bestScore))
                {
                    (best, bestScore) = (next, score);
                    told = round;
                    Tell(best, bestScore, before + round, inAll ?? rounds);
                }
            }

            if (round - told >= RoundsUntold)
            {
                told = round;
                Tell(best, bestScore, before + round, inAll ?? rounds);
            }
        }

        Tell(best, bestScore, before + rounds, inAll ?? rounds);
        return best;
    }

    /// <summary>The same blanks on the same boards, each board cut up in the cheapest way where it can be found.</summary>
    private Arrangement CutAnew(Arrangement from)
    {
        var next = from.Copy();
        for (var board = 0; board < problem.Stock.Count; board++)
        {
            if (next.Cuttings[board] is { } cutting && BestCuts.For(cutting, problem, board) is { } anew)
            {
                next.Replace(board, anew);
            }
        }

        return next.Score().Beats(from.Score()) ? next : from;
    }

    private void Tell(Arrangement best, LayoutScore score, int round, int rounds) =>
        problem.Progress?.Report(new LayoutStep(round, rounds, best.PartsLeft, score.Money));

    private Arrangement Start(PlacingRules rules, bool plainly)
    {
        var arrangement = new Arrangement(problem);
        if (!plainly)
        {
            foreach (var want in problem.Wants.Where(want => want.Ways.Count > 1 && random.Next(3) == 0))
            {
                arrangement.Choose(want, want.Ways[random.Next(want.Ways.Count)]);
            }
        }

        new BlankPlacer(problem, arrangement, rules, random).PlaceLeft();
        return arrangement;
    }

    private Arrangement Rearrange(Arrangement from)
    {
        var next = from.Copy();
        new Undoing(problem, next, random).Some();
        switch (random.Next(10))
        {
            case 0 or 1 when PickWant() is { } want:
                next.Choose(want, want.Ways[random.Next(want.Ways.Count)]);
                break;
            case 2 when PickGroup(from) is { } group:
                next.Clear([.. group.Wants]);
                break;
            case 3 or 4 when PickPanel() is { } panel:
                new StripsAtHand(problem, random).Choose(next, panel);
                break;
            default:
                break;
        }

        new BlankPlacer(problem, next, PlacingRules.Draw(random), random).PlaceLeft();
        next.GiveBackEmpty();
        return next;
    }

    private Want? PickWant() => many.Length == 0 ? null : many[random.Next(many.Length)];

    private Want? PickPanel() => panels.Length == 0 ? null : panels[random.Next(panels.Length)];

    private MatchedGroup? PickGroup(Arrangement from)
    {
        var spread = problem.Groups.Where(group => !from.Honours(group)).ToList();
        return spread.Count == 0 ? null : spread[random.Next(spread.Count)];
    }
}
