using System.Text;
using Floorplan.Language.Details;

namespace Floorplan.Language.Words;

/// <summary>The details of every statement as Markdown tables, for the guide. A test holds the guide to them.</summary>
public static class DetailTables
{
    public static string Markdown()
    {
        var text = new StringBuilder();
        foreach (var group in Vocabulary.Statements.Where(s => s.Details.Count > 0)
            .GroupBy(s => string.Join('|', s.Details.Select(d => d.Detail.Examples[0]))))
        {
            text.Append('\n').AppendJoin(
                ", ",
                group.Select(s => $"`{s.Word}`")).Append(":\n\n| detail | written | says | |\n|---|---|---|---|\n");
            foreach (var detail in group.First().Details)
            {
                text.Append(
                    $"| {string.Join(", ", detail.Detail.Forms.Select(f => $"`{f}`"))} | `{detail.Detail.Examples[0]}` | "
                        + $"{detail.Detail.Says} | {Notes(detail)} |\n");
            }
        }

        return text.Append('\n').ToString();
    }

    private static string Notes(DetailWord word)
    {
        string?[] notes =
        [
            word.Detail.Needed == Needed.Never ? null : "needed",
            word.Detail.Repeatable ? "may be said again" : null,
            word.MayStandBare ? "also without its word" : null,
            word.Use switch { Use.NotYet => "not yet used", Use.Partly => "partly used", _ => null },
        ];
        return string.Join(", ", notes.Where(n => n is not null));
    }
}
