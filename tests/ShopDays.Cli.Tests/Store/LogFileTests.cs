using Microsoft.Data.Sqlite;
using ShopDays.Cli.Files;
using ShopDays.Cli.Store;
using ShopDays.Cli.Tests.Commands;
using ShopDays.Work;
using Xunit;

namespace ShopDays.Cli.Tests.Store;

public sealed class LogFileTests : IDisposable
{
    private readonly FreshFolder folder = new();

    private string Path => folder.File(ShopLog.FileName);

    [Fact]
    public void The_file_is_written_ahead_and_synchronised_in_full()
    {
        using var file = LogFile.Open(Path);
        Assert.Equal(["wal"], file.Read(database => database.Rows("pragma journal_mode", row => row.GetString(0))));

        // 2 is full, of the pragma's documentation (sqlite.org/pragma.html#pragma_synchronous).
        Assert.Equal([2], file.Read(database => database.Rows("pragma synchronous", row => row.GetInt64(0))));
        Assert.Equal([1], file.Read(database => database.Rows("pragma foreign_keys", row => row.GetInt64(0))));
    }

    [Fact]
    public void A_file_of_an_older_form_is_brought_up_to_date_with_all_that_is_in_it()
    {
        using (var old = LogFile.Open(Path, SchemaSteps.All))
        {
            old.Write(database => database.Run("insert into begun (worker, task, began) values ('maker', 'rip', '2027-04-17T12:00:00.000000000Z')"));
        }

        using var now = LogFile.Open(Path, [.. SchemaSteps.All, "create table one_more (a text) strict", "alter table one_more add column b text"]);
        Assert.Equal([SchemaSteps.All.Count + 2], now.Read(database => database.Rows("pragma user_version", row => row.GetInt32(0))));
        Assert.Equal([1], now.Read(database => database.Rows("select count(*) from begun", row => row.GetInt32(0))));
        Assert.Empty(now.Read(database => database.Rows("select a, b from one_more", row => row.GetString(0))));
    }

    [Fact]
    public void A_log_from_before_notes_of_where_one_stopped_is_read_with_none()
    {
        using (var old = LogFile.Open(Path, [.. SchemaSteps.All.Take(3)]))
        {
            old.Write(database => database.Run("insert into entry (key, job, task, took, date, worker, finished, setback, note, standing) values ('7d2b2255-4a91-81c3-b850-13096ac09552', 'tray', 'rip', 20, '2027-04-16', 'maker', 0, 'none', 'knots', 'as-logged')"));
            old.Write(database => database.Run("insert into begun (worker, job, task, began) values ('maker', 'tray', 'saw', '2027-04-17T12:00:00.000000000Z')"));
        }

        using var log = ShopLog.Open(new ShopFolder(folder.Path));
        Assert.Equal([("knots", "")], log.All().Select(entry => (entry.Note, entry.Stopped)));
        Assert.Equal([("saw", "")], log.Begun.All().Select(work => (work.Task, work.Stopped)));
    }

    [Theory]
    [InlineData("wiping varnish (thinned), coat 2 of 3: seat, frame")]
    [InlineData("oil, coat 10 of 12: lid: inside")]
    [InlineData("rub down before coat 2: seat, frame")]
    [InlineData("mortise: leg (1-2 of 4)")]
    [InlineData("varnish the coat rack: coat 1 of 3")]
    public void Coats_in_a_log_of_an_older_version_are_called_as_they_are_today(string former)
    {
        using (var old = LogFile.Open(Path, [.. SchemaSteps.All.Take(5)]))
        {
            old.Write(database => database.Run("insert into entry (key, job, task, took, date, worker, finished, setback, note, standing) values ('7d2b2255-4a91-81c3-b850-13096ac09552', 'tray', $task, 20, '2027-04-16', 'maker', 1, 'none', '', 'as-logged')", ("$task", former)));
            old.Write(database => database.Run("insert into begun (worker, job, task, began) values ('maker', 'tray', $task, '2027-04-17T12:00:00.000000000Z')", ("$task", former)));
        }

        using var log = ShopLog.Open(new ShopFolder(folder.Path));
        Assert.Equal([FormerNames.Today(former)], log.All().Select(entry => entry.Task));
        Assert.Equal([FormerNames.Today(former)], log.Begun.All().Select(work => work.Task));
    }

    [Fact]
    public void A_step_that_fails_leaves_the_form_before_it()
    {
        using (LogFile.Open(Path))
        {
        }

        Assert.Throws<FileTroubleException>(() => LogFile.Open(Path, [.. SchemaSteps.All, "create table half (a text) strict; create table entry (a text)"]));
        using var now = LogFile.Open(Path);
        Assert.Empty(now.Read(database => database.Rows("select name from sqlite_schema where name = 'half'", row => row.GetString(0))));
    }

    [Fact]
    public void A_newer_form_is_refused_and_nothing_is_changed_in_it()
    {
        using (LogFile.Open(Path, [.. SchemaSteps.All, "create table one_more (a text) strict"]))
        {
        }

        var before = File.ReadAllBytes(Path);
        var (newer, known) = (SchemaSteps.All.Count + 1, SchemaSteps.All.Count);
        var expected = $"{Path} was written by a newer ShopDays: its form is {newer}, this program knows forms up to {known}; nothing was changed in it; use the newer program";
        Assert.Equal(expected, Assert.Throws<FileTroubleException>(() => LogFile.Open(Path)).Message);
        Assert.Equal(expected, Assert.Throws<FileTroubleException>(() => LogFile.OpenToRead(Path)).Message);
        Assert.Equal(before, File.ReadAllBytes(Path));
    }

    [Theory]
    [InlineData("this is a letter to my aunt, long enough to fill the head of a database and then some more words on top of that")]
    [InlineData("short")]
    public void A_file_that_is_no_database_is_refused_and_stays(string text)
    {
        File.WriteAllText(Path, text);
        Assert.Contains("is no log of ShopDays", Assert.Throws<FileTroubleException>(() => LogFile.Open(Path)).Message, StringComparison.Ordinal);
        Assert.Contains("is no log of ShopDays", Assert.Throws<FileTroubleException>(() => LogFile.OpenToRead(Path)).Message, StringComparison.Ordinal);
        Assert.Equal(text, File.ReadAllText(Path));
    }

    [Fact]
    public void A_database_of_another_program_is_refused_and_stays()
    {
        using (var other = new SqliteConnection($"Data Source={Path};Pooling=False"))
        {
            other.Open();
            other.Run("create table songs (name text)");
        }

        var before = File.ReadAllBytes(Path);
        Assert.Contains("of another program", Assert.Throws<FileTroubleException>(() => LogFile.Open(Path)).Message, StringComparison.Ordinal);
        Assert.Equal(before, File.ReadAllBytes(Path));
    }

    [Fact]
    public void A_folder_of_that_name_is_told()
    {
        Directory.CreateDirectory(Path);
        Assert.Contains("is a folder", Assert.Throws<FileTroubleException>(() => LogFile.Open(Path)).Message, StringComparison.Ordinal);
        Assert.Contains("is a folder", Assert.Throws<FileTroubleException>(() => LogFile.OpenToRead(Path)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void An_empty_file_holds_nothing_and_reading_leaves_it_empty()
    {
        File.WriteAllBytes(Path, []);
        using (var nothing = LogFile.OpenToRead(Path))
        {
            Assert.Null(nothing);
        }

        Assert.Equal(0, new FileInfo(Path).Length);
        using var file = LogFile.Open(Path);
        Assert.Equal([SchemaSteps.All.Count], file.Read(database => database.Rows("pragma user_version", row => row.GetInt32(0))));
    }

    [Fact]
    public void What_fails_half_way_is_not_written()
    {
        using var file = LogFile.Open(Path);
        Assert.Throws<FileTroubleException>(() => file.Write(database =>
        {
            database.Run("insert into begun (worker, task, began) values ('maker', 'rip', 'now')");
            return database.Run("insert into begun (worker, task, began) values ('maker', 'rip', 'now')");
        }));
        Assert.Equal([0], file.Read(database => database.Rows("select count(*) from begun", row => row.GetInt32(0))));
    }

    public static TheoryData<int, string> Troubles => new()
    {
        // Primary result codes as published at sqlite.org/rescode.html.
        { 5, "another window of the shop" },
        { 8, "may not be written by you" },
        { 13, "the disk is full" },
        { 11, "is damaged" },
        { 10, "the disk reports a fault" },
    };

    [Theory]
    [MemberData(nameof(Troubles))]
    public void Trouble_is_told_in_plain_words(int code, string words) =>
        Assert.Contains(words, LogTrouble.Of("shop.db", new SqliteException("trouble", code)).Message, StringComparison.Ordinal);

    public void Dispose() => folder.Dispose();
}
