using QRCoder;

namespace ShopDays.Cli.Bench.Doors;

/// <summary>An address as a code that a phone's camera reads (ISO/IEC 18004), in letters of a terminal.</summary>
internal static class Scanned
{
    /// <summary>The code: two rows of it to a line; dark squares are left as the terminal's ground, so that it reads on a dark one, and the frame keeps it apart on a light one.</summary>
    public static string Of(string address)
    {
        using var codes = new QRCodeGenerator();
        using var data = codes.CreateQrCode(address, QRCodeGenerator.ECCLevel.M);
        using var drawn = new AsciiQRCode(data);
        return drawn.GetGraphicSmall(drawQuietZones: true, invert: false);
    }
}
