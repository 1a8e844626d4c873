using System.Text.Json;
using Floorplan.Checks.Framework;
using Floorplan.Checks.Mending;
using Floorplan.Cli.Input;
using Floorplan.Cli.Output.Json;
using Floorplan.Language.Diagnostics;
using Floorplan.Language.Text;

namespace Floorplan.Cli.Output.Reports;

/// <summary>
/// What <c>check --output sarif</c> prints: one run of the Static Analysis Results Interchange Format 2.1.0 (OASIS), for editors and
/// code hosts.
/// </summary>
internal static class CheckSarif
{
    private const string Version = "2.1.0";

    public static void Write(TextWriter output, IReadOnlyList<Checked> all) => JsonDocumentText.Write(output, json =>
    {
        var codes = Codes(all);
        json.WriteString("version", Version);
        json.WriteStartArray("runs");
        json.WriteStartObject();
        Tool(json, codes);
        json.WriteString("columnKind", "utf16CodeUnits");
        Invocation(json, all);
        json.WriteStartArray("results");
        foreach (var examination in all.Select(c => c.Examination).OfType<Examination>())
        {
            foreach (var diagnostic in examination.Diagnostics)
            {
                Result(json, codes, diagnostic.Code, diagnostic.Severity, diagnostic.Message, diagnostic.Help, diagnostic.Span, null, null);
            }

            foreach (var finding in examination.Findings)
            {
                string message = finding.Limit.Length == 0 ? finding.Message : $"{finding.Message}; {finding.Limit}";
                Result(
                    json, codes, finding.Rule, finding.Severity, message, finding.Mend, finding.Span, finding.AcceptedBy?.Reason,
                    finding.Proposal);
            }
        }

        json.WriteEndArray();
        json.WriteEndObject();
        json.WriteEndArray();
    });

    /// <summary>Every rule, then the codes of mistakes in the text that occur.</summary>
    private static List<string> Codes(IReadOnlyList<Checked> all) =>
    [
        .. RuleCatalogue.All.Select(r => r.Name),
        .. all.SelectMany(c => c.Examination?.Diagnostics ?? []).Select(d => d.Code).Distinct().Order(StringComparer.Ordinal),
    ];

    private static void Tool(Utf8JsonWriter json, List<string> codes)
    {
        json.WriteStartObject("tool");
        json.WriteStartObject("driver");
        json.WriteString("name", "Floorplan");
        json.WriteString("version", typeof(CheckSarif).Assembly.GetName().Version!.ToString(3));
        json.WriteStartArray("rules");
        foreach (string code in codes)
        {
            var rule = RuleCatalogue.Find(code);
            json.WriteStartObject();
            json.WriteString("id", code);
            Text(json, "shortDescription", rule?.Says ?? "A mistake in the text of the plan.");
            if (rule is not null)
            {
                Text(json, "fullDescription", rule.Why);
                Text(json, "help", string.Join("; ", rule.Sources.Select(s => s.Text)));
            }

            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
        json.WriteEndObject();
    }

    /// <summary>
    /// What is said of a whole file is a notification of the run, not a result: that it could not be read, or that more small changes
    /// could be tried.
    /// </summary>
    private static void Invocation(Utf8JsonWriter json, IReadOnlyList<Checked> all)
    {
        json.WriteStartArray("invocations");
        json.WriteStartObject();
        json.WriteBoolean("executionSuccessful", all.All(c => c.Examination is not null));
        json.WriteStartArray("toolExecutionNotifications");
        foreach (var input in all)
        {
            if (input.Examination is null)
            {
                Notification(json, "error", $"{input.Input.Name}: {input.Input.Problem}");
            }
            else if (input.Examination.Proposals is { } proposals && MendsText.NotAll(proposals, $" in {input.Input.Name}") is { } sentence)
            {
                Notification(json, "note", sentence);
            }
        }

        json.WriteEndArray();
        json.WriteEndObject();
        json.WriteEndArray();
    }

    private static void Notification(Utf8JsonWriter json, string level, string text)
    {
        json.WriteStartObject();
        json.WriteString("level", level);
        Text(json, "message", text);
        json.WriteEndObject();
    }

    private static void Result(
        Utf8JsonWriter json, List<string> codes, string code, Severity severity, string message, string? mend, SourceSpan span,
        string? accepted, Proposal? proposal)
    {
        json.WriteStartObject();
        json.WriteString("ruleId", code);
        json.WriteNumber("ruleIndex", codes.IndexOf(code));
        json.WriteString("level", DiagnosticText.Word(severity));
        Text(json, "message", string.IsNullOrEmpty(mend) ? message : $"{message}; mend: {mend}");
        json.WriteStartArray("locations");
        json.WriteStartObject();
        json.WriteStartObject("physicalLocation");
        Artifact(json, span.Source);
        Region(json, "region", span);
        json.WriteEndObject();
        json.WriteEndObject();
        json.WriteEndArray();
        if (accepted is not null)
        {
            json.WriteStartArray("suppressions");
            json.WriteStartObject();
            json.WriteString("kind", "inSource");
            json.WriteString("justification", accepted);
            json.WriteEndObject();
            json.WriteEndArray();
        }

        if (proposal is not null)
        {
            Fix(json, span.Source, proposal.Change);
        }

        json.WriteEndObject();
    }

    private static void Fix(Utf8JsonWriter json, SourceText source, TextChange change)
    {
        json.WriteStartArray("fixes");
        json.WriteStartObject();
        json.WriteStartArray("artifactChanges");
        json.WriteStartObject();
        Artifact(json, source);
        json.WriteStartArray("replacements");
        json.WriteStartObject();
        Region(json, "deletedRegion", new SourceSpan(source, change.Start, change.Length));
        Text(json, "insertedContent", change.Words);
        json.WriteEndObject();
        json.WriteEndArray();
        json.WriteEndObject();
        json.WriteEndArray();
        json.WriteEndObject();
        json.WriteEndArray();
    }

    private static void Artifact(Utf8JsonWriter json, SourceText source)
    {
        json.WriteStartObject("artifactLocation");
        json.WriteString("uri", Uri(source.Path));
        json.WriteEndObject();
    }

    private static void Region(Utf8JsonWriter json, string name, SourceSpan span)
    {
        var start = span.Position;
        var end = span.Source.PositionOf(span.End);
        json.WriteStartObject(name);
        json.WriteNumber("startLine", start.Line);
        json.WriteNumber("startColumn", start.Column);
        json.WriteNumber("endLine", end.Line);
        json.WriteNumber("endColumn", end.Column);
        json.WriteEndObject();
    }

    private static void Text(Utf8JsonWriter json, string name, string text)
    {
        json.WriteStartObject(name);
        json.WriteString("text", text);
        json.WriteEndObject();
    }

    /// <summary>A path as a relative reference of RFC 3986.</summary>
    private static string Uri(string path) => string.Join('/', path.Replace('\\', '/').Split('/').Select(System.Uri.EscapeDataString));
}
