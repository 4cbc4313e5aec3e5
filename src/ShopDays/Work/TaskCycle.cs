namespace ShopDays.Work;

/// <summary>Finds an order of work that goes round.</summary>
public static class TaskCycle
{
    private enum Colour
    {
        White,
        Grey,
        Black,
    }

    /// <summary>
    /// A walk with three colours: a task met again while it is still grey closes a cycle. Each task is entered once,
    /// so the time is linear in tasks and precedences.
    /// </summary>
    /// <returns>The ids of one cycle, the first again at the end; null when there is none.</returns>
    public static IReadOnlyList<int>? Find(int tasks, IReadOnlyList<Precedence> precedences)
    {
        var after = precedences.ToLookup(one => one.Before, one => one.After);
        var colours = new Colour[tasks];
        var path = new List<int>();
        var open = new Stack<IEnumerator<int>>();
        for (var start = 0; start < tasks; start++)
        {
            if (colours[start] != Colour.White)
            {
                continue;
            }

            Enter(start);
            while (open.Count > 0)
            {
                if (!open.Peek().MoveNext())
                {
                    open.Pop();
                    colours[path[^1]] = Colour.Black;
                    path.RemoveAt(path.Count - 1);
                    continue;
                }

                var next = open.Peek().Current;
                if (colours[next] == Colour.Grey)
                {
                    return [.. path.Skip(path.IndexOf(next)), next];
                }

                if (colours[next] == Colour.White)
                {
                    Enter(next);
                }
            }
        }

        return null;

        void Enter(int id)
        {
            colours[id] = Colour.Grey;
            path.Add(id);
            open.Push(after[id].GetEnumerator());
        }
    }
}
