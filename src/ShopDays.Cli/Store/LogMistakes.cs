using ShopDays.Cli.Files;
using ShopDays.Measures;

namespace ShopDays.Cli.Store;

/// <summary>What can be wrong with a sheet of times, or with an export of the log.</summary>
internal static class LogMistakes
{
    public static Finding NothingToName(Place place) =>
        Finding.At(place, "this row names no task") with { Expected = "a task or its mark, or an operation for work timed by itself" };

    public static Finding NoJob(Place place) =>
        Finding.At(place, "this row names a task but no job") with { Cure = "name the job in a column 'job', or with --job" };

    public static Finding TaskNotFound(Place place, string complaint) => Finding.At(place, complaint);

    public static Finding UnknownOperation(Place place, string typed, IReadOnlyList<string> names) =>
        Finding.At(place, $"{QuotedText.Of(typed)} is no operation") with { Expected = ValueMistakes.AnyOf(names, "operations"), Nearest = ValueMistakes.Nearest(typed, names) };

    public static Finding UnknownMethod(Place place, string typed, string operation, IReadOnlyList<string> names) =>
        Finding.At(place, $"{QuotedText.Of(typed)} is no way of doing '{operation}'") with { Expected = ValueMistakes.AnyOf(names, "methods"), Nearest = ValueMistakes.Nearest(typed, names) };

    public static Finding UnknownTimber(Place place, string typed, IReadOnlyList<string> names) =>
        Finding.At(place, $"{QuotedText.Of(typed)} is no timber that is known") with { Expected = ValueMistakes.AnyOf(names, "timbers"), Nearest = ValueMistakes.Nearest(typed, names) };

    public static Finding UnknownWorker(Place place, string typed, IReadOnlyList<string> names) =>
        Finding.At(place, $"{QuotedText.Of(typed)} is no worker of the shop") with { Expected = ValueMistakes.AnyOf(names, "workers"), Nearest = NearestName.To(typed, names) };

    public static Finding NoDate(Place place) =>
        Finding.At(place, "this row has no date") with { Cure = "write it in the column 'date', or say it for all rows with --on" };

    public static Finding StillToCome(Place place, string typed, string today) =>
        Finding.At(place, $"{QuotedText.Of(typed)} is still to come") with { Expected = $"a date up to today, {today}" };

    public static Finding NoTime(Place place) =>
        Finding.At(place, "this row says nothing of how long it took") with { Expected = "a time in 'took', or 'start' and 'stop'" };

    public static Finding ZeroTime(Place place) =>
        Finding.At(place, "this took no time at all") with { Expected = "more than zero" };

    public static Finding NotATimeOfDay(Place place, string typed) =>
        Finding.At(place, $"{QuotedText.Of(typed)} is no time of day") with { Expected = "hours and minutes, such as 09:30" };

    public static Finding StartWithoutStop(Place place) =>
        Finding.At(place, "a start without a stop, or a stop without a start, gives no time") with { Cure = "write both, or 'took'" };

    public static Finding StopBeforeStart(Place place, string start, string stop) =>
        Finding.At(place, $"the stop, {stop}, is not after the start, {start}") with { Cure = "write work over midnight as two rows" };

    public static Finding TookTooLong(Place place, string took, string between) =>
        Finding.At(place, $"{took} is longer than from start to stop, {between}") with { Cure = "put right whichever is wrong" };

    public static Finding NotDoneOrNot(Place place, string typed) =>
        Finding.At(place, $"{QuotedText.Of(typed)} does not say whether it is done") with { Expected = "x, yes or a tick; no, half or nothing where it goes on another day" };

    public static Finding OtherUnit(Place place, string typed, string unit) =>
        Finding.At(place, $"{QuotedText.Of(typed)} is not what this work is counted in") with { Expected = $"a number of {unit}" };

    public static Finding TooMuch(Place place, string complaint) => Finding.At(place, complaint);

    public static Finding NoQuantity(Place place) =>
        Finding.At(place, "this row says nothing of how much was done") with { Expected = "a quantity, for work timed by itself" };

    public static Finding NotAKey(Place place, string typed) =>
        Finding.At(place, $"{QuotedText.Of(typed)} is no key of an entry") with { Expected = "a key as an export writes it; leave the column empty for rows of your own" };

    public static Finding NotAMoment(Place place, string typed) =>
        Finding.At(place, $"{QuotedText.Of(typed)} is no moment") with { Expected = "one as an export writes it, such as 2027-04-17T09:30:00.000000000Z" };

    public static Finding NotExact(Place place, string column, string expected) =>
        Finding.At(place, $"this row of an export has no good '{column}'") with { Expected = expected };

    public static Finding NotKept(Place place, string complaint) => Finding.At(place, complaint);

    public static Finding StoppedInNoJob(Place place) =>
        Finding.At(place, "work outside a job is not gone on with") with { Cure = "write it in 'note', or name the job and its task" };

    public static Finding NoText(Place place) =>
        Finding.At(place, "a sign of code 0 stands in this row") with { Cure = "take it out; it is no text" };
}
