using System.Net;

namespace ShopDays.Cli.Bench;

/// <summary>Where the pages are served.</summary>
/// <param name="Port">The port, 1 to 65535; 0 for any that is free.</param>
/// <param name="IsOpen">Whether other machines of the shop's network may come in, by the key; otherwise this machine alone.</param>
internal sealed record BenchPlace(int Port, bool IsOpen)
{
    /// <summary>The port unless another is asked for.</summary>
    public const int UsualPort = 7373;

    /// <summary>The names and addresses by which the pages may be called; a name that only somebody else's name server knows is none.</summary>
    public IReadOnlySet<string> Names => field ??= new HashSet<string>(["localhost", "127.0.0.1", "[::1]", .. IsOpen ? Own() : []], StringComparer.OrdinalIgnoreCase);

    /// <summary>The addresses under which others in the network find this machine, as they are typed.</summary>
    public static IReadOnlyList<string> Addresses =>
    [
        .. System.Net.NetworkInformation.NetworkInterface.GetAllNetworkInterfaces()
            .Where(one => one.OperationalStatus == System.Net.NetworkInformation.OperationalStatus.Up)
            .SelectMany(one => one.GetIPProperties().UnicastAddresses)
            .Select(one => one.Address)
            .Where(address => address.AddressFamily == System.Net.Sockets.AddressFamily.InterNetwork && !IPAddress.IsLoopback(address))
            .Select(address => address.ToString())
            .Distinct(StringComparer.Ordinal),
    ];

    private static IEnumerable<string> Own() => [.. Addresses, Dns.GetHostName(), Dns.GetHostName() + ".local"];
}
