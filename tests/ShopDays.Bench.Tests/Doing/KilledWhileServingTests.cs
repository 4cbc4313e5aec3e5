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
    private const int Lives = 3;

    [Fact]
    public async Task What_a_page_said_to_be_logged_is_there_after_the_program_was_killed_while_hands_were_writing_and_a_begun_task_goes_on()
    {
        using var folder = new FreshFolder();
        folder.WithATray();
        using var hands = new WritingHands();
        Instant? began = null;
        for (var life = 0; life < Lives; life++)
        {
            using var program = Start(folder.Path);
            try
            {
                var address = await AddressOf(program);
                using var visitor = new Visitor(address);
                var (status, _) = await visitor.Send("/start", ("who", "maker"), ("job", "tray"), ("task", "fetch and stack the boards"));
                Assert.Equal(HttpStatusCode.Redirect, status);
                await hands.WriteWhile(address, first: 1 + (400 * life), enough: 6, () => Kill(program));
            }
            finally
            {
                await Kill(program);
            }

            using var log = ShopLog.OpenToRead(new(folder.Path));
            var logged = log!.All().Select(entry => (int)entry.Took.Minutes).ToList();
            Assert.Equal(logged.Distinct().Order(), logged.Order());
            Assert.Empty(hands.Answered.Except(logged));
            Assert.InRange(logged.Count, hands.Answered.Count, hands.Sent);

            // Begun in the first life, and the same ever since.
            var begun = Assert.Single(log.Begun.All());
            Assert.Equal(("fetch and stack the boards", (Instant?)null), (begun.Task, begun.PausedAt));
            began ??= begun.Began;
            Assert.Equal(began, begun.Began);
        }
    }

    private static async Task Kill(Process program)
    {
        program.Kill();
        await program.WaitForExitAsync(TestContext.Current.CancellationToken);
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
}
