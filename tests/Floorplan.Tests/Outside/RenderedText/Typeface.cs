using Floorplan.Tests.Cli;

namespace Floorplan.Tests.Outside.RenderedText;

/// <summary>A typeface in which people see a sheet: the one that sheets ask for, or what stands in for it on machines without it.</summary>
public sealed record Typeface(string Name)
{
    /// <summary>As Debian installs fonts-dejavu-core and fonts-liberation.</summary>
    private const string Folder = "/usr/share/fonts/truetype";

    public static IReadOnlyList<Typeface> All { get; } = [new("Inter"), new("Liberation Sans"), new("DejaVu Sans")];

    /// <summary>A font file's bytes.</summary>
    public byte[] Read(bool bold) => Name == "Inter"
        ? InterFonts.Read(bold ? "Inter-Bold.ttf" : "Inter-Regular.ttf")
        : File.ReadAllBytes(Installed(bold));

    /// <summary>Skips the test where one is not installed.</summary>
    public static void RequireAll()
    {
        foreach (var typeface in All.Where(t => t.Name != "Inter"))
        {
            OutsidePrograms.Require(
                File.Exists(typeface.Installed(false)) && File.Exists(typeface.Installed(true)), typeface.Name + " is not installed");
        }
    }

    /// <summary>Programs that ask fontconfig with this file in FONTCONFIG_FILE find this typeface and no other.</summary>
    internal string Install(TemporaryFolder folder)
    {
        string fonts = Directory.CreateDirectory(folder.At(Name)).FullName;
        File.WriteAllBytes(Path.Combine(fonts, "regular.ttf"), Read(false));
        File.WriteAllBytes(Path.Combine(fonts, "bold.ttf"), Read(true));
        return folder.Write(Name + ".conf", System.Text.Encoding.UTF8.GetBytes($"""
            <?xml version="1.0"?>
            <!DOCTYPE fontconfig SYSTEM "fonts.dtd">
            <fontconfig><dir>{fonts}</dir><cachedir>{folder.At("cache")}</cachedir></fontconfig>
            """));
    }

    public override string ToString() => Name;

    private string Installed(bool bold) => Path.Combine(Folder, Name == "DejaVu Sans"
        ? bold ? "dejavu/DejaVuSans-Bold.ttf" : "dejavu/DejaVuSans.ttf"
        : bold ? "liberation/LiberationSans-Bold.ttf" : "liberation/LiberationSans-Regular.ttf");
}
