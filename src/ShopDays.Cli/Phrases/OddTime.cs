using System.Globalization;
using ShopDays.Measures;
using ShopDays.Times;

namespace ShopDays.Cli.Phrases;

/// <summary>A time that is far from what was expected, with what a maker can do about it.</summary>
/// <param name="Judged">The time beside what was expected.</param>
internal sealed record OddTime(JudgedWork Judged)
{
    /// <summary>All the times of a log that are held out, in its order.</summary>
    public static IReadOnlyList<OddTime> In(RateModel model) => [.. model.Log.Where(one => one.IsHeldOut).Select(one => new OddTime(one))];

    /// <summary>The numbers of its entries.</summary>
    public string Numbers => string.Join(' ', Judged.Work.Entries);

    /// <summary><c>entry 12, hall-bench, rip A1 into 3: took 5 h, expected between 8 and 55 min</c>.</summary>
    public string Told => $"entry {string.Join(", ", Judged.Work.Entries)}, {(Judged.Work.Job is { } job ? job + ", " : "")}{Judged.Work.Task}, {DateWords.Of(Judged.Work.On)}: took {WorkTimeText.Write(Judged.Work.Took)}, expected between {WorkTimeText.Write(Judged.Credible.Low)} and {WorkTimeText.Write(Judged.Credible.High)} ({Factor})";

    /// <summary>What can be typed, each with what it means.</summary>
    public IReadOnlyList<(string Command, string Meaning)> Answers =>
    [
        ($"shopdays log keep {Numbers}", "it is right: learn from it"),
        ($"shopdays log unusual {Numbers}", "it is right, but no day to learn from"),
        ($"shopdays log fix {Judged.Work.Entries[0]} --took TIME", "it was a slip: put the time right"),
    ];

    private string Factor => Judged.Factor >= 1
        ? string.Create(CultureInfo.InvariantCulture, $"{Judged.Factor:0.0} times the middle")
        : Judged.Factor < 0.01 ? "less than a hundredth of the middle"
        : string.Create(CultureInfo.InvariantCulture, $"{Judged.Factor:0.00} of the middle");
}
