namespace ShopDays.Cli.Phrases;

/// <summary>What is said of ways of doing a job beside their figures, the same on a terminal and on paper.</summary>
internal static class ComparisonWords
{
    /// <summary>What the comparison is of.</summary>
    public static string Title(ToldComparison told) => told.Suggested is null ? "done otherwise" : "single changes that would save days or money";

    /// <summary>What one way changes, why, and how it would be written as a variant: each with the words that lead it in.</summary>
    public static IEnumerable<(string Lead, string Words)> Of(ToldComparison told, Tried other)
    {
        if (other.Outcome is null)
        {
            yield return ("Cannot be done: ", string.Join("; ", other.Against));
        }
        else if (told.Of(other) is { } difference)
        {
            yield return ("Changes: ", $"{DifferenceWords.Changes(difference, told.Risk)}.");
            yield return ("Because: ", $"{DifferenceWords.Causes(difference, told.AsIs.Outcome!, other.Outcome)}.");
        }

        if (other.Text is { } text)
        {
            yield return ("As a variant: ", text);
        }
    }

    /// <summary>Why the job as it is has no figures; null where it has them.</summary>
    public static string? AsItIs(ToldComparison told) =>
        told.AsIs.Outcome is null ? $"The job as it is cannot be planned: {string.Join("; ", told.AsIs.Against)}" : null;

    /// <summary>What to know of all of them.</summary>
    public static IEnumerable<string> Notes(ToldComparison told)
    {
        if (told.Suggested is { } tried)
        {
            yield return tried == 0
                ? "There was no single change to try: the shop file names no machines, no helper to call in, and no hours to lengthen."
                : $"{CountWords.Of(tried, "single change")} tried; those that save neither a day of the promise nor money are not shown.";
        }

        yield return "All ways are reckoned in the same drawn courses of the work, so that what differs is not luck, and each has a plan of its own.";
        if (told.BringsMachines)
        {
            yield return "A machine brings dangers of its own: its cautions stand on the plan of a job that is done by it, and whoever is new to it learns it from somebody who knows it.";
        }

        if (told.BringsGlue)
        {
            yield return "Another glue may bear less water or heat, or not let a joint be opened again: its tin says what it is for, and a test joint whether it holds here.";
        }

        if (told.IsBegun)
        {
            yield return "Work of this job is logged; the whole job is compared, as if nothing were done.";
        }
    }
}
