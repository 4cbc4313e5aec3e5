using ShopDays.Plans.Scheduling;

namespace ShopDays.Plans.Bounds;

/// <summary>
/// How much all workers together can do between two minutes: their sessions, the quiet hours cut out where noise is asked
/// for, each of them only so much a day where there is a cap.
/// </summary>
internal sealed class BoundHours : BoundCapacity
{
    private readonly Row[] rows;
    private readonly HeavyCaps perDay;

    /// <summary>Looks through the calendars.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="isNoisy">Whether quiet hours are left out.</param>
    /// <param name="perDay">The most that each worker does in a day; null for no cap.</param>
    public BoundHours(ScheduleProblem problem, bool isNoisy = false, HeavyCaps? perDay = null)
    {
        this.perDay = perDay ?? HeavyCaps.None;
        rows = [.. problem.Workers.Select((worker, number) => new Row(BoundWindows.Of([worker], isNoisy), this.perDay.Of(number)))];
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
            var (row, cap) = (rows[worker], perDay.Of(worker));
            sum += cap == CompiledCalendar.Never ? row.Until(to) - row.Until(from) : row.Capped(from, to, cap);
        }

        return from < to ? sum : 0;
    }

    /// <summary>One worker's windows, with what has gone by before each, and before each day under the cap.</summary>
    private sealed class Row
    {
        private readonly int[] from;
        private readonly int[] to;
        private readonly long[] before;
        private readonly int[] firstOfDay;
        private readonly int[] dayOf;
        private readonly long[] cappedBefore;

        public Row(List<OpenStretch> windows, int perDay)
        {
            from = [.. windows.Select(window => window.From)];
            to = [.. windows.Select(window => window.To)];
            before = new long[windows.Count + 1];
            dayOf = new int[windows.Count];
            var first = new List<int>();
            for (var window = 0; window < windows.Count; window++)
            {
                before[window + 1] = before[window] + to[window] - from[window];
                if (window == 0 || windows[window].Day != windows[window - 1].Day)
                {
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
        }

        public int Last => to.Length == 0 ? 0 : to[^1];

        /// <summary>Minutes there are until a minute.</summary>
        public long Until(int minute)
        {
            var window = EndingAfter(minute);
            return window == to.Length ? before[window] : before[window] + Math.Max(0, minute - from[window]);
        }

        public long Capped(int begin, int end, int perDay)
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
            return head + cappedBefore[lastDay] - cappedBefore[firstDay + 1] + tail;
        }

        private int EndingAfter(int minute)
        {
            var found = Array.BinarySearch(to, minute + 1);
            return found < 0 ? ~found : found;
        }
    }
}
