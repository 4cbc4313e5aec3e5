using NodaTime;
using ShopDays.Parts;

namespace ShopDays.Cli.Files.Jobs;

/// <summary>Reads the <c>decisions</c> of a job: what it waits for from others.</summary>
/// <param name="names">The names of the job.</param>
/// <param name="today">The date at the shop; null where it is not known, and then nothing counts as still to come.</param>
internal sealed class DecisionReader(JobNames names, LocalDate? today)
{
    public Decision Read(Section line)
    {
        var name = line.Required("decision", Values.Name("what is waited for"), "what is waited for");
        names.Declare(name, NameKind.Decision);
        var asked = line.Optional("asked", Values.Date);
        var ordered = line.Optional("ordered", Values.Date);
        if (asked.IsWritten && ordered.IsWritten)
        {
            line.Findings.Add(DecisionMistakes.AskedAndOrdered(ordered.Place, name.Or("")));
        }

        var since = asked.IsWritten ? asked : ordered;
        var from = line.Optional("from", Values.Name("who owes it, such as client"));
        return new Decision
        {
            Name = name.Or(""),
            From = from.IsRead ? from.Value : null,
            Asked = since.IsRead ? since.Value : null,
            IsOrdered = ordered.IsWritten,
            Arrived = ReadArrived(line, name.Or(""), since),
            Before = line.Optional("before", names.Anchors).Or([]),
            After = line.Optional("after", names.Anchors).Or([]),
            Wait = line.Required("wait", GuessValues.Wait, "how long it is likely to take, such as 5d").Or(default),
        };
    }

    /// <summary>Finds what nothing in the job waits for.</summary>
    /// <param name="job">The job, read without a mistake.</param>
    /// <param name="places">Where its things are named.</param>
    /// <param name="findings">Where mistakes go.</param>
    public static void FindUnneeded(Job job, JobPlaces places, Findings findings)
    {
        var named = job.Work.SelectMany(task => task.After).Concat(job.Decisions.SelectMany(other => other.After)).ToHashSet(StringComparer.OrdinalIgnoreCase);
        foreach (var decision in job.Decisions.Where(decision => decision.Before.Count == 0 && !named.Contains(decision.Name)))
        {
            findings.Add(DecisionMistakes.NobodyNeeds(places.Of(decision.Name), decision.Name));
        }
    }

    private LocalDate? ReadArrived(Section line, string name, Field<LocalDate> since)
    {
        var arrived = line.Optional("arrived", Values.Date);
        arrived = arrived.Unless(line.Findings, date => since.IsRead && date < since.Value ? DecisionMistakes.ArrivedBeforeAsked(arrived.Place, name, date, since.Value) : null);
        arrived = arrived.Unless(line.Findings, date => today is { } known && date > known ? DecisionMistakes.ArrivedInFuture(arrived.Place, name, date, known) : null);
        return arrived.IsRead ? arrived.Value : null;
    }
}
