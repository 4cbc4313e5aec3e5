namespace ShopDays.Cli.Store;

/// <summary>The second step: what was promised of a job, each time that it was, with the time of every task.</summary>
internal static class PromisesStep
{
    /// <summary>Moments are ISO 8601 text, times are minutes; a date that was not within the years looked at is null.</summary>
    public const string Sql = """
        create table promise (
          number integer primary key autoincrement,
          job text not null,
          made text not null,
          planned text not null,
          p50 text,
          p80 text,
          p90 text,
          chance_of_due real,
          minutes_p10 real not null,
          minutes_p50 real not null,
          minutes_p80 real not null,
          minutes_p90 real not null,
          minutes_mean real not null
        ) strict;

        create index promise_of_job on promise (job, made, number);

        create table promised_task (
          promise integer not null references promise (number),
          place integer not null,
          task text not null,
          operation text,
          board text,
          minutes real not null,
          primary key (promise, place)
        ) strict, without rowid;
        """;
}
