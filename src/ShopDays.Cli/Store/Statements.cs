using Microsoft.Data.Sqlite;

namespace ShopDays.Cli.Store;

/// <summary>Statements to the database: the text is the program's own, whatever a maker typed goes in as values.</summary>
internal static class Statements
{
    /// <summary>A statement with its values; null stands for nothing.</summary>
    public static SqliteCommand Statement(this SqliteConnection connection, string sql, params IEnumerable<(string Name, object? Value)> values)
    {
        var command = connection.CreateCommand();
        command.CommandText = sql;
        foreach (var (name, value) in values)
        {
            command.Parameters.AddWithValue(name, value ?? DBNull.Value);
        }

        return command;
    }

    /// <summary>Runs a statement that gives no rows.</summary>
    /// <returns>How many rows it touched.</returns>
    public static int Run(this SqliteConnection connection, string sql, params IEnumerable<(string Name, object? Value)> values)
    {
        using var command = connection.Statement(sql, values);
        return command.ExecuteNonQuery();
    }

    /// <summary>All rows that a statement gives.</summary>
    public static List<T> Rows<T>(this SqliteConnection connection, string sql, Func<SqliteDataReader, T> read, params IEnumerable<(string Name, object? Value)> values)
    {
        using var command = connection.Statement(sql, values);
        using var reader = command.ExecuteReader();
        var rows = new List<T>();
        while (reader.Read())
        {
            rows.Add(read(reader));
        }

        return rows;
    }
}
