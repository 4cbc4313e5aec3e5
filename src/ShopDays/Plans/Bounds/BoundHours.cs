using ShopDays.Plans.Scheduling;

namespace ShopDays.Plans.Bounds;

/// <summary>
/// How much all workers together can do between two minutes: their sessions, the quiet hours cut out where noise is asked
/// for, each of them only so much a day, and in a day and the next, where there is a cap.
/// </summary>
internal sealed class BoundHours : BoundCapacity
{
    private readonly Row[] rows;
    private readonly HeavyCaps perDay;

    /// <summary>Looks through the calendars.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="isNoisy">Whether quiet hours are left out.</param>
    /// <param name="perDay">The most that each worker does in a day, and in two days running; null for no cap.</param>
    public BoundHours(ScheduleProblem problem, bool isNoisy = false, HeavyCaps? perDay = null)
    {
        this.perDay = perDay ?? HeavyCaps.None;
        rows = [.. problem.Workers.Select((worker, number) => new Row(BoundWindows.Of([worker], isNoisy), this.perDay.Of(number), this.perDay.OfTwoDays(number)))];
        Last = rows.Select(row => row.Last).DefaultIfEmpty().Max();
    }

    /// <inheritdoc/>
    public override int Last { get; }

    /// <inheritdoc/>
    public override long Between(int from, int to)
    {
        var sum = 0L;
        for (var worker = 0; worker < rows.Length; worker++)
        {
            var row = rows[worker];
            sum += perDay.Of(worker) == CompiledCalendar.Never ? row.Until(to) - row.Until(from) : row.Capped(from, to);
        }

        return from < to ? sum : 0;
    }

    /// <summary>One worker's windows, with what has gone by before each, and before each day and each run of days under the caps.</summary>
    private sealed class Row
    {
        private readonly int perDay;
        private readonly int inTwoDays;
        private readonly int[] from;
        private readonly int[] to;
        private readonly long[] before;
        private readonly int[] firstOfDay;
        private readonly int[] dayOf;
        private readonly long[] cappedBefore;

        /// <summary>Days that follow each other without one between that has no hours: the first of each run, and one behind the last.</summary>
        private readonly int[] firstOfRun;
        private readonly int[] runOf;
        private readonly long[] runsBefore;

        public Row(List<OpenStretch> windows, int perDay, int inTwoDays)
        {
            (this.perDay, this.inTwoDays) = (perDay, inTwoDays);
            from = [.. windows.Select(window => window.From)];
            to = [.. windows.Select(window => window.To)];
            before = new long[windows.Count + 1];
            dayOf = new int[windows.Count];
            var (first, runs) = (new List<int>(), new List<int>());
            for (var window = 0; window < windows.Count; window++)
            {
                before[window + 1] = before[window] + to[window] - from[window];
                if (window == 0 || windows[window].Day != windows[window - 1].Day)
                {
                    if (window == 0 || windows[window].Day != windows[window - 1].Day + 1)
                    {
                        runs.Add(first.Count);
                    }

                    first.Add(window);
                }

                dayOf[window] = first.Count - 1;
            }

            firstOfDay = [.. first, windows.Count];
            cappedBefore = new long[firstOfDay.Length];
            for (var day = 0; day < first.Count; day++)
            {
                cappedBefore[day + 1] = cappedBefore[day] + Math.Min(perDay, before[firstOfDay[day + 1]] - before[firstOfDay[day]]);
            }

            firstOfRun = [.. runs, first.Count];
            runOf = new int[first.Count];
            runsBefore = new long[firstOfRun.Length];
            for (var run = 0; run < runs.Count; run++)
            {
                runOf.AsSpan(firstOfRun[run]..firstOfRun[run + 1]).Fill(run);
                runsBefore[run + 1] = runsBefore[run] + Math.Min(cappedBefore[firstOfRun[run + 1]] - cappedBefore[firstOfRun[run]], MostOf(firstOfRun[run + 1] - firstOfRun[run]));
            }
        }

        public int Last => to.Length == 0 ? 0 : to[^1];

        /// <summary>Minutes there are until a minute.</summary>
        public long Until(int minute)
        {
            var window = EndingAfter(minute);
            return window == to.Length ? before[window] : before[window] + Math.Max(0, minute - from[window]);
        }

        public long Capped(int begin, int end)
        {
            var first = EndingAfter(begin);
            if (first == to.Length || begin >= end)
            {
                return 0;
            }

            var last = EndingAfter(end);
            last = last == to.Length || from[last] >= end ? last - 1 : last;
            if (last < first)
            {
                return 0;
            }

            var (firstDay, lastDay) = (dayOf[first], dayOf[last]);
            if (firstDay == lastDay)
            {
                return Math.Min(perDay, Until(end) - Until(begin));
            }

            var head = Math.Min(perDay, before[firstOfDay[firstDay + 1]] - Until(begin));
            var tail = Math.Min(perDay, Until(end) - before[firstOfDay[lastDay]]);
            var (firstRun, lastRun) = (runOf[firstDay], runOf[lastDay]);
            if (firstRun == lastRun)
            {
                return Math.Min(head + cappedBefore[lastDay] - cappedBefore[firstDay + 1] + tail, MostOf(lastDay - firstDay + 1));
            }

            var behindFirst = firstOfRun[firstRun + 1];
            var inFirst = Math.Min(head + cappedBefore[behindFirst] - cappedBefore[firstDay + 1], MostOf(behindFirst - firstDay));
            var inLast = Math.Min(cappedBefore[lastDay] - cappedBefore[firstOfRun[lastRun]] + tail, MostOf(lastDay - firstOfRun[lastRun] + 1));
            return inFirst + runsBefore[lastRun] - runsBefore[firstRun + 1] + inLast;
        }

        /// <summary>The most that some days running hold: the first as much as a day may, the next what is left of two, and so on in turns.</summary>
        private long MostOf(int days) => inTwoDays >= 2L * perDay ? (long)days * perDay : ((days + 1) / 2 * (long)perDay) + (days / 2 * (long)(inTwoDays - perDay));

        private int EndingAfter(int minute)
        {
            var found = Array.BinarySearch(to, minute + 1);
            return found < 0 ? ~found : found;
        }
    }
}
