using System.Text;
using Floorplan.Language.Text;

namespace Floorplan.Language.Diagnostics;

/// <summary>Words a mistake without colour: where, what, its code, the line with the place marked, other places, and a way out.</summary>
public static class DiagnosticText
{
    public static string Write(Diagnostic diagnostic)
    {
        var text = new StringBuilder();
        text.Append(Place(diagnostic.Span)).Append(": ").Append(Word(diagnostic.Severity)).Append(": ").Append(Visible(diagnostic.Message))
            .Append(" [").Append(diagnostic.Code).Append("]\n");
        text.Append(Excerpt.Of(diagnostic.Span).Text).Append('\n');
        foreach (var related in diagnostic.Related ?? [])
        {
            text.Append("  ").Append(Place(related.Span)).Append(": ").Append(Visible(related.Message)).Append('\n')
                .Append(Excerpt.Of(related.Span).Text).Append('\n');
        }

        if (diagnostic.Help is { } help)
        {
            text.Append("  mend: ").Append(Visible(help)).Append('\n');
        }

        return text.ToString();
    }

    /// <summary><c>unit.unit:12:3</c></summary>
    public static string Place(SourceSpan span)
    {
        var position = span.Position;
        return FormattableString.Invariant($"{Visible(span.Source.Path)}:{position.Line}:{position.Column}");
    }

    public static string Word(Severity severity) => severity switch
    {
        Severity.Error => "error",
        Severity.Warning => "warning",
        _ => "note",
    };

    /// <summary>What does not show becomes spaces, one for one.</summary>
    public static string Visible(string text) => HiddenCharacters.Blanked(text);
}
