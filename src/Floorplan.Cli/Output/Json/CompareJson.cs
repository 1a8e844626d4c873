using System.Text.Json;
using Floorplan.Checks.Findings;
using Floorplan.Cli.Output.Reports;
using Floorplan.Language.Diagnostics;
using Floorplan.Model.Comparing;
using Floorplan.Model.Shapes;

namespace Floorplan.Cli.Output.Json;

/// <summary>What <c>compare --output json</c> prints. The schema is in DEVELOPERS.md.</summary>
internal static class CompareJson
{
    private const int Schema = 1;

    public static void Write(TextWriter output, string was, string now, IReadOnlyList<PlanChange> changes, ComparedFindings findings)
        => JsonDocumentText.Write(output, json =>
    {
        json.WriteNumber("schema", Schema);
        json.WriteString("old", was);
        json.WriteString("new", now);
        json.WriteStartArray("changes");
        foreach (var change in changes)
        {
            Write(json, change);
        }

        json.WriteEndArray();
        json.WriteStartObject("findings");
        Write(json, "new", findings.New);
        Write(json, "gone", findings.Gone);
        json.WriteEndObject();
    });

    /// <summary>As the text output says it.</summary>
    internal static string Word(ChangeKind kind) => kind switch
    {
        ChangeKind.Appeared => "new",
        ChangeKind.Vanished => "gone",
        ChangeKind.Moved => "moved",
        _ => "changed",
    };

    private static void Write(Utf8JsonWriter json, PlanChange change)
    {
        json.WriteStartObject();
        json.WriteString("change", Word(change.Kind));
        json.WriteString("kind", change.Thing);
        json.WriteString("id", change.Id);
        json.WriteString("label", change.Label);
        json.WriteString("text", change.Text);
        json.WriteString("moved", change.Moved);
        json.WriteStartArray("details");
        foreach (var detail in change.Details)
        {
            json.WriteStartObject();
            json.WriteString("word", detail.Word);
            json.WriteString("was", detail.Was);
            json.WriteString("is", detail.Is);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        Write(json, "was", change.Was);
        Write(json, "is", change.Is);
        json.WriteEndObject();
    }

    /// <summary>Plan millimetres from the inside south-west corner.</summary>
    private static void Write(Utf8JsonWriter json, string name, Box? box)
    {
        if (box is not { } place)
        {
            json.WriteNull(name);
            return;
        }

        json.WriteStartObject(name);
        json.WriteNumber("west", Math.Round(place.West.Millimetres, 3));
        json.WriteNumber("south", Math.Round(place.South.Millimetres, 3));
        json.WriteNumber("east", Math.Round(place.East.Millimetres, 3));
        json.WriteNumber("north", Math.Round(place.North.Millimetres, 3));
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, string name, IReadOnlyList<Finding> findings)
    {
        json.WriteStartArray(name);
        foreach (var finding in findings)
        {
            json.WriteStartObject();
            json.WriteString("rule", finding.Rule);
            json.WriteString("severity", DiagnosticText.Word(finding.Severity));
            json.WriteString("message", finding.Message);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
