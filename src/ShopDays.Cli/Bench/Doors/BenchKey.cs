using System.Security.Cryptography;
using System.Text;
using ShopDays.Cli.Files;

namespace ShopDays.Cli.Bench.Doors;

/// <summary>
/// The key of the bench for other machines: 128 bits of chance, kept in the shop's folder, so that a phone that was let in
/// once comes in again after the program was stopped. Remove the file, and every phone must be let in anew.
/// </summary>
internal sealed class BenchKey
{
    /// <summary>The folder within the shop's for what the pages must keep: the key, and what signs their forms.</summary>
    public const string FolderName = ".bench";

    private const string FileName = "key";
    private const int Bytes = 16;

    private BenchKey(string text)
    {
        Text = text;
        Pass = PassOf(text);
    }

    /// <summary>The key as it stands in an address: letters a to f and figures.</summary>
    public string Text { get; }

    /// <summary>What a browser keeps instead of the key, from which nobody can tell the key.</summary>
    public string Pass { get; }

    /// <summary>The key of a shop; one is made where there is none yet.</summary>
    /// <exception cref="FileTroubleException">The file cannot be read or written, or holds no key.</exception>
    public static BenchKey Of(ShopFolder folder)
    {
        var path = Path.Combine(FolderIn(folder), FileName);
        if (!File.Exists(path))
        {
            WholeFile.Save(path, Encoding.ASCII.GetBytes(RandomNumberGenerator.GetHexString(2 * Bytes, lowercase: true)));
        }

        try
        {
            Close(path, UnixFileMode.UserRead | UnixFileMode.UserWrite);
            var text = File.ReadAllText(path).Trim();
            return text.Length == 2 * Bytes && text.All(char.IsAsciiHexDigitLower)
                ? new(text)
                : throw FileTroubleException.Of(path, "holds no key; remove it, and a new one is made");
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
        {
            throw FileTroubleException.Reading(path, isFolder: false, trouble);
        }
    }

    /// <summary>The folder, made where it is not there yet; nobody else on this machine may look into it, whoever made it.</summary>
    /// <exception cref="FileTroubleException">It cannot be made or closed to others.</exception>
    public static string FolderIn(ShopFolder folder)
    {
        var path = Path.Combine(folder.Path, FolderName);
        try
        {
            Directory.CreateDirectory(path);
            Close(path, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
            return path;
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
        {
            throw File.Exists(path) ? FileTroubleException.Of(path, "is a file, not a folder", trouble) : FileTroubleException.Writing(path, trouble);
        }
    }

    /// <summary>Whether somebody has typed or scanned the key; how long the answer takes says nothing of how much was right.</summary>
    public bool Opens(string typed) => AreAlike(typed, Text);

    /// <summary>Whether a browser has been let in before; as <see cref="Opens"/>.</summary>
    public bool IsPass(string kept) => AreAlike(kept, Pass);

    // Digests of both are compared, which have one length whatever was typed.
    private static bool AreAlike(string one, string other) => CryptographicOperations.FixedTimeEquals(SHA256.HashData(Encoding.UTF8.GetBytes(one)), SHA256.HashData(Encoding.UTF8.GetBytes(other)));

    private static string PassOf(string key) => Convert.ToHexStringLower(HMACSHA256.HashData(Encoding.UTF8.GetBytes(key), "shopdays bench pass"u8));

    private static void Close(string path, UnixFileMode mode)
    {
        if (!OperatingSystem.IsWindows())
        {
            File.SetUnixFileMode(path, mode);
        }
    }
}
