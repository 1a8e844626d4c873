using Fonts = Floorplan.Print.Fonts;

namespace Floorplan.Tests.Outside;

/// <summary>The typeface that the sheets name, for programs that are not ours.</summary>
internal static class InterFonts
{
    /// <summary>A font file's bytes: <c>Inter-Regular.ttf</c>, <c>Inter-Bold.ttf</c>.</summary>
    public static byte[] Read(string file) => Fonts.InterFonts.Read(file);

    /// <summary>
    /// Makes a folder where programs that ask fontconfig find this typeface and no other; returns the file for FONTCONFIG_FILE.
    /// </summary>
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
