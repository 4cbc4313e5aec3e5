namespace ShopDays.Cli.Store;

/// <summary>The sixth step: coats are called by their number alone, <c>oil, coat 1: lid</c> and no longer <c>coat 1 of 3</c>, wherever a task is named.</summary>
internal static class CoatNamesStep
{
    private const string OfOne = """
        update {0} set task =
          substr(task, 1, instr(task, ', coat ') + 6)
          || substr(substr(task, instr(task, ', coat ') + 7), 1, instr(substr(task, instr(task, ', coat ') + 7), ' of ') - 1)
          || substr(substr(task, instr(task, ', coat ') + 7), instr(substr(task, instr(task, ', coat ') + 7), ': '))
        where task glob '*, coat [0-9]* of [0-9]*: *';
        """;

    /// <summary>What Work/FormerNames says of one name, said of all names in the file.</summary>
    public static string Sql { get; } = string.Concat(((string[])["entry", "trace", "begun", "promised_task"]).Select(table => OfOne.Replace("{0}", table, StringComparison.Ordinal)));
}
