using System.Text.Json;
using Floorplan.Language.Diagnostics;

namespace Floorplan.Cli.Output.Json;

/// <summary>A mistake in the text, for programs.</summary>
internal static class DiagnosticJson
{
    public static void Write(Utf8JsonWriter json, Diagnostic diagnostic)
    {
        json.WriteStartObject();
        json.WriteString("code", diagnostic.Code);
        json.WriteString("severity", DiagnosticText.Word(diagnostic.Severity));
        json.WriteString("message", diagnostic.Message);
        json.WriteString("help", diagnostic.Help);
        SpanJson.Write(json, "span", diagnostic.Span);
        json.WriteStartArray("related");
        foreach (var related in diagnostic.Related ?? [])
        {
            json.WriteStartObject();
            json.WriteString("message", related.Message);
            SpanJson.Write(json, "span", related.Span);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }
}
