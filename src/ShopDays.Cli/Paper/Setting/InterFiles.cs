using System.Reflection.Metadata;
using System.Reflection.PortableExecutable;

namespace ShopDays.Cli.Paper.Setting;

/// <summary>
/// The font files of Inter, as they lie in the font package's assembly, which is carried as a resource.
/// The assembly is read as a file and never loaded.
/// </summary>
internal static class InterFiles
{
    private const string ResourceName = "fonts/inter";

    /// <summary>Reads one font file whole.</summary>
    /// <param name="weight">Which of the weights.</param>
    /// <returns>The bytes of a TrueType file.</returns>
    /// <exception cref="InvalidOperationException">The program was built without its font.</exception>
    public static byte[] Read(Weight weight)
    {
        using var assembly = typeof(InterFiles).Assembly.GetManifestResourceStream(ResourceName)
            ?? throw new InvalidOperationException($"The program was built without the resource '{ResourceName}'.");
        var start = ArchiveStart(assembly);
        var name = $"/Assets/Inter-{weight}.ttf";

        assembly.Position = start;
        using var reader = new BinaryReader(assembly);
        var files = start + sizeof(int) + reader.ReadInt32();
        var version = reader.ReadInt32();
        if (version != 2)
        {
            throw new InvalidOperationException($"The font package's index has version {version}; expected 2.");
        }

        for (var left = reader.ReadInt32(); left > 0; left--)
        {
            var entry = reader.ReadString();
            var offset = reader.ReadInt32();
            var size = reader.ReadInt32();
            if (entry != name)
            {
                continue;
            }

            assembly.Position = files + offset;
            return reader.ReadBytes(size);
        }

        throw new InvalidOperationException($"The font package holds no '{name}'.");
    }

    private static long ArchiveStart(Stream assembly)
    {
        using var portable = new PEReader(assembly, PEStreamOptions.LeaveOpen);
        var metadata = portable.GetMetadataReader();
        var resource = metadata.GetManifestResource(metadata.ManifestResources.First());
        var directory = portable.PEHeaders.CorHeader?.ResourcesDirectory.RelativeVirtualAddress
            ?? throw new InvalidOperationException("The font package's assembly is not a managed one.");
        var section = portable.PEHeaders.SectionHeaders[portable.PEHeaders.GetContainingSectionIndex(directory)];
        var resources = section.PointerToRawData + directory - section.VirtualAddress;
        // A manifest resource begins with its own length, which the archive's index makes superfluous.
        return resources + resource.Offset + sizeof(int);
    }
}
