using System.Collections.Concurrent;
using System.Net;
using Microsoft.AspNetCore.Connections;

namespace ShopDays.Cli.Bench.Doors;

/// <summary>
/// Counts the lines that stand open, by the machine at their other end: one that holds many, sending nothing, must not keep
/// the shop's own phones out. This machine itself is not counted.
/// </summary>
internal sealed class Lines
{
    /// <summary>A browser holds six lines to one place at the most (from memory): room for a few of them on one machine.</summary>
    public const int Most = 24;

    private readonly ConcurrentDictionary<IPAddress, int> open = new();

    /// <summary>Lets a line in, or cuts it.</summary>
    public ConnectionDelegate Admit(ConnectionDelegate next) => async line =>
    {
        if (line.RemoteEndPoint is not IPEndPoint { Address: var from } || IPAddress.IsLoopback(from))
        {
            await next(line).ConfigureAwait(false);
            return;
        }

        try
        {
            if (open.AddOrUpdate(from, 1, (_, count) => count + 1) > Most)
            {
                line.Abort(new("one machine holds too many lines open"));
                return;
            }

            await next(line).ConfigureAwait(false);
        }
        finally
        {
            if (open.AddOrUpdate(from, 0, (_, count) => count - 1) == 0)
            {
                open.TryRemove(new(from, 0));
            }
        }
    };
}
