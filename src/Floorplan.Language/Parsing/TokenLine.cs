using Floorplan.Language.Tokens;

namespace Floorplan.Language.Parsing;

/// <summary>One line with words on it: how far it is indented, and its tokens without spaces and comments.</summary>
internal sealed record TokenLine(int Indent, Token[] Tokens)
{
    private const int TabStop = 8;

    /// <summary>Lines of a file, blank and comment lines left out.</summary>
    public static IEnumerable<TokenLine> Of(string text, IReadOnlyList<Token> tokens)
    {
        var line = new List<Token>();
        int indent = 0;
        foreach (var token in tokens)
        {
            switch (token.Kind)
            {
                case TokenKind.NewLine:
                    if (line.Count > 0)
                    {
                        yield return new TokenLine(indent, [.. line]);
                    }

                    line.Clear();
                    indent = 0;
                    break;
                case TokenKind.Space:
                    if (line.Count == 0)
                    {
                        indent = Width(text.AsSpan(token.Start, token.Length), indent);
                    }

                    break;
                case TokenKind.Comment:
                    break;
                default:
                    line.Add(token);
                    break;
            }
        }

        if (line.Count > 0)
        {
            yield return new TokenLine(indent, [.. line]);
        }
    }

    private static int Width(ReadOnlySpan<char> space, int from)
    {
        foreach (char c in space)
        {
            from = c switch
            {
                '\t' => ((from / TabStop) + 1) * TabStop,
                '\uFEFF' => from,
                _ => from + 1,
            };
        }

        return from;
    }
}
