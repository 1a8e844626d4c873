using System.Text.Json;
using Floorplan.Language.Text;

namespace Floorplan.Cli.Output.Json;

/// <summary>A place in a text: lines and columns count from 1, columns in UTF-16 units; the end is the first place after it.</summary>
internal static class SpanJson
{
    public static void Write(Utf8JsonWriter json, string name, SourceSpan span)
    {
        var start = span.Position;
        var end = span.Source.PositionOf(span.End);
        json.WriteStartObject(name);
        json.WriteString("file", span.Source.Path);
        json.WriteNumber("line", start.Line);
        json.WriteNumber("column", start.Column);
        json.WriteNumber("endLine", end.Line);
        json.WriteNumber("endColumn", end.Column);
        json.WriteEndObject();
    }
}
