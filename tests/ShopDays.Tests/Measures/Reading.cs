using ShopDays.Measures;
using Xunit;

namespace ShopDays.Tests.Measures;

/// <summary>Says what a reading should have come to, with the whole of it shown when it did not.</summary>
internal static class Reading
{
    public static T Value<T>(TextResult<T> result)
    {
        Assert.True(result.IsRead, $"not read: {result.Fault}");
        return result.Value;
    }

    public static void Fault<T>(TextResult<T> result, int offset, string what, string expected)
    {
        Assert.False(result.IsRead, $"read as {result.Value}");
        Assert.Equal(new TextFault(offset, what, expected), result.Fault);
    }

    public static void Fault<T>(TextResult<T> result, int offset, string what)
    {
        Assert.False(result.IsRead, $"read as {result.Value}");
        Assert.Equal((offset, what), (result.Fault.Offset, result.Fault.What));
    }
}
