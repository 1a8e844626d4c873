using System.Text.Json;
using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Language.Diagnostics;

namespace Floorplan.Cli.Output.Json;

/// <summary>One finding, for programs.</summary>
internal static class FindingJson
{
    public static void Write(Utf8JsonWriter json, Finding finding, int number)
    {
        var rule = RuleCatalogue.Find(finding.Rule);
        json.WriteStartObject();
        json.WriteNumber("number", number);
        json.WriteString("rule", finding.Rule);
        json.WriteString("severity", DiagnosticText.Word(finding.Severity));
        json.WriteString("message", finding.Message);
        WriteList(json, "things", finding.Things);
        WriteNumber(json, "measured", finding.Measured);
        WriteNumber(json, "limitValue", finding.LimitValue);
        json.WriteString("limit", finding.Limit.Length == 0 ? null : finding.Limit);
        FigureJson.Write(json, "figures", finding.Figures);
        WriteList(json, "sources", rule?.Sources.Select(s => s.Text) ?? []);
        json.WriteString("mend", finding.Mend);
        WriteProposal(json, finding);
        SpanJson.Write(json, "span", finding.Span);
        WriteAt(json, finding);
        WriteAccepted(json, finding);
        json.WriteEndObject();
    }

    private static void WriteProposal(Utf8JsonWriter json, Finding finding)
    {
        if (finding.Proposal is not { } proposal)
        {
            json.WriteNull("proposal");
            return;
        }

        json.WriteStartObject("proposal");
        json.WriteNumber("line", proposal.Line);
        json.WriteString("before", proposal.Before.Length == 0 ? null : proposal.Before);
        json.WriteString("after", proposal.After);
        json.WriteEndObject();
    }

    private static void WriteAt(Utf8JsonWriter json, Finding finding)
    {
        if (finding.At is not { } at || !double.IsFinite(at.X) || !double.IsFinite(at.Y))
        {
            json.WriteNull("at");
            return;
        }

        json.WriteStartObject("at");
        WriteNumber(json, "x", at.X);
        WriteNumber(json, "y", at.Y);
        json.WriteEndObject();
    }

    private static void WriteAccepted(Utf8JsonWriter json, Finding finding)
    {
        if (finding.AcceptedBy is not { } accepted)
        {
            json.WriteNull("accepted");
            return;
        }

        json.WriteStartObject("accepted");
        json.WriteString("reason", accepted.Reason);
        json.WriteString("by", accepted.By);
        SpanJson.Write(json, "span", accepted.Span);
        json.WriteEndObject();
    }

    private static void WriteList(Utf8JsonWriter json, string name, IEnumerable<string> values)
    {
        json.WriteStartArray(name);
        foreach (string value in values)
        {
            json.WriteStringValue(value);
        }

        json.WriteEndArray();
    }

    // JSON has no infinity; a thousandth is finer than any tape measure.
    private static void WriteNumber(Utf8JsonWriter json, string name, double? value)
    {
        if (value is { } number && double.IsFinite(number))
        {
            json.WriteNumber(name, Math.Round(number, 3));
        }
        else
        {
            json.WriteNull(name);
        }
    }
}
