using System.Numerics;
using System.Runtime.InteropServices;
using ShopDays.Times.Regression;
using ShopDays.Work;

namespace ShopDays.Times;

/// <summary>
/// A job's tasks as figures, for drawing them many times over. Each task has a place: those of one operation and method stand
/// side by side, so that a term that concerns them alone concerns one stretch of places; guessed tasks come last.
/// </summary>
internal sealed class CourseFigures
{
    private const int NoBlock = -1;

    private readonly Term[] terms;
    private readonly double[] centres;
    private readonly double[] noises;
    private readonly double[] wholes;
    private readonly LuckTable[] tables;
    private readonly LuckSpread[] spreads;
    private readonly GuessSides[] sides;

    /// <summary>Works the figures out.</summary>
    public CourseFigures(RateModel model, IReadOnlyList<ShopTask> tasks)
    {
        var known = Enumerable.Range(0, tasks.Count)
            .Where(task => tasks[task].Timing is TaskTiming.ByOperation)
            .Select(task => (Task: task, Figures: model.Whiten((TaskTiming.ByOperation)tasks[task].Timing)))
            .OrderBy(one => one.Figures.Row.Block)
            .Select(one => (one.Task, one.Figures.Row, one.Figures.Terms))
            .ToArray();
        var guesses = Enumerable.Range(0, tasks.Count)
            .Where(task => tasks[task].Timing is TaskTiming.ByGuess)
            .Select(task => (Task: task, ((TaskTiming.ByGuess)tasks[task].Timing).Guess))
            .ToArray();
        Tasks = [.. known.Select(one => one.Task), .. guesses.Select(one => one.Task)];
        Padded = (Tasks.Length + Vector<double>.Count - 1) / Vector<double>.Count * Vector<double>.Count;
        (Terms, terms) = TermsOf([.. known.Select(one => one.Terms)]);
        centres = [.. known.Select(one => one.Row.Offset + one.Terms.Location), .. new double[Padded - known.Length]];
        noises = [.. known.Select(one => one.Row.Noise)];
        wholes = [.. Enumerable.Repeat(1.0, known.Length), .. guesses.Select(one => one.Guess.Likely.Minutes), .. new double[Padded - Tasks.Length]];
        sides = [.. guesses.Select(one => GuessSides.Of(one.Guess))];
        var alike = new Dictionary<(int Block, double Size), (LuckSpread Spread, LuckTable Table)>();
        var lucks = known.Select((one, place) => LuckOf(one.Row.Block, centres[place])).ToArray();
        spreads = [.. lucks.Select(one => one.Spread)];
        tables = spreads.Any(one => one.ShareOfLog > 0) ? [.. lucks.Select(one => one.Table)] : [];

        (LuckSpread Spread, LuckTable Table) LuckOf(int block, double size)
        {
            if (!alike.TryGetValue((block, size), out var luck))
            {
                var spread = model.Luck.Of(block, size, 2 * model.NoiseShape);
                luck = (spread, spread.Table());
                alike.Add((block, size), luck);
            }

            return luck;
        }
    }

    /// <summary>The number of the task at each place.</summary>
    public int[] Tasks { get; }

    /// <summary>How many places there are with those that only fill the last vector.</summary>
    public int Padded { get; }

    /// <summary>What each standard normal of a course stands for: a term that all operations share, of block -1, or one of a block of its own.</summary>
    public IReadOnlyList<(int Block, int Term)> Terms { get; }

    /// <summary>How many standard normals the rates of a course take.</summary>
    public int Normals => terms.Length;

    /// <summary>Whether the luck of known tasks comes out of the log, too.</summary>
    public bool IsLuckLogged => tables.Length > 0;

    /// <summary>Whether the task at a place is of an operation whose rate is known.</summary>
    public bool IsKnown(int place) => place < noises.Length;

    /// <summary>The standard deviation of the noise of a known task where the noise scale is 1.</summary>
    public double NoiseAt(int place) => noises[place];

    /// <summary>How the luck of a known task is spread.</summary>
    public LuckSpread SpreadAt(int place) => spreads[place];

    /// <summary>ln of the minutes at each place, luck left out; 0 for a guess.</summary>
    /// <param name="normals">Standard normals, times the noise scale.</param>
    /// <param name="into">By place, filled up.</param>
    public void WriteRates(ReadOnlySpan<double> normals, Span<double> into)
    {
        centres.CopyTo(into);
        var places = MemoryMarshal.Cast<double, Vector<double>>(into);
        for (var number = 0; number < terms.Length; number++)
        {
            var normal = new Vector<double>(normals[number]);
            var figures = MemoryMarshal.Cast<double, Vector<double>>(terms[number].Figures);
            var stretch = places.Slice(terms[number].From / Vector<double>.Count, figures.Length);
            for (var at = 0; at < figures.Length; at++)
            {
                stretch[at] += normal * figures[at];
            }
        }
    }

    /// <summary>ln of the minutes at each place in parts of the whole, which is that of a guess and 1 of a known task.</summary>
    /// <param name="rates">As <see cref="WriteRates"/> writes them.</param>
    /// <param name="usual">The noise scale as it usually is.</param>
    /// <param name="scale">The noise scale of the course.</param>
    /// <param name="deviates">Standard normals by place.</param>
    /// <param name="shares">Shares by place, of known tasks, that choose where luck comes from; empty where all is as believed.</param>
    /// <param name="into">By place, filled up.</param>
    public void WriteLogs(ReadOnlySpan<double> rates, double usual, double scale, ReadOnlySpan<double> deviates, ReadOnlySpan<double> shares, Span<double> into)
    {
        for (var place = 0; place < noises.Length; place++)
        {
            var luck = tables.Length > 0 && tables[place].IsOfLog(shares[place], out var off) ? usual * off : scale * deviates[place];
            into[place] = rates[place] + (noises[place] * luck);
        }

        for (var guess = 0; guess < sides.Length; guess++)
        {
            into[noises.Length + guess] = sides[guess].LogAt(deviates[noises.Length + guess]);
        }
    }

    /// <summary>Makes minutes of the logarithms of <see cref="WriteLogs"/>.</summary>
    public void RaiseToMinutes(Span<double> logs)
    {
        var places = MemoryMarshal.Cast<double, Vector<double>>(logs);
        var whole = MemoryMarshal.Cast<double, Vector<double>>(wholes);
        for (var at = 0; at < places.Length; at++)
        {
            places[at] = whole[at] * Vector.Exp(places[at]);
        }
    }

    /// <summary>The terms that concern any task, each with its figures from the first place that it concerns to the last, filled up.</summary>
    private static (IReadOnlyList<(int Block, int Term)> Which, Term[] Terms) TermsOf(Whitened[] known)
    {
        var common = known.Length == 0 ? 0 : known[0].Common.Length;
        List<((int Block, int Term) Which, Term Term)> found =
        [
            .. Enumerable.Range(0, common)
                .Select(term => (Which: (NoBlock, term), Term: Term.Of([.. known.Select(one => one.Common[term])])))
                .Concat(known
                    .SelectMany(one => one.Own.Select((_, term) => (one.Block, term)))
                    .Distinct()
                    .Select(own => (Which: own, Term: Term.Of([.. known.Select(one => one.Block == own.Block ? one.Own[own.term] : 0)]))))
                .Where(one => one.Term is not null)
                .Select(one => (one.Which, one.Term!)),
        ];
        return ([.. found.Select(one => one.Which)], [.. found.Select(one => one.Term)]);
    }

    /// <summary>A term of the rates.</summary>
    /// <param name="From">The first place, the first of a vector.</param>
    /// <param name="Figures">Its figures there and at the places after it, whole vectors of them.</param>
    private sealed record Term(int From, double[] Figures)
    {
        /// <summary>The term, or null where it concerns no task.</summary>
        public static Term? Of(double[] figures)
        {
            var first = Array.FindIndex(figures, figure => figure != 0);
            if (first < 0)
            {
                return null;
            }

            var width = Vector<double>.Count;
            var from = first / width * width;
            var places = Array.FindLastIndex(figures, figure => figure != 0) + 1 - from;
            var filled = new double[(places + width - 1) / width * width];
            figures.AsSpan(from, places).CopyTo(filled);
            return new(from, filled);
        }
    }
}
