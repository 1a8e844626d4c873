using System.Text;
using System.Text.RegularExpressions;

namespace Floorplan.Benchmarks;

/// <summary>Writes a plan's statements as a YAML list, word by word: the same content for a general-purpose reader.</summary>
internal static partial class PlanAsYaml
{
    public static string Write(string plan)
    {
        var yaml = new StringBuilder();
        foreach (string line in plan.Split('\n', StringSplitOptions.RemoveEmptyEntries))
        {
            bool isDetail = line[0] == ' ';
            string words = string.Join(", ", WordPattern().Matches(line).Select(m => m.Value[0] == '"' ? m.Value : $"'{m.Value}'"));
            yaml.Append(isDetail ? "    - [" : "- statement: [").Append(words).Append("]\n");
            if (!isDetail)
            {
                yaml.Append("  details:\n");
            }
        }

        return yaml.ToString();
    }

    [GeneratedRegex("\"[^\"]*\"|[^\\s,]+")]
    private static partial Regex WordPattern();
}
