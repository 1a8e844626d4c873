using System.Text.Json;
using Floorplan.Model;
using Floorplan.Sizing.Sizes;

namespace Floorplan.Cli.Output.Json;

/// <summary>What <c>size --output json</c> prints. The schema is in DEVELOPERS.md.</summary>
internal static class SizeJson
{
    private const int Schema = 1;

    public static void Write(TextWriter output, string file, Plan plan, PlanSizes sizes)
        => JsonDocumentText.Write(output, json =>
    {
        json.WriteNumber("schema", Schema);
        json.WriteString("file", file);
        json.WriteString("title", plan.Head.Title);
        json.WriteStartArray("subjects");
        foreach (var subject in sizes.Subjects)
        {
            Write(json, subject);
        }

        json.WriteEndArray();
    });

    private static void Write(Utf8JsonWriter json, SizedSubject subject)
    {
        json.WriteStartObject();
        json.WriteString("name", subject.Name);
        json.WriteStartArray("answers");
        foreach (var row in subject.Rows)
        {
            json.WriteStartObject();
            json.WriteString("what", row.What);
            json.WriteString("value", row.Value);
            json.WriteString("remark", row.Remark);
            json.WriteString("figure", row.Figure?.Name);
            json.WriteString("of", row.Figure?.Of);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("tables");
        foreach (var table in subject.Tables)
        {
            json.WriteStartObject();
            json.WriteString("title", table.Title);
            Texts(json, "heads", table.Heads);
            json.WriteStartArray("rows");
            foreach (var row in table.Rows)
            {
                json.WriteStartArray();
                foreach (string cell in row)
                {
                    json.WriteStringValue(cell);
                }

                json.WriteEndArray();
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        json.WriteEndArray();
        FigureJson.Write(json, "figures", subject.Figures);
        json.WriteStartArray("notSaid");
        foreach (var missing in subject.Missing)
        {
            json.WriteStartObject();
            json.WriteString("what", missing.What);
            json.WriteString("write", missing.Write);
            SpanJson.Write(json, "span", missing.Span);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        Texts(json, "cautions", subject.Cautions);
        json.WriteEndObject();
    }

    private static void Texts(Utf8JsonWriter json, string name, IReadOnlyList<string> texts)
    {
        json.WriteStartArray(name);
        foreach (string text in texts)
        {
            json.WriteStringValue(text);
        }

        json.WriteEndArray();
    }
}
