using System.Text.Json;
using Floorplan.Sizing.Working;

namespace Floorplan.Cli.Output.Json;

/// <summary>Worked-out values with their working, for programs.</summary>
internal static class FigureJson
{
    public static void Write(Utf8JsonWriter json, string name, IReadOnlyList<Figure> figures)
    {
        json.WriteStartArray(name);
        foreach (var figure in figures)
        {
            Write(json, figure);
        }

        json.WriteEndArray();
    }

    private static void Write(Utf8JsonWriter json, Figure figure)
    {
        json.WriteStartObject();
        json.WriteString("name", figure.Name);
        json.WriteString("of", figure.Of);
        json.WriteString("kind", figure.Kind.ToString().ToLowerInvariant());
        if (double.IsFinite(figure.Value))
        {
            json.WriteNumber("value", figure.Value);
        }
        else
        {
            json.WriteNull("value");
        }

        json.WriteString("text", figure.Text);
        json.WriteString("formula", figure.Formula);
        json.WriteString("numbers", figure.Substituted);
        json.WriteString("source", figure.Source.Text);
        json.WriteStartArray("inputs");
        foreach (var input in figure.Inputs)
        {
            Write(json, input);
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    /// <summary>A figure that goes into another is named, not written out: it may go into many.</summary>
    private static void Write(Utf8JsonWriter json, FigureInput input)
    {
        json.WriteStartObject();
        json.WriteString("name", input.Name);
        json.WriteString("text", input.Text);
        json.WriteString("source", input.Source?.Text);
        json.WriteString("workedOutOf", input.Worked?.Of);
        if (input.Line is { } line)
        {
            SpanJson.Write(json, "span", line);
        }
        else
        {
            json.WriteNull("span");
        }

        json.WriteEndObject();
    }
}
