using Floorplan.Cli.Output.Printing;

namespace Floorplan.Cli.Output.RulePages;

/// <summary>A rule page for the console.</summary>
internal static class RulePageText
{
    public static void Write(Page page, RulePage rule)
    {
        page.Heading(rule.Title);
        foreach (var section in rule.Sections)
        {
            page.Gap();
            page.Heading(section.Heading);
            foreach (string line in section.Lines)
            {
                WriteLine(page, section, line);
            }
        }
    }

    private static void WriteLine(Page page, RulePage.Section section, string line)
    {
        if (section.IsPlan)
        {
            page.Line("  ", new Piece(line.TrimEnd('\r'), Tone.Quiet));
        }
        else
        {
            page.Prose(line);
        }
    }
}
