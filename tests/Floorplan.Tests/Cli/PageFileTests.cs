using Floorplan.Cli.Output.Drawings.Pages;
using Xunit;

namespace Floorplan.Tests.Cli;

/// <summary>What the index makes of a file's name, whichever run wrote the file.</summary>
public class PageFileTests
{
    [Theory]
    [InlineData("my-unit-6-openings-and-frames.svg", "Welder", "6", "Sheet 6, openings and frames", "SVG")]
    [InlineData("my-unit-6.2-openings-and-frames-mm.dxf", "Welder", "6.2", "Sheet 6.2, openings and frames", "DXF")]
    [InlineData("my-unit-1-general-arrangement.png", "Everybody", "1", "Sheet 1, general arrangement", "PNG")]
    [InlineData("my-unit-12-something-new.svg", "Everybody", "12", "Sheet 12, something new", "SVG")]
    [InlineData("my-unit-cut-outs-north-wall-2-mm.dxf", "Welder", null, "Holes for a cutting table, north wall 2", "DXF")]
    [InlineData("my-unit-finishes.csv", "Inspector", null, "Schedule of finishes", "CSV")]
    [InlineData("my-unit.pdf", "Everybody", null, "All sheets for printing", "PDF")]
    [InlineData("my-unit-letter.pdf", "Everybody", null, "All sheets for printing, letter", "PDF")]
    public void A_name_says_what_it_is_and_who_needs_it(string file, string reader, string? sheet, string what, string format)
    {
        var found = PageFile.Of("my-unit", file);
        Assert.Equal((file, reader, sheet, what, format), (found.Name, found.Reader.ToString(), found.Sheet, found.What, found.Format));
    }
}
