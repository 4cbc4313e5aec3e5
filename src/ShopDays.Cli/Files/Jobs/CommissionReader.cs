using ShopDays.Measures;
using ShopDays.Parts;

namespace ShopDays.Cli.Files.Jobs;

/// <summary>Reads what of a job is between the maker and the client.</summary>
internal static class CommissionReader
{
    private const int MostOfOne = 10_000;

    /// <summary>Reads it; every key of it may be left out.</summary>
    public static Commission Read(Section job)
    {
        var client = job.Optional("client", Values.Name("who ordered it"));
        var description = job.Optional("description", Values.Prose("what it is, in words for the client"));
        return new()
        {
            Client = client.Value,
            Description = description.Value,
            Dimensions = job.Inner("dimensions", "the dimensions", ReadDimensions),
            Hardware = job.Lines("hardware", "a line of hardware", ReadHardware),
            Outside = job.Lines("outside", "a line of outside work", ReadOutside),
            Travel = job.Optional("travel", MoneyValues.Amount).Value,
            Consumables = job.Optional("consumables", MoneyValues.Amount).Value,
            Included = Sentences(job, "included", "what the price covers, such as delivery within 20 miles"),
            NotIncluded = Sentences(job, "not-included", "what the price does not cover, such as removing an old piece"),
            Price = job.Optional("price", MoneyValues.Amount).Value,
        };
    }

    private static Dimensions ReadDimensions(Section dimensions)
    {
        var read = new Dimensions(LengthOf(dimensions, "width"), LengthOf(dimensions, "depth"), LengthOf(dimensions, "height"));
        if (!dimensions.Has("width") && !dimensions.Has("depth") && !dimensions.Has("height"))
        {
            dimensions.Findings.Add(CommissionMistakes.NoDimension(dimensions.Place));
        }

        return read;
    }

    private static Length? LengthOf(Section dimensions, string which) =>
        dimensions.Optional(which, LengthValues.AboveZero($"the {which} of a piece", LengthValues.Longest)) is { IsRead: true } read ? read.Value : null;

    private static BoughtItem? ReadHardware(Section line)
    {
        var name = line.Required("hardware", Values.Name("what is bought, such as brass knob"), "what is bought, such as brass knob");
        var count = line.Optional("count", Values.Whole("a count of pieces", 1, MostOfOne), 1);
        var price = line.Required("price", MoneyValues.Each, "what one costs, such as 3.20 each");
        return name.IsRead && price.IsRead ? new(name.Value!, count, price.Value!) : null;
    }

    private static OutsideWork? ReadOutside(Section line)
    {
        var name = line.Required("work", Values.Name("what others do, such as turned feet"), "what others do, such as turned feet");
        var by = line.Optional("by", Values.Name("who does it"));
        var price = line.Required("price", MoneyValues.Amount, "what it costs, such as 120");
        return name.IsRead && price.IsRead ? new(name.Value!, by.Value, price.Value!) : null;
    }

    private static IReadOnlyList<string> Sentences(Section job, string key, string expected) =>
        [.. job.Optional(key, Values.OneOrMore(Values.Prose(expected))).Or([]).Where(one => one.IsRead).Select(one => one.Value!)];
}
