using ShopDays.Cli.Phrases;
using ShopDays.Measures;

namespace ShopDays.Cli.Terminal;

/// <summary>Which trials narrow a job's estimate, for the eyes.</summary>
internal static class TrialPrint
{
    /// <summary>Prints it.</summary>
    public static void Print(Screen screen, ToldTrials told)
    {
        if (told.Trials.Count == 0)
        {
            screen.Wrapped(told.Advice.Width == WorkTime.Zero
                ? $"Every task of {told.Read.Job.Name} is done: there is nothing left to narrow."
                : $"No short trial would narrow the estimate of {told.Read.Job.Name} by as much as a hundredth.");
            TimesPrint.Print(screen, told.Behind);
            return;
        }

        screen.Wrapped(told.Now);
        screen.Out.WriteLine();
        var table = Grid.WithHeads("", "trial", ">takes", ">narrower by", ">with those above", ">range then");
        foreach (var (at, trial) in told.Trials.Index())
        {
            table.AddTexts(
                CountWords.Number(at + 1),
                $"{trial.Name}: {trial.Quantity}",
                WorkTimeText.Write(trial.Ranked.Trial.Cost.P50),
                told.NarrowerInWords(trial.Ranked.Alone),
                told.NarrowerInWords(trial.Ranked.Together),
                WorkTimeText.Write(trial.Ranked.Together));
        }

        screen.Console.Write(table);
        TimesPrint.Print(screen, told.Behind);
        screen.Out.WriteLine();
        screen.Wrapped(ToldTrials.InGeneral);
        foreach (var (at, trial) in told.Trials.Index())
        {
            PrintHow(screen, at + 1, trial);
        }

        screen.Out.WriteLine();
        screen.Out.WriteLine("Cautions for these trials");
        foreach (var caution in told.Cautions)
        {
            screen.Wrapped($"- {caution.Kind}: {caution.Text} ({caution.SaidBy})", indent: 2);
        }
    }

    // A name in quotes is never broken, so that each line can be copied as it stands.
    private static string HeldTogether(string command) =>
        string.Join('"', command.Split('"').Select((part, at) => at % 2 == 1 ? part.Replace(' ', '\u00a0') : part));

    private static void PrintHow(Screen screen, int number, ToldTrial trial)
    {
        screen.Out.WriteLine();
        screen.Hanging($"{CountWords.Number(number)}. ", $"{trial.Name}, {trial.Quantity}{(trial.At.Length > 0 ? $" in {trial.At}" : "")}. {trial.How}{(trial.Cautions.Count > 0 ? $" Mind: {string.Join(", ", trial.Cautions)}." : "")}");
        screen.Hanging("   ", HeldTogether(trial.Command));
    }
}
