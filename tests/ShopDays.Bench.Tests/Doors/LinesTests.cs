using System.Net;
using Microsoft.AspNetCore.Connections;
using ShopDays.Cli.Bench.Doors;
using Xunit;

namespace ShopDays.Bench.Tests.Doors;

[Trait("Source", "OWASP Denial of Service Cheat Sheet: limit the connections of one address")]
public sealed class LinesTests
{
    private readonly TaskCompletionSource end = new(TaskCreationOptions.RunContinuationsAsynchronously);
    private readonly ConnectionDelegate door;
    private int inside;
    private int cut;

    public LinesTests() => door = new Lines().Admit(async _ =>
    {
        inside++;
        await end.Task;
    });

    [Fact]
    public async Task One_machine_that_holds_many_lines_keeps_no_other_out()
    {
        List<Task> held = [.. Enumerable.Range(0, Lines.Most + 5).Select(_ => Come("192.0.2.7"))];
        Assert.Equal(Lines.Most, inside);
        Assert.Equal((5, 5), (cut, held.Count(line => line.IsCompleted)));

        held.Add(Come("192.0.2.8"));
        Assert.Equal(Lines.Most + 1, inside);
        end.SetResult();
        await Task.WhenAll(held);

        await Come("192.0.2.7");
        Assert.Equal(Lines.Most + 2, inside);
    }

    [Fact]
    public async Task This_machine_itself_is_not_counted()
    {
        List<Task> held = [.. Enumerable.Range(0, 5 * Lines.Most).Select(_ => Come("127.0.0.1"))];
        Assert.Equal(5 * Lines.Most, inside);
        end.SetResult();
        await Task.WhenAll(held);
    }

    private async Task Come(string from)
    {
        await using var line = new Line { RemoteEndPoint = new IPEndPoint(IPAddress.Parse(from), 50_000) };
        await door(line);
        cut += line.IsCut ? 1 : 0;
    }

    /// <summary>A line without a network.</summary>
    private sealed class Line : DefaultConnectionContext
    {
        public bool IsCut { get; private set; }

        public override void Abort(ConnectionAbortedException abortReason) => IsCut = true;
    }
}
