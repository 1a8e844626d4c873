namespace Floorplan.Language.Tokens;

/// <summary>One stretch of text. Tokens of a file lie end to end and cover it.</summary>
public readonly record struct Token(TokenKind Kind, int Start, int Length)
{
    public int End => Start + Length;
}
