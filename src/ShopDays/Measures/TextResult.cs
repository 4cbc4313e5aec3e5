using System.Diagnostics.CodeAnalysis;

namespace ShopDays.Measures;

/// <summary>What reading a measure from text gave: a value, or what was wrong and where in the text.</summary>
/// <typeparam name="T">The measure.</typeparam>
/// <remarks><c>default</c> is a failure without a fault and is never returned.</remarks>
public readonly record struct TextResult<T>
{
    private TextResult(bool isRead, T? value, TextFault? fault) => (IsRead, Value, Fault) = (isRead, value, fault);

    /// <summary>Whether a value was read.</summary>
    [MemberNotNullWhen(true, nameof(Value))]
    [MemberNotNullWhen(false, nameof(Fault))]
    public bool IsRead { get; }

    /// <summary>The value, when there is one.</summary>
    public T? Value { get; }

    /// <summary>What was wrong, when there is no value.</summary>
    public TextFault? Fault { get; }

    internal static TextResult<T> Read(T value) => new(true, value, null);

    internal static TextResult<T> Failed(int offset, string what, string expected) => Failed(new TextFault(offset, what, expected));

    internal static TextResult<T> Failed(TextFault fault) => new(false, default, fault);
}

/// <summary>A fault in a text that should have been a measure.</summary>
/// <param name="Offset">Where it begins, in characters from the start of the text, from 0.</param>
/// <param name="What">What was found there, in words, the text itself quoted and clipped.</param>
/// <param name="Expected">What would have been right, with an example.</param>
public sealed record TextFault(int Offset, string What, string Expected);
