using ShopDays.Work;

namespace ShopDays.Cli.Json;

/// <summary>A remark on the work for other programs.</summary>
internal static class RemarkJson
{
    /// <summary>The remark as an object to be written.</summary>
    public static object Of(Remark remark) => new { remark.Kind, remark.About, remark.Text, remark.Cure };
}
