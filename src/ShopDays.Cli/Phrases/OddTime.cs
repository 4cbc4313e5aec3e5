using System.Globalization;
using ShopDays.Measures;
using ShopDays.Times;

namespace ShopDays.Cli.Phrases;

/// <summary>A time that is far from what was expected, with what a maker can do about it.</summary>
/// <param name="Judged">The time beside what was expected.</param>
internal sealed record OddTime(JudgedWork Judged)
{
    /// <summary>Share of what is expected that is shorter, at the lower and the upper end of the range that is believed unasked.</summary>
    private const double Tail = 0.001;

    /// <summary>The numbers of its entries.</summary>
    public string Numbers => string.Join(' ', Judged.Work.Entries);

    /// <summary>The range that 998 in 1,000 times lie in.</summary>
    public (WorkTime Low, WorkTime High) Expected => (Judged.Expected.At(Tail), Judged.Expected.At(1 - Tail));

    /// <summary><c>entry 12, hall-bench, rip A1 into 3: took 5 h, expected between 8 and 55 min</c>.</summary>
    public string Told => $"entry {string.Join(", ", Judged.Work.Entries)}, {(Judged.Work.Job is { } job ? job + ", " : "")}{Judged.Work.Task}, {DateWords.Of(Judged.Work.On)}: took {WorkTimeText.Write(Judged.Work.Took)}, expected between {WorkTimeText.Write(Expected.Low)} and {WorkTimeText.Write(Expected.High)} ({Factor})";

    /// <summary>What can be typed, each with what it means.</summary>
    public IReadOnlyList<(string Command, string Meaning)> Answers =>
    [
        ($"shopdays log keep {Numbers}", "it is right: learn from it"),
        ($"shopdays log unusual {Numbers}", "it is right, but no day to learn from"),
        (string.Join("; ", Judged.Work.Entries.Take(1).Select(entry => $"shopdays log fix {entry} --took TIME")), "it was a slip: put the time right"),
    ];

    private string Factor => Judged.Factor >= 1
        ? string.Create(CultureInfo.InvariantCulture, $"{Judged.Factor:0.0} times the middle")
        : string.Create(CultureInfo.InvariantCulture, $"{Judged.Factor:0.00} of the middle");
}
