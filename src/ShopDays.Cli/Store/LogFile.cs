using System.Globalization;
using Microsoft.Data.Sqlite;
using NodaTime.Text;
using ShopDays.Cli.Files;

namespace ShopDays.Cli.Store;

/// <summary>
/// The file <c>shop.db</c>, open. What <see cref="Write"/> has returned is on the disk: the file is written ahead (WAL) and
/// synchronised in full at each end of a transaction, so a killed program or a power cut loses nothing of it.
/// </summary>
internal sealed class LogFile : IDisposable
{
    /// <summary>How long another program that writes is waited for.</summary>
    public static readonly TimeSpan Patience = TimeSpan.FromSeconds(10);

    // 'SHDZ' in ASCII: it tells this file from a database of another program.
    private const long Ours = 1397245018;

    private readonly SqliteConnection connection;
    private readonly string path;

    private LogFile(string source, string path)
    {
        connection = new(source);
        this.path = path;
    }

    /// <summary>Opens the file; one that is not there is made, one of an older form is brought up to date.</summary>
    /// <param name="path">Where it is; its folder must exist.</param>
    /// <exception cref="FileTroubleException">It cannot be opened, is of another program, or of a newer form.</exception>
    public static LogFile Open(string path) => Open(path, SchemaSteps.All);

    /// <summary>As <see cref="Open(string)"/>, as a program opens it that knows these steps.</summary>
    internal static LogFile Open(string path, IReadOnlyList<string> steps) => Opened(path, SqliteOpenMode.ReadWriteCreate, isFixed: false, file =>
    {
        file.RefuseForeign(steps.Count);
        file.Raise(steps);
        return true;
    })!;

    /// <summary>Opens the file to read.</summary>
    /// <returns>The file; null where there is none, or nothing in it yet.</returns>
    /// <exception cref="FileTroubleException">It cannot be opened, is of another program, or of a newer form.</exception>
    public static LogFile? OpenToRead(string path)
    {
        if (!File.Exists(path) && !Directory.Exists(path))
        {
            return null;
        }

        try
        {
            return Opened(path, SqliteOpenMode.ReadWrite, isFixed: false, ReadsOn);
        }
        catch (FileTroubleException trouble) when (trouble.InnerException is SqliteException inner && LogTrouble.IsOfWriting(inner) && !IsUnfinished(path))
        {
            // A folder that may not be written has no room for the files beside it: it is read as one that nobody writes.
            return Opened(path, SqliteOpenMode.ReadOnly, isFixed: true, ReadsOn);
        }

        bool ReadsOn(LogFile file)
        {
            if (file.RefuseForeign(SchemaSteps.All.Count) == 0)
            {
                return false;
            }

            file.Raise(SchemaSteps.All);
            return true;
        }
    }

    /// <summary>A number that is another one as soon as anybody else has written into the file since this was opened.</summary>
    /// <exception cref="FileTroubleException">It cannot be read.</exception>
    public long Version => Guarded(() => Number("pragma data_version"));

    /// <summary>Reads from one and the same state of the file.</summary>
    /// <exception cref="FileTroubleException">It cannot be read.</exception>
    public T Read<T>(Func<SqliteConnection, T> read) => Guarded(() =>
    {
        using var transaction = connection.BeginTransaction(deferred: true);
        var result = read(connection);
        transaction.Commit();
        return result;
    });

    /// <summary>Writes all or nothing; other writers wait meanwhile, or are waited for.</summary>
    /// <exception cref="FileTroubleException">It cannot be written; nothing was.</exception>
    public T Write<T>(Func<SqliteConnection, T> write) => Guarded(() =>
    {
        using var transaction = connection.BeginTransaction(deferred: false);
        var result = write(connection);
        transaction.Commit();
        return result;
    });

    /// <inheritdoc/>
    public void Dispose() => connection.Dispose();

    private static LogFile? Opened(string path, SqliteOpenMode mode, bool isFixed, Func<LogFile, bool> use)
    {
        if (Directory.Exists(path))
        {
            throw FileTroubleException.Of(path, "is a folder, not a file");
        }

        var source = new SqliteConnectionStringBuilder
        {
            DataSource = isFixed ? new Uri(path).AbsoluteUri + "?immutable=1" : path,
            Mode = mode,
            Pooling = false,
            ForeignKeys = true,
            DefaultTimeout = (int)Patience.TotalSeconds,
        };
        LogFile? file = null;
        try
        {
            file = new(source.ToString(), path);
            file.Begin();
            var used = use(file) ? file : null;
            file = used is null ? file : null;
            return used;
        }
        finally
        {
            file?.Dispose();
        }
    }

    private void Begin() => Guarded(() =>
    {
        connection.Open();
        return Run("pragma synchronous = full");
    });

    /// <summary>Whether a program was killed while the file was open: what it wrote last stands in a file beside it.</summary>
    private static bool IsUnfinished(string path) => new FileInfo(path + "-wal") is { Exists: true, Length: > 0 };

    /// <summary>Refuses what is no log, or one of a newer form, before anything is changed in it.</summary>
    /// <returns>The version of its form; 0 for an empty file.</returns>
    private long RefuseForeign(int known)
    {
        // Of one and the same state: another program may be making the file this moment.
        var (version, mark, tables) = Read(_ => (Number("pragma user_version"), Number("pragma application_id"), Number("select count(*) from sqlite_schema")));
        return (version, mark) switch
        {
            (_, not Ours) when tables > 0 || version != 0 => throw LogTrouble.OfAnotherProgram(path),
            var (newer, _) when newer > known => throw LogTrouble.Newer(path, newer, known),
            _ => version,
        };
    }

    private void Raise(IReadOnlyList<string> steps)
    {
        var version = Guarded(() => Number("pragma user_version"));
        if (version == 0)
        {
            Guarded(() => Run("pragma journal_mode = wal"));
        }

        try
        {
            while (version < steps.Count)
            {
                version = Write(_ => Step(steps));
            }
        }
        catch (FileTroubleException trouble) when (version > 0 && trouble.InnerException is SqliteException inner && LogTrouble.IsOfWriting(inner))
        {
            throw LogTrouble.CannotBeRaised(path);
        }
    }

    /// <summary>Takes the next step, unless another program has taken it in the meantime.</summary>
    private long Step(IReadOnlyList<string> steps)
    {
        var version = Number("pragma user_version");
        if (version >= steps.Count)
        {
            return version;
        }

        Run(steps[(int)version]);
        Run(FormattableString.Invariant($"pragma user_version = {version + 1}"));
        return version + 1;
    }

    private long Number(string sql)
    {
        using var command = connection.Statement(sql);
        return Convert.ToInt64(command.ExecuteScalar(), CultureInfo.InvariantCulture);
    }

    private bool Run(string sql)
    {
        using var command = connection.Statement(sql);
        command.ExecuteNonQuery();
        return true;
    }

    private T Guarded<T>(Func<T> use)
    {
        try
        {
            return use();
        }
        catch (SqliteException trouble)
        {
            throw LogTrouble.Of(path, trouble);
        }
        catch (Exception trouble) when (trouble is InvalidDataException or UnparsableValueException or FormatException or InvalidCastException)
        {
            throw LogTrouble.Meddled(path, trouble);
        }
    }
}
