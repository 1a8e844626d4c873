using System.Reflection;

namespace Floorplan.Print.Fonts;

/// <summary>
/// The typeface that the sheets name, taken out of its package: a resource named <c>!AvaloniaResources</c> with the
/// little-endian length of its index, then version, count, and for each file its name, offset and size; the data follows.
/// </summary>
internal static class InterFonts
{
    private const string Package = "Avalonia.Fonts.Inter.dll";

    /// <summary>A font file's bytes: <c>Inter-Regular.ttf</c>, <c>Inter-Bold.ttf</c>.</summary>
    public static byte[] Read(string file)
    {
        using var reader = new BinaryReader(Assembly.Load(PackageBytes()).GetManifestResourceStream("!AvaloniaResources")!);
        int indexLength = reader.ReadInt32();
        _ = reader.ReadInt32();
        for (int left = reader.ReadInt32(); left > 0; left--)
        {
            string name = reader.ReadString();
            int offset = reader.ReadInt32();
            int size = reader.ReadInt32();
            if (name.EndsWith('/' + file, StringComparison.Ordinal))
            {
                reader.BaseStream.Position = sizeof(int) + indexLength + offset;
                return reader.ReadBytes(size);
            }
        }

        throw new InvalidOperationException($"the font package holds no {file}");
    }

    private static byte[] PackageBytes()
    {
        using var package = typeof(InterFonts).Assembly.GetManifestResourceStream(Package)!;
        byte[] bytes = new byte[package.Length];
        package.ReadExactly(bytes);
        return bytes;
    }
}
