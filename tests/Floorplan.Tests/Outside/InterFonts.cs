using System.Reflection;

namespace Floorplan.Tests.Outside;

/// <summary>
/// The typeface that the sheets name, taken out of its package: a resource named <c>!AvaloniaResources</c> with the
/// little-endian length of its index, then version, count, and for each file its name, offset and size; the data follows.
/// </summary>
internal static class InterFonts
{
    /// <summary>A font file's bytes: <c>Inter-Regular.ttf</c>, <c>Inter-Bold.ttf</c>.</summary>
    public static byte[] Read(string file)
    {
        var assembly = Assembly.LoadFile(Path.Combine(AppContext.BaseDirectory, "fonts", "Avalonia.Fonts.Inter.dll"));
        using var reader = new BinaryReader(assembly.GetManifestResourceStream("!AvaloniaResources")!);
        int indexLength = reader.ReadInt32();
        _ = reader.ReadInt32();
        for (int left = reader.ReadInt32(); left > 0; left--)
        {
            string name = reader.ReadString();
            int offset = reader.ReadInt32();
            int size = reader.ReadInt32();
            if (name.EndsWith('/' + file))
            {
                reader.BaseStream.Position = sizeof(int) + indexLength + offset;
                return reader.ReadBytes(size);
            }
        }

        throw new InvalidOperationException($"the font package holds no {file}");
    }

    /// <summary>Makes a folder where programs that ask fontconfig find this typeface and no other; returns the file for FONTCONFIG_FILE.</summary>
    public static string Install(string folder)
    {
        foreach (string file in new[] { "Inter-Regular.ttf", "Inter-Bold.ttf" })
        {
            File.WriteAllBytes(Path.Combine(folder, file), Read(file));
        }

        string settings = Path.Combine(folder, "fonts.conf");
        File.WriteAllText(settings, $"""
            <?xml version="1.0"?>
            <!DOCTYPE fontconfig SYSTEM "fonts.dtd">
            <fontconfig>
              <dir>{folder}</dir>
              <cachedir>{Path.Combine(folder, "cache")}</cachedir>
              <match target="font"><edit name="hinting" mode="assign"><bool>false</bool></edit></match>
              <match target="font"><edit name="antialias" mode="assign"><bool>true</bool></edit></match>
              <match target="font"><edit name="rgba" mode="assign"><const>none</const></edit></match>
            </fontconfig>
            """);
        return settings;
    }
}
