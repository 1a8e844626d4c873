using System.Text;

namespace Floorplan.Cli.Output.RulePages;

/// <summary>A rule page for the gallery.</summary>
internal static class RulePageMarkdown
{
    public static string Write(RulePage rule)
    {
        var text = new StringBuilder().Append("# `").Append(rule.Title).Append("`\n");
        foreach (var section in rule.Sections)
        {
            text.Append("\n## ").Append(section.Heading).Append("\n\n");
            if (section.IsPlan)
            {
                text.Append("![").Append(section.Heading).Append("](").Append(rule.Title).Append('-').Append(PictureOf(section))
                    .Append(".svg)\n\n");
                text.Append(section.Heading == RulePage.Fault ? "```unit\n" : "```text\n").AppendJoin('\n', section.Lines)
                    .Append("\n```\n");
            }
            else
            {
                IEnumerable<string> lines = section.Heading == RulePage.Related
                    ? section.Lines.Select(n => $"[`{n}`]({n}.md)")
                    : section.Lines;
                text.AppendJoin('\n', section.Lines.Count == 1 ? lines : lines.Select(l => "- " + l)).Append('\n');
            }
        }

        return text.ToString();
    }

    private static string PictureOf(RulePage.Section section) => section.Heading == RulePage.Fault ? "bad" : "good";
}
