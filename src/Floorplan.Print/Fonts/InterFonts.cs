using System.Reflection.Metadata;
using System.Reflection.PortableExecutable;

namespace Floorplan.Print.Fonts;

/// <summary>
/// The typeface that the sheets name, taken out of its package: a resource named <c>!AvaloniaResources</c> with the
/// little-endian length of its index, then version, count, and for each file its name, offset and size; the data follows.
/// The package's library is read as a file and never loaded, so that nothing of it can run and a native program can read it too.
/// </summary>
internal static class InterFonts
{
    private const string Package = "Avalonia.Fonts.Inter.dll";
    private const string Resource = "!AvaloniaResources";

    /// <summary>A font file's bytes: <c>Inter-Regular.ttf</c>, <c>Inter-Bold.ttf</c>.</summary>
    public static byte[] Read(string file)
    {
        using var package = new PEReader(typeof(InterFonts).Assembly.GetManifestResourceStream(Package)!);
        var resource = ResourceData(package);
        int indexLength = resource.ReadInt32();
        _ = resource.ReadInt32();
        for (int left = resource.ReadInt32(); left > 0; left--)
        {
            string name = resource.ReadSerializedString()!;
            int offset = resource.ReadInt32();
            int size = resource.ReadInt32();
            if (name.EndsWith('/' + file, StringComparison.Ordinal))
            {
                resource.Offset = sizeof(int) + indexLength + offset;
                return resource.ReadBytes(size);
            }
        }

        throw new InvalidOperationException($"the font package holds no {file}");
    }

    /// <summary>ECMA-335, II.24.2.4 and II.25.3.3: each resource stands in the resources directory, with its length before it.</summary>
    private static BlobReader ResourceData(PEReader package)
    {
        var metadata = package.GetMetadataReader();
        var resource = metadata.ManifestResources.Select(metadata.GetManifestResource)
            .First(resource => metadata.StringComparer.Equals(resource.Name, Resource));
        int start = package.PEHeaders.CorHeader!.ResourcesDirectory.RelativeVirtualAddress + (int)resource.Offset;
        int length = package.GetSectionData(start).GetReader(0, sizeof(int)).ReadInt32();
        return package.GetSectionData(start + sizeof(int)).GetReader(0, length);
    }
}
