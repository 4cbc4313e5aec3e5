using NodaTime;
using ShopDays.Cli.Files;
using ShopDays.Cli.Store;

namespace ShopDays.Cli.Bench.Now;

/// <summary>The log at this moment: it is read again as soon as anybody has written into it, from a page or from a terminal.</summary>
internal sealed class LogNow(ShopFolder folder) : IDisposable
{
    private readonly Lock gate = new();
    private ShopLog? log;
    private LogReading? last;
    private DateTime? opened;
    private long version = -1;
    private long number;

    /// <summary>A number that is another one whenever anybody has written into the log since.</summary>
    /// <exception cref="FileTroubleException">The log cannot be read.</exception>
    public long Number()
    {
        lock (gate)
        {
            OpenWhatIsThere();
            var now = log?.Version ?? 0;
            if (now != version)
            {
                (version, last) = (now, null);
                number++;
            }

            return number;
        }
    }

    /// <summary>Reads it, unless nothing was written since it was read last.</summary>
    /// <param name="today">The date that is looked at.</param>
    /// <exception cref="FileTroubleException">The log cannot be read.</exception>
    public LogReading Read(LocalDate today)
    {
        lock (gate)
        {
            // The number is asked for first: what is written between the two is read now and once more.
            Number();
            return last is { } known && known.Date == today
                ? known
                : last = new(today, log?.Begun.All() ?? [], log?.Of(today) ?? [], log?.Count() ?? 0);
        }
    }

    /// <summary>Looks something up in it.</summary>
    /// <param name="look">What; the log is null while nothing was ever logged.</param>
    /// <exception cref="FileTroubleException">The log cannot be read.</exception>
    public T Look<T>(Func<ShopLog?, T> look)
    {
        lock (gate)
        {
            OpenWhatIsThere();
            return look(log);
        }
    }

    // Taken away, or put back from a copy, the file is another one of the same name: what is open still reads the old one.
    private void OpenWhatIsThere()
    {
        var there = new FileInfo(Path.Combine(folder.Path, ShopLog.FileName)) is { Exists: true } file ? file.CreationTimeUtc : (DateTime?)null;
        if (log is not null && there != opened)
        {
            log.Dispose();
            (log, version) = (null, -1);
        }

        log ??= ShopLog.OpenToRead(folder);
        opened = there;
    }

    /// <inheritdoc/>
    public void Dispose() => log?.Dispose();
}
