namespace ShopDays.Cli.Store;

/// <summary>The first step: entries, what they were before they were changed, and work that is begun.</summary>
internal static class EntriesStep
{
    /// <summary>
    /// Times are minutes as they were given, in full; dates and moments are ISO 8601 text, moments with nine places, so that
    /// their order as text is their order in time. A number that was given once is never given again (autoincrement). A
    /// deleted entry stands only in the trace.
    /// </summary>
    public const string Sql = """
        pragma application_id = 1397245018;

        create table entry (
          number integer primary key autoincrement,
          key text not null unique,
          job text,
          task text not null,
          operation text,
          method text,
          unit text,
          quantity real,
          setups real,
          besides real,
          run integer,
          batch integer,
          factor real,
          thickness real,
          hardness real,
          depth real,
          width real,
          took real not null check (took > 0),
          date text not null,
          ended text,
          worker text not null,
          finished integer not null check (finished in (0, 1)),
          setback text not null,
          note text not null,
          standing text not null
        ) strict;
        create index entry_when on entry (date, ended, number);
        create index entry_job on entry (job, task);

        create table trace (
          place integer primary key autoincrement,
          what text not null check (what in ('corrected', 'deleted', 'restored')),
          at text not null,
          why text not null,
          number integer not null,
          key text not null,
          job text,
          task text not null,
          operation text,
          method text,
          unit text,
          quantity real,
          setups real,
          besides real,
          run integer,
          batch integer,
          factor real,
          thickness real,
          hardness real,
          depth real,
          width real,
          took real not null,
          date text not null,
          ended text,
          worker text not null,
          finished integer not null,
          setback text not null,
          note text not null,
          standing text not null
        ) strict;
        create index trace_number on trace (number, place);
        create index trace_key on trace (key);

        create table begun (
          place integer primary key autoincrement,
          worker text not null,
          job text,
          task text not null,
          operation text,
          method text,
          unit text,
          quantity real,
          setups real,
          besides real,
          run integer,
          batch integer,
          factor real,
          thickness real,
          hardness real,
          depth real,
          width real,
          began text not null,
          paused_at text,
          paused_minutes real not null default 0
        ) strict;
        create unique index begun_one_at_a_time on begun (worker) where paused_at is null;
        """;
}
