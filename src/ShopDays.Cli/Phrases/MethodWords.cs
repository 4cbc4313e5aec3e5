using ShopDays.Work;

namespace ShopDays.Cli.Phrases;

/// <summary>Operations with their methods in words.</summary>
internal static class MethodWords
{
    /// <summary><c>rip</c> by hand, which goes without saying, or <c>rip, band saw</c>.</summary>
    public static string Of(Operation operation, Method method) => method.Name == "hand" ? operation.Name : $"{operation.Name}, {method.Name}";
}
