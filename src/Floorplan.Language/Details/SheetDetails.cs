using Floorplan.Language.Diagnostics;
using Floorplan.Language.Parsing;
using Floorplan.Language.Syntax.Values;
using Floorplan.Language.Tokens;
using Floorplan.Language.Words;

namespace Floorplan.Language.Details;

/// <summary>What a <c>sheet</c> statement may say.</summary>
public static class SheetDetails
{
    /// <summary>Sheets of a set are numbered from 1 to this.</summary>
    public const int LastSheet = 10;

    private static readonly string[] Showable = ["dimensions", "findings", "flows", "openings", "services", "stations"];

    public static Detail<TextSyntax> Paper { get; } =
        new("paper", "its paper size", ["paper A2", "paper A4 portrait", "paper tabloid"], PaperOf);

    public static Detail<NumberSyntax> Scale { get; } = new("scale", "its scale", ["scale 1:25", "scale 1:50"], ScaleOf);

    public static Detail<IReadOnlyList<WordSyntax>> Shows { get; } =
        new("shows", "what it shows", ["shows stations, openings", "shows stations"], ShowsOf) { Use = Use.NotYet };

    public static IReadOnlyList<Detail> All { get; } = [Paper, Scale, Shows];

    private static TextSyntax? PaperOf(Cursor c)
    {
        if (c.Words("a paper size such as A3 or 11 x 17 in") is not { } name)
        {
            return null;
        }

        if (Words.Paper.Find(name.Text) is null)
        {
            c.Error(
                "unknown-word",
                $"`{Cursor.Shown(name.Text)}` is not a paper size",
                name.Span,
                NearNames.Hint(name.Text, Words.Paper.Names) ?? $"sizes are {string.Join(", ", Words.Paper.Names)}");
            return null;
        }

        return name;
    }

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
        if (c.Number("the second half of the scale") is not { } half)
        {
            return null;
        }

        if (half.Value is < 1 or > Bounds.SmallestScale)
        {
            c.Error("not-a-scale", $"a scale is from 1:1 to 1:{Bounds.SmallestScale}", half.Span, "write such as `scale 1:25`");
            return null;
        }

        return half;
    }

    private static IReadOnlyList<WordSyntax> ShowsOf(Cursor c)
    {
        var words = new List<WordSyntax>();
        do
        {
            if (c.Word("what to show", Showable) is { } word)
            {
                words.Add(word);
            }
        }
        while (c.NextInList(n => n.Kind == TokenKind.Word));
        return words;
    }
}
