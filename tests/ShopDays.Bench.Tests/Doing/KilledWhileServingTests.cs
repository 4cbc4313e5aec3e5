using System.Diagnostics;
using System.Net;
using NodaTime;
using ShopDays.Cli.Store;
using ShopDays.Cli.Tests.Commands;
using ShopDays.Cli.Tests.Running;
using Xunit;

namespace ShopDays.Bench.Tests.Doing;

public sealed class KilledWhileServingTests
{
    private const int Times = 6;

    [Fact]
    public async Task What_a_page_said_to_be_logged_is_there_after_the_program_was_killed()
    {
        using var folder = new FreshFolder();
        folder.WithATray();
        for (var time = 1; time <= Times; time++)
        {
            var date = "2026-01-0" + time;
            var key = $"0192f5a0-0000-7000-8000-0000000000{time:00}";
            await Serving(folder, async visitor =>
            {
                var (status, _) = await visitor.Send("/sheet", ("job", "tray"), ("who", "maker"), ("on", date), ("once", key), (await Mark(visitor), "12m"));
                Assert.Equal(HttpStatusCode.Redirect, status);
            });

            using var log = ShopLog.OpenToRead(new(folder.Path));
            Assert.Equal(Enumerable.Range(1, time).Select(day => new LocalDate(2026, 1, day)), log!.All().Select(entry => entry.On.Date));
        }
    }

    [Fact]
    public async Task A_task_that_is_begun_goes_on_after_the_program_was_killed()
    {
        using var folder = new FreshFolder();
        folder.WithATray();
        await Serving(folder, visitor => visitor.Send("/start", ("who", "maker"), ("job", "tray"), ("task", "fetch and stack the boards")));
        await Serving(folder, async visitor => Assert.Contains("class=\"clock\"", (await visitor.Look("/")).Page, StringComparison.Ordinal));
    }

    /// <summary>Serves while something is done, and is then killed.</summary>
    private static async Task Serving(FreshFolder folder, Func<Visitor, Task> act)
    {
        using var program = Start(folder.Path);
        try
        {
            var address = await AddressOf(program);
            using var visitor = new Visitor(address);
            await act(visitor);
        }
        finally
        {
            program.Kill();
            await program.WaitForExitAsync(TestContext.Current.CancellationToken);
        }
    }

    private static Process Start(string folder) => Process.Start(new ProcessStartInfo("dotnet", [Path.Combine(AppContext.BaseDirectory, "shopdays.dll"), "bench", "--port", "0"])
    {
        WorkingDirectory = folder,
        RedirectStandardOutput = true,
    })!;

    private static async Task<Uri> AddressOf(Process program)
    {
        var line = await program.StandardOutput.ReadLineAsync(TestContext.Current.CancellationToken);
        return new(line!.Split(' ')[^1]);
    }

    /// <summary>The field of the first task that is not done.</summary>
    private static async Task<string> Mark(Visitor visitor)
    {
        var page = await visitor.LookWhenWorkedOut("/sheet?job=tray");
        var at = page.IndexOf("name=\"took-", StringComparison.Ordinal) + "name=\"".Length;
        return page[at..page.IndexOf('"', at)];
    }
}
