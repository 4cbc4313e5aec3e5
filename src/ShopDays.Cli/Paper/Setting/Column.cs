namespace ShopDays.Cli.Paper.Setting;

/// <summary>A column of a <see cref="Table"/>.</summary>
public sealed record Column
{
    private Column(string head, double points, double share, Align align)
    {
        Head = head;
        Points = points;
        Share = share;
        Align = align;
    }

    /// <summary>Its name above it; may be empty.</summary>
    public string Head { get; }

    /// <summary>Where its text stands; figures stand under each other at the right, having one width.</summary>
    public Align Align { get; }

    internal double Points { get; }

    internal double Share { get; }

    /// <summary>A column of a width in points.</summary>
    public static Column Fixed(string head, double points, Align align = Align.Left)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(points);
        return new(head, points, 0, align);
    }

    /// <summary>A column that takes a share of what the fixed columns leave.</summary>
    public static Column Shared(string head, double share = 1, Align align = Align.Left)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(share);
        return new(head, 0, share, align);
    }

    /// <summary>The places of columns across a width, each with its left edge and width.</summary>
    internal static IReadOnlyList<(double Left, double Width)> Places(IReadOnlyList<Column> columns, double width, double distance)
    {
        var free = Math.Max(0, width - (distance * (columns.Count - 1)) - columns.Sum(column => column.Points));
        var shares = columns.Sum(column => column.Share);
        var places = new List<(double Left, double Width)>();
        var left = 0.0;
        foreach (var column in columns)
        {
            var taken = column.Share > 0 ? free * column.Share / shares : column.Points;
            places.Add((left, taken));
            left += taken + distance;
        }

        return places;
    }
}
