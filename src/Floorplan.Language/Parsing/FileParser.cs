using Floorplan.Language.Diagnostics;
using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax;
using Floorplan.Language.Syntax.Statements;
using Floorplan.Language.Syntax.Values;
using Floorplan.Language.Text;
using Floorplan.Language.Tokens;

namespace Floorplan.Language.Parsing;

/// <summary>Sorts the lines of a file into statements with their details, and has each read by its own parser.</summary>
internal static class FileParser
{
    public static SyntaxTree Parse(SourceText source, UnitSystem bareUnits)
    {
        var mistakes = new Mistakes();
        if (source.Content.Length > Bounds.MostCharacters || source.LineCount > Bounds.MostLines)
        {
            mistakes.Add(
                "file-too-large", $"a plan has at most {Bounds.MostLines} lines and {Bounds.MostCharacters / 1_000_000} million characters",
                new SourceSpan(source, 0, 0), "put kinds into a file of their own and read it with `kinds from`");
            return new SyntaxTree(source, [new Token(TokenKind.Unknown, 0, source.Content.Length)], [], mistakes.All, bareUnits, null);
        }

        var tokens = Tokenizer.Cut(source);
        var lines = TokenLine.Of(source.Content, tokens).ToList();
        var units = UnitsOf(source, lines) ?? bareUnits;
        var statements = new List<Statement>();
        var heads = new List<int>();
        WarnOfHiddenCharacters(source, tokens, mistakes);
        for (int first = 0; first < lines.Count && !mistakes.Full;)
        {
            int next = first + 1;
            heads.Add(lines[first].Tokens[0].Start);
            for (; next < lines.Count; next++)
            {
                bool deeper = lines[next].Indent > lines[first].Indent;
                if (deeper ? IsStatement(source, lines[first], lines[next]) : !IsOutdented(source, lines[first], lines[next], mistakes))
                {
                    break;
                }

                if (!deeper)
                {
                    heads.Add(lines[next].Tokens[0].Start);
                }
            }

            if (Read(source, lines[first], lines[(first + 1)..next], mistakes, units) is { } statement)
            {
                statements.Add(statement);
            }

            first = next;
        }

        ProductUnits.Compare(statements, mistakes);
        PlaceWords.Compare(statements, mistakes);
        return new SyntaxTree(source, tokens, statements, mistakes.All, units, mistakes.Full ? null : heads);
    }

    /// <summary>A comment can show otherwise than it is read; it says nothing to the plan, so a warning is enough.</summary>
    private static void WarnOfHiddenCharacters(SourceText source, List<Token> tokens, Mistakes mistakes)
    {
        foreach (var token in tokens)
        {
            if (token.Kind == TokenKind.Comment
                && HiddenCharacters.FirstOf(source.Content.Substring(token.Start, token.Length).Replace('\t', ' ')) is { } hidden)
            {
                mistakes.Warn(
                    "hidden-character", $"this comment holds a character that does not show ({hidden})",
                    new SourceSpan(source, token.Start, token.Length), "type the comment again without it");
            }
        }
    }

    private static Statement? Read(SourceText source, TokenLine head, List<TokenLine> details, Mistakes mistakes, UnitSystem units)
    {
        var c = new Cursor(source, head.Tokens, mistakes, units);
        string word = c.Current.ToLowerInvariant();
        if (c.Kind != TokenKind.Word || StatementParsers.Find(word) is not { } parser)
        {
            string? help = (word == "use" ? "kinds of another file are read with `kinds from`, such as `kinds from parts/fish`" : null)
                ?? NearNames.Hint(word, StatementParsers.Words)
                ?? (StatementParsers.OwnerOf(word) is { } owner
                    ? $"`{word}` is a detail of `{owner}`: indent it below one"
                    : "a line starts with a word such as `room`, `door`, `station` or `flow`");
            c.Error("unknown-statement", $"{c.Found()} does not start a statement", c.Here, help);
            if (c.Kind != TokenKind.Word || head.Tokens.Length < 2 || NearNames.Find(word, StatementParsers.Words) is not [var meant, ..])
            {
                return null;
            }

            // Read on as what was probably meant, so that what others say of it is not taken for more mistakes.
            word = meant;
            parser = StatementParsers.Find(word)!;
            c.Forgive();
        }

        var keyword = new WordSyntax(word, c.Here);
        c.Skip();
        return parser.Parse(keyword, c, [.. details.Select(d => new Cursor(source, d.Tokens, mistakes, units))]);
    }

    /// <summary>
    /// An indented line that is a whole statement by its first word, and no detail of the statement above, starts a new one.
    /// </summary>
    private static bool IsStatement(SourceText source, TokenLine head, TokenLine line)
    {
        if (line.Tokens[0].Kind != TokenKind.Word || head.Tokens[0].Kind != TokenKind.Word)
        {
            return false;
        }

        string word = WordOf(source, line.Tokens[0]);
        string owner = WordOf(source, head.Tokens[0]);
        return StatementParsers.Find(word) is not null
            && owner != "flow"
            && StatementParsers.Find(owner) is { } parser
            && !parser.Words(owner).Has(word);
    }

    /// <summary>A detail that slid out to the margin below its statement still belongs to it; it is told, and read as a detail.</summary>
    private static bool IsOutdented(SourceText source, TokenLine head, TokenLine line, Mistakes mistakes)
    {
        if (line.Tokens[0].Kind != TokenKind.Word || head.Tokens[0].Kind != TokenKind.Word)
        {
            return false;
        }

        string word = WordOf(source, line.Tokens[0]);
        string owner = WordOf(source, head.Tokens[0]);
        if (StatementParsers.Find(word) is not null || StatementParsers.Find(owner) is not { } parser || !parser.Words(owner).Has(word))
        {
            return false;
        }

        mistakes.Add(
            "unknown-statement", $"`{word}` does not start a statement",
            new SourceSpan(source, line.Tokens[0].Start, line.Tokens[0].Length), $"`{word}` is a detail of `{owner}`: indent it below one");
        return true;
    }

    /// <summary>The plan's units, which all its bare numbers are read in, wherever they stand.</summary>
    private static UnitSystem? UnitsOf(SourceText source, List<TokenLine> lines)
    {
        foreach (var line in lines)
        {
            for (int i = 0; i + 1 < line.Tokens.Length; i++)
            {
                bool first = i == 0 || line.Tokens[i - 1].Kind == TokenKind.Comma;
                if (first && line.Tokens[i].Kind == TokenKind.Word && WordOf(source, line.Tokens[i]) == "units")
                {
                    return WordOf(source, line.Tokens[i + 1]) switch
                    {
                        "metric" => UnitSystem.Metric,
                        "feet" => UnitSystem.Feet,
                        _ => null,
                    };
                }
            }
        }

        return null;
    }

    private static string WordOf(SourceText source, Token token) => source.Content.Substring(token.Start, token.Length).ToLowerInvariant();
}
