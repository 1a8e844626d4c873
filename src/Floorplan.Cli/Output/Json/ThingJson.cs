using System.Text.Json;
using Floorplan.Model;
using Floorplan.Model.Details;

namespace Floorplan.Cli.Output.Json;

/// <summary>The things of a plan with all that is said of them, for programs.</summary>
internal static class ThingJson
{
    public static void Write(Utf8JsonWriter json, Plan? plan)
    {
        json.WriteStartArray("things");
        foreach (var thing in plan is null ? [] : PlanThings.Of(plan, plan.Units))
        {
            json.WriteStartObject();
            json.WriteString("kind", thing.Kind);
            json.WriteString("id", thing.Id);
            json.WriteString("label", thing.Label);
            if (thing.Span.Source is null)
            {
                json.WriteNull("line");
            }
            else
            {
                json.WriteNumber("line", thing.Span.Position.Line);
            }

            json.WriteStartObject("details");
            foreach (var detail in thing.Details)
            {
                json.WriteString(detail.Word, detail.Value);
            }

            json.WriteEndObject();
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
