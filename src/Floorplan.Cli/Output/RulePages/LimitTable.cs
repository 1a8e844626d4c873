using System.Text;
using Floorplan.Checks.Framework;
using Floorplan.Language.Diagnostics;
using Floorplan.Model;

namespace Floorplan.Cli.Output.RulePages;

/// <summary>Every figure of every rule in one table, for whoever checks them against the printed texts.</summary>
internal static class LimitTable
{
    public static string Markdown()
    {
        var text = new StringBuilder("# Every figure, and where it holds\n\n");
        text.Append("A figure binds only where place, trade and plant are those of the plan. Guidance is never more than a note, and a ")
            .Append("figure from memory is never an error. Laws differ and change: confirm with the authority having jurisdiction.\n\n");
        text.Append("| rule | figure | value | weight | place | trade | plant | code | kind | source and clause | edition | how read |\n");
        text.Append("|---|---|---|---|---|---|---|---|---|---|---|---|\n");
        foreach (var (rule, limit) in RuleCatalogue.All.SelectMany(r => r.Limits.Select(l => (r, l))))
        {
            var source = limit.Source;
            string[] cells =
            [
                $"[`{rule.Name}`]({rule.Name}.md)", limit.Key, LimitFigure.Value(limit), DiagnosticText.Word(LimitFigure.Weight(limit)),
                List(source.Scope.Places), List([.. source.Scope.Trades.Select(t => t.Word())]),
                List([.. source.Scope.Plants.Select(p => p.ToString().ToLowerInvariant())]),
                limit.Codes.Length == 0 ? "any" : string.Join(", ", limit.Codes.Select(c => c.Word())),
                LimitFigure.Kind(source.Force), source.Title, source.Edition, source.Read,
            ];
            text.Append("| ").AppendJoin(" | ", cells.Select(c => c.Replace("|", "\\|", StringComparison.Ordinal))).Append(" |\n");
        }

        return text.ToString();
    }

    private static string List(IReadOnlyList<string> words) => words.Count == 0 ? "any" : string.Join(", ", words);
}
