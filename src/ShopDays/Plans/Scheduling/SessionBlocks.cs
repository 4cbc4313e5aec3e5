namespace ShopDays.Plans.Scheduling;

/// <summary>
/// Tasks that are planned together because some of them must share a session: spreading the glue and squaring up, and
/// whatever has to come between the two. Every other task is a block of its own.
/// </summary>
/// <remarks>
/// The order of the blocks is an order of work: every block comes after all the blocks it depends on. A block is a set
/// of tasks that reach each other when links within a session are followed both ways (R. E. Tarjan, 1972, from memory).
/// </remarks>
internal static class SessionBlocks
{
    /// <summary>The block of each task; blocks are numbered so that earlier work has lower numbers.</summary>
    public static int[] Find(int tasks, IReadOnlyList<CompiledPrecedence> precedences)
    {
        var after = new Rows<int>(tasks, precedences
            .Select(one => (one.Before, one.After))
            .Concat(precedences.Where(one => one.SameSession).Select(one => (one.After, one.Before))));
        var walk = new Walk(after, tasks);
        for (var task = 0; task < tasks; task++)
        {
            walk.From(task);
        }

        // The walk closes the last blocks first.
        return [.. walk.BlockOf.Select(block => walk.Blocks - 1 - block)];
    }

    private sealed class Walk(Rows<int> after, int tasks)
    {
        private readonly int[] met = new int[tasks];
        private readonly int[] reaches = new int[tasks];
        private readonly int[] next = new int[tasks];
        private readonly Stack<int> path = new();
        private readonly Stack<int> open = new();
        private int clock;

        public int[] BlockOf { get; } = [.. Enumerable.Repeat(-1, tasks)];

        public int Blocks { get; private set; }

        public void From(int root)
        {
            if (met[root] != 0)
            {
                return;
            }

            Enter(root);
            while (path.TryPeek(out var task))
            {
                if (next[task] < after[task].Length)
                {
                    Look(task, after[task][next[task]++]);
                    continue;
                }

                path.Pop();
                if (path.TryPeek(out var parent))
                {
                    reaches[parent] = Math.Min(reaches[parent], reaches[task]);
                }

                if (reaches[task] == met[task])
                {
                    Close(task);
                }
            }
        }

        private void Look(int task, int other)
        {
            if (met[other] == 0)
            {
                Enter(other);
            }
            else if (BlockOf[other] < 0)
            {
                reaches[task] = Math.Min(reaches[task], met[other]);
            }
        }

        private void Enter(int task)
        {
            met[task] = reaches[task] = ++clock;
            path.Push(task);
            open.Push(task);
        }

        private void Close(int task)
        {
            int member;
            do
            {
                member = open.Pop();
                BlockOf[member] = Blocks;
            }
            while (member != task);

            Blocks++;
        }
    }
}
