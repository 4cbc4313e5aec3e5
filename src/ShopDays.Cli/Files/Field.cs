namespace ShopDays.Cli.Files;

/// <summary>
/// A value of a file together with where it stands and whether it could be read. A value that could not be read has
/// been reported; whoever uses it stays silent, so that each mistake is said once.
/// </summary>
/// <typeparam name="T">What it is.</typeparam>
internal readonly record struct Field<T>
{
    private Field(Place place, bool isWritten, bool isRead, T? value) => (Place, IsWritten, IsRead, Value) = (place, isWritten, isRead, value);

    /// <summary>Where it stands; of a value that is not written, where it is missed.</summary>
    public Place Place { get; }

    /// <summary>Whether anything is written.</summary>
    public bool IsWritten { get; }

    /// <summary>Whether it was written and could be read.</summary>
    public bool IsRead { get; }

    /// <summary>The value, when it was read.</summary>
    public T? Value { get; }

    public static Field<T> Read(Place place, T value) => new(place, true, true, value);

    public static Field<T> Wrong(Place place) => new(place, true, false, default);

    public static Field<T> Missing(Place place) => new(place, false, false, default);

    /// <summary>The value, or another one when there is none.</summary>
    public T Or(T other) => IsRead ? Value! : other;

    /// <summary>Makes something of the value if there is one.</summary>
    public Field<TOther> Select<TOther>(Func<T, TOther> make) =>
        IsRead ? Field<TOther>.Read(Place, make(Value!)) : new(Place, IsWritten, false, default);

    /// <summary>Checks the value further; a mistake found is reported and the value counts as wrong.</summary>
    public Field<T> Unless(Findings findings, Func<T, Finding?> mistake)
    {
        if (IsRead && mistake(Value!) is { } found)
        {
            findings.Add(found);
            return Wrong(Place);
        }

        return this;
    }
}
