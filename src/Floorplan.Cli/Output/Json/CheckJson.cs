using System.Text.Json;
using Floorplan.Checks.Findings;
using Floorplan.Cli.Input;
using Floorplan.Cli.Output.Reports;
using Floorplan.Model;

namespace Floorplan.Cli.Output.Json;

/// <summary>What <c>check --output json</c> prints: one document whatever the number of files. The schema is in DEVELOPERS.md.</summary>
internal static class CheckJson
{
    /// <summary>Goes up when a field is renamed, removed or changes its meaning; new fields do not count.</summary>
    private const int Schema = 1;

    public static void Write(TextWriter output, IReadOnlyList<Checked> all, int exit) => JsonDocumentText.Write(output, json =>
    {
        json.WriteNumber("schema", Schema);
        json.WriteNumber("exit", exit);
        json.WriteStartArray("files");
        foreach (var input in all)
        {
            WriteFile(json, input);
        }

        json.WriteEndArray();
    });

    private static void WriteFile(Utf8JsonWriter json, Checked input)
    {
        json.WriteStartObject();
        json.WriteString("file", input.Input.Name);
        json.WriteString("problem", input.Input.Problem);
        json.WriteString("title", input.Examination?.Plan?.Head.Title);
        json.WriteString("code", input.Examination?.Plan?.Head.Code.Word());
        var counts = input.Examination is null ? FindingCounts.None : Counts.Of(input.Examination);
        json.WriteStartObject("counts");
        json.WriteNumber("errors", counts.Errors);
        json.WriteNumber("warnings", counts.Warnings);
        json.WriteNumber("notes", counts.Notes);
        json.WriteNumber("accepted", counts.Accepted);
        json.WriteEndObject();
        json.WriteStartArray("diagnostics");
        foreach (var diagnostic in input.Examination?.Diagnostics ?? [])
        {
            DiagnosticJson.Write(json, diagnostic);
        }

        json.WriteEndArray();
        json.WriteStartArray("findings");
        foreach (var (index, finding) in (input.Examination?.Findings ?? []).Index())
        {
            FindingJson.Write(json, finding, index + 1);
        }

        json.WriteEndArray();
        if (input.Examination?.Proposals is { } proposals)
        {
            json.WriteStartObject("mending");
            json.WriteNumber("tried", proposals.Tried);
            json.WriteBoolean("all", proposals.IsAll);
            json.WriteEndObject();
        }
        else
        {
            json.WriteNull("mending");
        }

        ThingJson.Write(json, input.Examination?.Plan);
        json.WriteEndObject();
    }
}
