using System.Buffers.Binary;
using System.Text;
using Floorplan.Print.Fonts;
using Xunit;

namespace Floorplan.Tests.Print;

public class InterFontsTests
{
    /// <summary>OpenType 1.9.1, "Organization of an OpenType font": a version, then where each table is; head has a magic number.</summary>
    [Theory]
    [InlineData("Inter-Regular.ttf")]
    [InlineData("Inter-Bold.ttf")]
    public void A_font_is_read_whole(string file)
    {
        byte[] font = InterFonts.Read(file);

        Assert.Equal(0x00010000, Number(font, 0));
        var tables = Enumerable.Range(0, BinaryPrimitives.ReadInt16BigEndian(font.AsSpan(4)))
            .Select(i => 12 + (16 * i))
            .Select(at => (Name: Encoding.ASCII.GetString(font, at, 4), Offset: Number(font, at + 8), Length: Number(font, at + 12)))
            .ToList();
        Assert.InRange(font.Length - tables.Max(t => t.Offset + t.Length), 0, 3);
        Assert.Equal(0x5F0F3CF5, Number(font, tables.Single(t => t.Name == "head").Offset + 12));
    }

    /// <summary>Code of the font's package must not get into the program, and a native program cannot load any.</summary>
    [Fact]
    public void Reading_a_font_loads_no_library()
    {
        _ = InterFonts.Read("Inter-Regular.ttf");
        Assert.DoesNotContain(AppDomain.CurrentDomain.GetAssemblies(), a => a.GetName().Name == "Avalonia.Fonts.Inter");
    }

    private static int Number(byte[] font, int offset) => BinaryPrimitives.ReadInt32BigEndian(font.AsSpan(offset));
}
