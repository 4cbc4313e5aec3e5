using System.Numerics;
using NodaTime;
using ShopDays.Days;

namespace ShopDays.Plans.Scheduling;

/// <summary>
/// One worker's hours as whole minutes from an origin: sorted stretches that do not touch each other's inside, each in
/// one session, each with its first minute included and its last not.
/// </summary>
internal sealed class CompiledCalendar
{
    /// <summary>Later than any calendar: some thousand years, and two of them still add up.</summary>
    public const int Never = 1 << 29;

    /// <summary>So many bits of a minute are enough to find its session, or one just before it: of a year, cells of four hours and a half.</summary>
    private const int CellBits = 11;

    private readonly int[] from;
    private readonly int[] to;
    private readonly int[] day;
    private readonly int[] quietFrom;
    private readonly int[] quietTo;
    private readonly int[] source;
    private readonly int[] quietOf;
    private readonly int[] cells;
    private readonly int cellShift;

    /// <summary>The ends of the sessions, and behind the last a minute that never comes.</summary>
    private readonly int[] ends;

    /// <exception cref="ArgumentException">Stretches are empty, out of order or overlap, or days go back.</exception>
    public CompiledCalendar(IReadOnlyList<OpenStretch> open, IReadOnlyList<QuietStretch> quiet)
        : this(open, quiet, [.. Enumerable.Range(0, open.Count)])
    {
    }

    private CompiledCalendar(IReadOnlyList<OpenStretch> open, IReadOnlyList<QuietStretch> quiet, int[] source)
    {
        from = [.. open.Select(one => one.From)];
        to = [.. open.Select(one => one.To)];
        day = [.. open.Select(one => one.Day)];
        quietFrom = [.. quiet.Select(one => one.From)];
        quietTo = [.. quiet.Select(one => one.To)];
        this.source = source;
        Check(from, to, nameof(open));
        Check(quietFrom, quietTo, nameof(quiet));
        for (var next = 1; next < day.Length; next++)
        {
            if (day[next] < day[next - 1])
            {
                throw new ArgumentException("a later session lies on an earlier day", nameof(open));
            }
        }

        quietOf = [.. from.Select(minute => FirstAfter(quietTo, minute))];
        cellShift = Math.Max(0, 32 - BitOperations.LeadingZeroCount((uint)Math.Max(0, to.LastOrDefault())) - CellBits);
        cells = new int[(1 << CellBits) + 1];
        for (var cell = 0; cell < cells.Length; cell++)
        {
            cells[cell] = FirstAfter(to, cell << cellShift);
        }

        ends = [.. to, int.MaxValue];
    }

    /// <summary>How many sessions there are.</summary>
    public int Count => from.Length;

    /// <summary>The first minute of each session.</summary>
    public ReadOnlySpan<int> From => from;

    /// <summary>The end of each session.</summary>
    public ReadOnlySpan<int> To => to;

    /// <summary>The day of each session, counted from the origin's.</summary>
    public ReadOnlySpan<int> Day => day;

    /// <summary>The stretches without noise.</summary>
    public IEnumerable<QuietStretch> Quiet => quietFrom.Zip(quietTo, (still, over) => new QuietStretch(still, over));

    /// <summary>Which of the sessions that it was compiled from each one is.</summary>
    public ReadOnlySpan<int> Source => source;

    /// <summary>Days up to the last session.</summary>
    public int Days => day.Length == 0 ? 0 : day[^1] + 1;

    /// <summary>Compiles sessions. Work time is rounded inwards to whole minutes, quiet outwards.</summary>
    /// <param name="sessions">One worker's, in order.</param>
    /// <param name="origin">Minute 0.</param>
    /// <param name="firstDate">Day 0.</param>
    /// <param name="begin">The first minute that can be used; of a session that has begun before, the rest is there.</param>
    public static CompiledCalendar Of(IReadOnlyList<Session> sessions, Instant origin, LocalDate firstDate, int begin = 0)
    {
        var open = new List<OpenStretch>();
        var source = new List<int>();
        var quiet = new List<QuietStretch>();
        for (var index = 0; index < sessions.Count; index++)
        {
            var session = sessions[index];
            var stretch = new OpenStretch(
                Math.Max(begin, Up(session.WorkStart.ToInstant() - origin)),
                Down(session.WorkEnd.ToInstant() - origin),
                Period.DaysBetween(firstDate, session.Date));
            if (stretch.From >= stretch.To)
            {
                continue;
            }

            open.Add(stretch);
            source.Add(index);
            foreach (var still in session.Quiet.Items)
            {
                var begins = Math.Max(Down(still.Start - origin), quiet.Count == 0 ? int.MinValue : quiet[^1].To);
                var ends = Up(still.End - origin);
                if (begins < ends)
                {
                    quiet.Add(new(begins, ends));
                }
            }
        }

        return new(open, quiet, [.. source]);
    }

    /// <summary>The same hours but for those of some days.</summary>
    public CompiledCalendar Without(IReadOnlySet<int> days)
    {
        int[] kept = [.. Enumerable.Range(0, Count).Where(session => !days.Contains(day[session]))];
        return new([.. kept.Select(session => new OpenStretch(from[session], to[session], day[session]))], [.. Quiet], [.. kept.Select(session => source[session])]);
    }

    /// <summary>The first session that ends after a minute, or one a little before it: a cell of time seldom sees more than one session end.</summary>
    public int SessionAbout(int minute)
    {
        unchecked
        {
            return cells[Math.Min(Math.Max(0, minute) >> cellShift, cells.Length - 1)];
        }
    }

    /// <summary>The first session that ends after a minute; <see cref="Count"/> when there is none.</summary>
    public int SessionEndingAfter(int minute)
    {
        unchecked
        {
            var session = SessionAbout(minute);

            // Without a branch that nobody can foretell.
            session += ends[session] <= minute ? 1 : 0;
            while (ends[session] <= minute)
            {
                session++;
            }

            return session;
        }
    }

    /// <summary>When noise must stop in a session that is quiet from then to its end, and not before; <see cref="Never"/> in one that is not quiet at all; below 0 where it is not so simple.</summary>
    public int NoiseStopsAt(int session)
    {
        var first = QuietAfter(session, from[session]);
        if (first == quietTo.Length || quietFrom[first] >= to[session])
        {
            return Never;
        }

        return quietFrom[first] > from[session] && quietTo[first] >= to[session] ? quietFrom[first] : -1;
    }

    /// <summary>Where a stretch of noise that begins at a minute must stop: the minute itself in quiet hours.</summary>
    public int NoiseEndsAt(int minute) => NoiseEndsAt(FirstAfter(quietTo, minute), minute);

    /// <summary>The first of the quiet stretches that ends after a minute of a session.</summary>
    public int QuietAfter(int session, int minute)
    {
        var next = quietOf[session];
        while (next < quietTo.Length && quietTo[next] <= minute)
        {
            next++;
        }

        return next;
    }

    /// <summary>Where a stretch of noise that begins at a minute must stop, when the next quiet stretch is known.</summary>
    public int NoiseEndsAt(int quiet, int minute) => quiet == quietTo.Length ? Never : Math.Max(minute, quietFrom[quiet]);

    /// <summary>The end of a quiet stretch.</summary>
    public int QuietEnd(int quiet) => quietTo[quiet];

    private static int FirstAfter(int[] ends, int minute)
    {
        var found = Array.BinarySearch(ends, minute + 1);
        return found < 0 ? ~found : found;
    }

    private static void Check(int[] from, int[] to, string name)
    {
        for (var index = 0; index < from.Length; index++)
        {
            if (from[index] >= to[index])
            {
                throw new ArgumentException($"stretch {index} is empty", name);
            }

            if (index > 0 && from[index] < to[index - 1])
            {
                throw new ArgumentException($"stretch {index} begins before the one before it ends", name);
            }
        }
    }

    private static int Up(Duration time) => (int)Math.Ceiling(time.TotalMinutes);

    private static int Down(Duration time) => (int)Math.Floor(time.TotalMinutes);
}

/// <summary>A session's work time in minutes from the origin, the end not included, and its day.</summary>
internal readonly record struct OpenStretch(int From, int To, int Day);

/// <summary>A stretch without noise, the end not included.</summary>
internal readonly record struct QuietStretch(int From, int To);
