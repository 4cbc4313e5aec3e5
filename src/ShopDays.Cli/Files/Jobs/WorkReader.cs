using NodaTime;
using ShopDays.Cli.Files.Yaml;
using ShopDays.Measures;
using ShopDays.Parts;
using ShopDays.Work;

namespace ShopDays.Cli.Files.Jobs;

/// <summary>Reads the free <c>work</c> of a job.</summary>
/// <param name="operations">The operations that may time it.</param>
/// <param name="names">The names of the job.</param>
/// <param name="start">The date on which the job begins; null when it could not be read.</param>
internal sealed class WorkReader(OperationCatalogue operations, JobNames names, LocalDate? start)
{
    private const double KilometresPerMile = 1.609344;
    private const int MostPeople = 10;

    public FreeTask ReadTask(Section line)
    {
        var name = line.Required("task", Values.Name("what is done"), "what is done");
        names.Declare(name, NameKind.Task);
        var guess = line.Optional("minutes", Guess);
        var operation = line.Optional("operation", OperationOf);
        var quantity = line.Optional("quantity", Values.Number("a quantity", 0.001, 1_000_000));
        if (name.IsRead)
        {
            CheckTiming(line, name, guess, operation, quantity);
        }

        var notBefore = line.Optional("not-before", Values.Date);

        return new FreeTask
        {
            Name = name.Or(""),
            Guess = guess.IsRead ? guess.Value : null,
            Operation = operation.Value?.Name,
            Quantity = quantity.Or(0),
            On = line.Optional("on", names.PartsAndGlueUps).Or([]),
            Before = line.Optional("before", names.Anchors).Or([]),
            After = line.Optional("after", names.Anchors).Or([]),
            IsHeavy = line.Optional("heavy", Values.YesOrNo, false),
            IsNoisy = line.Optional("noisy", Values.YesOrNo, false),
            People = line.Optional("people", Values.Whole("a count of people", 1, MostPeople), 1),
            NotBefore = notBefore.IsRead ? notBefore.Value : null,
            Appointed = ReadAppointed(line, name.Or(""), notBefore),
            PaidKilometres = line.Optional("paid-travel", Kilometres, 0),
        };
    }

    private AppointedTime? ReadAppointed(Section line, string task, Field<LocalDate> notBefore)
    {
        var date = line.Optional("date", Values.Date);
        var at = line.Optional("at", HoursValues.TimeOfDay);
        if (at.IsWritten && !date.IsWritten)
        {
            line.Findings.Add(JobMistakes.TimeWithoutDate(at.Place, task));
        }

        if (!date.IsRead)
        {
            return null;
        }

        if (at.IsRead)
        {
            HoursValues.SayWhenDoubled(at.Place, date.Value + at.Value, isEnd: false, line.Reading);
        }

        at = at.Unless(line.Findings, time => HoursValues.Skipped(at.Place, date.Value, time, line.Reading));
        if (start is { } first && date.Value < first)
        {
            line.Findings.Add(JobMistakes.AppointedTooEarly(date.Place, task, date.Value, first, "the job starts on"));
        }
        else if (notBefore.IsRead && date.Value < notBefore.Value)
        {
            line.Findings.Add(JobMistakes.AppointedTooEarly(date.Place, task, date.Value, notBefore.Value, "it does not begin before"));
        }

        return new(date.Value, at.IsRead ? at.Value : null);
    }

    private static void CheckTiming(Section line, Field<string> name, Field<TimeGuess> guess, Field<Operation> operation, Field<double> quantity)
    {
        if (guess.IsWritten && operation.IsWritten)
        {
            line.Findings.Add(JobMistakes.TimedTwice(operation.Place, name.Value!));
        }
        else if (!guess.IsWritten && !operation.IsWritten)
        {
            line.Findings.Add(quantity.IsWritten ? JobMistakes.QuantityWithoutOperation(quantity.Place, name.Value!) : JobMistakes.NotTimed(name.Place, name.Value!));
        }
        else if (operation.IsRead && !quantity.IsWritten)
        {
            line.Findings.Add(JobMistakes.QuantityMissing(operation.Place, operation.Value!.Name, operation.Value!.Unit.Name));
        }
        else if (guess.IsWritten && quantity.IsWritten)
        {
            line.Findings.Add(JobMistakes.QuantityWithoutOperation(quantity.Place, name.Value!));
        }
    }

    private ValueReader<Operation> OperationOf => (node, reading) => Values.Text("an operation, such as rip")(node, reading)
        .Unless(reading.Findings, typed => operations.TryFind(typed, out _) ? null : ShopMistakes.UnknownOperation(node.Place, typed, [.. operations.Names]))
        .Select(typed => operations[typed]);

    private static ValueReader<TimeGuess> Guess { get; } = (node, reading) =>
    {
        if (node is not YamlMap)
        {
            // One figure is a guess without a range: three quarters to half as much again (common practice, no source).
            return ShopSections.SomeTime("the time of a task")(node, reading).Select(likely => new TimeGuess(likely * 0.75, likely, likely * 1.5));
        }

        var section = Section.Open(node, "the minutes", reading)!;
        var low = section.Required("low", Values.Time, "one time in ten it is quicker");
        var likely = section.Required("likely", Values.Time, "as likely more as less");
        var high = section.Required("high", Values.Time, "one time in ten it is slower");
        section.Close();
        if (!low.IsRead || !likely.IsRead || !high.IsRead)
        {
            return Field<TimeGuess>.Wrong(node.Place);
        }

        return Field<TimeGuess>.Read(node.Place, new(low.Value, likely.Value, high.Value)).Unless(
            reading.Findings,
            guess => guess.Low <= guess.Likely && guess.Likely <= guess.High && guess.Likely > WorkTime.Zero
                ? null
                : JobMistakes.GuessOutOfOrder(low.Place, WorkTimeText.Write(guess.Low), WorkTimeText.Write(guess.Likely), WorkTimeText.Write(guess.High)));
    };

    private static ValueReader<double> Kilometres { get; } = (node, reading) =>
    {
        var text = Values.Text("kilometres or miles, such as 42 km or 26 mi")(node, reading);
        if (!text.IsRead)
        {
            return Field<double>.Wrong(node.Place);
        }

        var factor = text.Value!.EndsWith("km", StringComparison.Ordinal) ? 1 : text.Value.EndsWith("mi", StringComparison.Ordinal) ? KilometresPerMile : 0;
        if (factor == 0 || text.Value.Length < 3)
        {
            reading.Findings.Add(JobMistakes.NotADistance(node.Place, text.Value));
            return Field<double>.Wrong(node.Place);
        }

        return Values.Number("a distance", 0, 20_000)(new YamlText(node.Place, text.Value[..^2].Trim()), reading).Select(number => number * factor);
    };
}
