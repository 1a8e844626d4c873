using Floorplan.Language.Parsing;
using Floorplan.Language.Syntax.Values;
using Floorplan.Language.Tokens;
using Floorplan.Language.Words;

namespace Floorplan.Language.Details;

/// <summary>What a <c>sheet</c> statement may say.</summary>
public static class SheetDetails
{
    public static Detail<TextSyntax> Paper { get; } = Forms.Text(
        "paper",
        "its paper size",
        "a paper size such as A3 or 11 x 17 in",
        "paper A2",
        "paper A1");

    public static Detail<NumberSyntax> Scale { get; } = new("scale", "its scale", ["scale 1:25", "scale 1:50"], ScaleOf);

    public static Detail<IReadOnlyList<WordSyntax>> Shows { get; } =
        new("shows", "what it shows", ["shows stations, openings", "shows stations"], ShowsOf) { Use = Use.NotYet };

    public static IReadOnlyList<Detail> All { get; } = [Paper, Scale, Shows];

    /// <summary>The denominator of 1:n.</summary>
    private static NumberSyntax? ScaleOf(Cursor c)
    {
        if (c.Number("a scale such as 1:25") is not { } one)
        {
            return null;
        }

        if (c.Kind != TokenKind.Colon || one.Value != 1)
        {
            c.Error("not-a-scale", "a scale is written 1:25", one.Span);
            return null;
        }

        c.Skip();
        return c.Number("the second half of the scale");
    }

    private static IReadOnlyList<WordSyntax> ShowsOf(Cursor c)
    {
        var words = new List<WordSyntax>();
        do
        {
            if (c.Word("what to show") is { } word)
            {
                words.Add(word);
            }
        }
        while (c.NextInList(n => n.Kind == TokenKind.Word));
        return words;
    }
}
