using NodaTime;
using ShopDays.Cli.Files.Yaml;
using ShopDays.Measures;
using ShopDays.Parts;
using ShopDays.Work;

namespace ShopDays.Cli.Files.Jobs;

/// <summary>Reads the <c>drying</c> of a stock line: since when it is stacked, what the meter said, what it weighed.</summary>
/// <param name="today">The date at the shop; null where it is not known.</param>
internal sealed class DryingReader(LocalDate? today)
{
    private const string HowWet = "the moisture, such as 12%";

    private static readonly ValueReader<MoistureContent> Moisture = (node, reading) => Values.Percentage(node, reading)
        .Unless(reading.Findings, percent => percent.Value > 250 ? ValueMistakes.NotInRange(node.Place, ((YamlText)node).Value, "the moisture of timber", "0% to 250%")
            : percent.Value < Dryness.LeastOfTimber ? DryingMistakes.DrierThanAKilnDries(node.Place, ((YamlText)node).Value) : null)
        .Select(percent => MoistureContent.FromPercent(percent.Value));

    /// <summary>Reads it; nothing is known where it is left out.</summary>
    public Drying Read(Section line) => line.Inner("drying", "the drying", ReadDrying) ?? Drying.Unknown;

    private Drying ReadDrying(Section drying)
    {
        var since = Past(drying.Optional("since", Values.Date), drying, "it was stacked on");
        var readings = new List<MoistureReading>();
        var moisture = drying.Optional("moisture", Moisture);
        var read = Past(drying.Optional("read", Values.Date), drying, "the reading is of");
        CheckOrder(drying, since, read, "read");
        if (read.IsWritten && !moisture.IsWritten)
        {
            drying.Findings.Add(DryingMistakes.DateOfNothing(read.Place));
        }

        if (moisture.IsRead)
        {
            readings.Add(new(read.IsRead ? read.Value : null, moisture.Value));
        }

        readings.AddRange(drying.Lines("readings", "a reading", line => ReadReading(line, since)).Select(one => one.Value));
        var weighed = new Dictionary<LocalDate, Place>();
        var weighings = drying.Lines("weighings", "a weighing", line => ReadWeighing(line, since, weighed)).Select(one => one.Value).OrderBy(one => one.On).ToList();
        CheckGains(drying, weighings, weighed);
        return new()
        {
            Since = since.IsRead ? since.Value : null,
            Readings = [.. readings.OrderBy(one => one.On ?? LocalDate.MinIsoValue)],
            Weighings = weighings,
        };
    }

    private Boxed<MoistureReading>? ReadReading(Section line, Field<LocalDate> since)
    {
        var on = Past(line.Required("on", Values.Date, "the date of the reading"), line, "the reading is of");
        CheckOrder(line, since, on, "read");
        var moisture = line.Required("moisture", Moisture, HowWet);
        return on.IsRead && moisture.IsRead ? new(new(on.Value, moisture.Value)) : null;
    }

    private Boxed<Weighing>? ReadWeighing(Section line, Field<LocalDate> since, Dictionary<LocalDate, Place> weighed)
    {
        var on = Past(line.Required("on", Values.Date, "the date of the weighing"), line, "it was weighed on");
        CheckOrder(line, since, on, "weighed");
        on = on.Unless(line.Findings, date => weighed.TryAdd(date, on.Place) ? null : DryingMistakes.WeighedTwice(on.Place, date, weighed[date]));
        var weight = line.Required("weight", Values.Weight, "the weight, such as 4.52 kg");
        weight = weight.Unless(line.Findings, mass => mass.Kilograms <= 0 ? DryingMistakes.NoWeight(weight.Place) : null);
        return on.IsRead && weight.IsRead ? new(new(on.Value, weight.Value)) : null;
    }

    /// <summary>Air gives a board no more than what lies between a kiln's driest and the moisture that it brings timber to, in its dampest month.</summary>
    private static void CheckGains(Section drying, IReadOnlyList<Weighing> weighings, Dictionary<LocalDate, Place> places)
    {
        var air = drying.Reading.Air is { } year ? year.Months.Values.Append(year.Usual).Select(one => one.Equilibrium).Max() : Board.AirDry;
        var most = (100 + air.Percent) / (100 + Dryness.LeastOfTimber);
        foreach (var (before, after) in weighings.Zip(weighings.Skip(1)))
        {
            var ratio = after.Weight.Kilograms / before.Weight.Kilograms;
            if (ratio > most)
            {
                drying.Findings.Add(DryingMistakes.GainedTooMuch(places[after.On], ratio - 1, before.On, air));
            }
        }
    }

    /// <summary>What is still to come cannot have been read, weighed or stacked: a guess at it would stand for a reading.</summary>
    private Field<LocalDate> Past(Field<LocalDate> date, Section section, string what) => date.Unless(
        section.Findings,
        on => today is { } now && on > now ? DryingMistakes.StillToCome(date.Place, what, on, now) : null);

    private static void CheckOrder(Section section, Field<LocalDate> since, Field<LocalDate> date, string what)
    {
        if (since.IsRead && date.IsRead && date.Value < since.Value)
        {
            section.Findings.Add(DryingMistakes.BeforeItWasStacked(date.Place, what, date.Value, since.Value));
        }
    }

    /// <summary>A value as lists of lines want it.</summary>
    private sealed record Boxed<T>(T Value);
}
