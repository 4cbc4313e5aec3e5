namespace ShopDays.Plans.Scheduling;

/// <summary>
/// How many of a resource are in use over time: what is kept of it, and where a lone worker works. He is never in his own
/// way, so that only those who would keep it have to look at his work.
/// </summary>
/// <param name="minutes">Until when things usually come and go.</param>
/// <param name="hasLoneWorker">Whether one worker is all there is, and nothing may keep another resource instead of this one.</param>
internal sealed class ResourceUse(int minutes, bool hasLoneWorker)
{
    private readonly Usage kept = new(minutes);
    private readonly Stretches? work = hasLoneWorker ? new() : null;

    /// <summary>How many stretches of a lone worker's work there are; those added last can be taken back.</summary>
    public int Worked
    {
        get => work is null ? 0 : work.Count;
        set
        {
            if (work is not null)
            {
                work.Count = value;
            }
        }
    }

    /// <summary>Whether work is remembered apart from what is kept.</summary>
    public bool HasLoneWorker => work is not null;

    /// <summary>Nothing in use.</summary>
    public void Reset()
    {
        kept.Reset();
        Worked = 0;
    }

    /// <summary>Keeps some from a minute to another, which is not included; below 0 gives them back.</summary>
    public void Add(int from, int to, int number) => kept.Add(from, to, number);

    /// <summary>The lone worker works there from a minute to another.</summary>
    public void Work(int from, int to) => work?.Add(from, to);

    /// <summary>The most in use at any minute from one to another, which is not included.</summary>
    public int Most(int from, int to)
    {
        var most = kept.Most(from, to);
        for (var at = from; TryWork(at, to, out var stretch); at = stretch.To)
        {
            most = Math.Max(most, 1 + kept.Most(stretch.From, stretch.To));
        }

        return most;
    }

    /// <summary>The first minute from one on, and before another, at which more than a limit are in use; <see cref="CompiledCalendar.Never"/> when there is none.</summary>
    public int FirstAbove(int limit, int from, int before)
    {
        var first = kept.FirstAbove(limit, from, before);
        for (var at = from; TryWork(at, Math.Min(first, before), out var stretch); at = stretch.To)
        {
            var above = kept.FirstAbove(limit - 1, stretch.From, stretch.To);
            if (above < CompiledCalendar.Never)
            {
                return above;
            }
        }

        return first;
    }

    /// <summary>The first minute from one on at which no more than a limit are in use; <see cref="CompiledCalendar.Never"/> when there is none.</summary>
    public int FirstWithin(int limit, int from)
    {
        var first = kept.FirstWithin(limit, from);
        while (first < CompiledCalendar.Never
            && TryWork(first, CompiledCalendar.Never, out var stretch)
            && stretch.From == first
            && kept.FirstWithin(limit - 1, first) is var without && without > first)
        {
            first = kept.FirstWithin(limit, Math.Min(stretch.To, without));
        }

        return first;
    }

    /// <summary>The same as <see cref="FirstAbove"/>, a lone worker's own work left out.</summary>
    public int FirstKeptAbove(int limit, int from, int before) => kept.FirstAbove(limit, from, before);

    /// <summary>The same as <see cref="FirstWithin"/>, a lone worker's own work left out.</summary>
    public int FirstKeptWithin(int limit, int from) => kept.FirstWithin(limit, from);

    /// <summary>The first minute after one at which fewer are in use than before; <see cref="CompiledCalendar.Never"/> when there is none.</summary>
    public int NextFall(int after) => kept.NextFall(after);

    private bool TryWork(int from, int to, out (int From, int To) stretch)
    {
        stretch = default;
        return work is not null && work.TryFirst(from, to, out stretch);
    }
}
