using System.Text;
using Floorplan.Language.Text;

namespace Floorplan.Language.Diagnostics;

/// <summary>Words a mistake without colour: where, what, its code, the line underlined, other places, and a way out.</summary>
public static class DiagnosticText
{
    /// <summary>Longer lines are cut round the place; fits a usual console.</summary>
    private const int MostShown = 110;

    private const int ShownBefore = 40;

    public static string Write(Diagnostic diagnostic)
    {
        var text = new StringBuilder();
        text.Append(Place(diagnostic.Span)).Append(": ").Append(Word(diagnostic.Severity)).Append(": ").Append(Visible(diagnostic.Message)).Append(" [").Append(diagnostic.Code).Append("]\n");
        text.Append(Underlined(diagnostic.Span));
        foreach (var related in diagnostic.Related ?? [])
        {
            text.Append("  ").Append(Place(related.Span)).Append(": ").Append(Visible(related.Message)).Append('\n').Append(Underlined(related.Span));
        }

        if (diagnostic.Help is { } help)
        {
            text.Append("  mend: ").Append(Visible(help)).Append('\n');
        }

        return text.ToString();
    }

    /// <summary><c>unit.plan:12:3</c></summary>
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

    /// <summary>The source line with its number, and carets under the span, two lines in all; control characters shown as spaces.</summary>
    public static string Underlined(SourceSpan span)
    {
        var position = span.Position;
        string line = Visible(span.Source.Line(position.Line));
        int column = Math.Min(position.Column - 1, line.Length);
        int from = line.Length <= MostShown ? 0 : Math.Max(0, Math.Min(column - ShownBefore, line.Length - MostShown));
        int to = Math.Min(line.Length, from + MostShown);
        from -= from > 0 && char.IsLowSurrogate(line[from]) ? 1 : 0;
        to += to < line.Length && char.IsLowSurrogate(line[to]) ? 1 : 0;
        string shown = (from > 0 ? "…" : "") + line[from..to] + (to < line.Length ? "…" : "");
        int indent = column - from + (from > 0 ? 1 : 0);
        int carets = Math.Max(1, Math.Min(span.Length, to - column));
        string number = FormattableString.Invariant($"{position.Line,5} | ");
        return number + shown + "\n" + new string(' ', number.Length - 2) + "| " + new string(' ', Math.Max(0, indent)) + new string('^', carets) + "\n";
    }

    /// <summary>Control, format and bidirectional characters become spaces, one for one, so that columns stay true and a console cannot be steered.</summary>
    public static string Visible(string text) => string.Create(text.Length, text, (target, from) =>
    {
        for (int i = 0; i < from.Length; i++)
        {
            var category = char.GetUnicodeCategory(from[i]);
            target[i] = category is System.Globalization.UnicodeCategory.Control or System.Globalization.UnicodeCategory.Format
                or System.Globalization.UnicodeCategory.LineSeparator or System.Globalization.UnicodeCategory.ParagraphSeparator ? ' ' : from[i];
        }
    });
}
