using System.Text;
using System.Text.Json;

namespace Floorplan.Cli.Output.Json;

/// <summary>Prints one JSON document, indented, in plain ASCII.</summary>
internal static class JsonDocumentText
{
    // The default encoder escapes everything beyond plain letters, so a name can neither break out of a page that
    // embeds the document nor turn its reading direction.
    private static readonly JsonWriterOptions Options = new() { Indented = true, NewLine = "\n" };

    /// <param name="content">Writes the members of the document's object.</param>
    public static void Write(TextWriter output, Action<Utf8JsonWriter> content)
    {
        using var held = new MemoryStream();
        using (var json = new Utf8JsonWriter(held, Options))
        {
            json.WriteStartObject();
            content(json);
            json.WriteEndObject();
        }

        output.WriteLine(Encoding.UTF8.GetString(held.GetBuffer(), 0, (int)held.Length));
    }
}
