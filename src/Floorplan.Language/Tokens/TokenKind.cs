namespace Floorplan.Language.Tokens;

public enum TokenKind
{
    Space,
    NewLine,
    Comment,

    /// <summary>A letter, then letters, digits, and <c>- _ . /</c> between them.</summary>
    Word,

    /// <summary>Digits, with a decimal point or not.</summary>
    Number,

    /// <summary>A one-character fraction such as ½.</summary>
    Fraction,

    /// <summary><c>2026-11-25</c></summary>
    Date,

    /// <summary>Quoted, on one line.</summary>
    Text,

    /// <summary>Quoted, without its closing quote.</summary>
    OpenText,

    /// <summary>Straight, curly or prime.</summary>
    FootMark,

    /// <summary>Straight, curly or double prime, right after a number.</summary>
    InchMark,

    Comma,
    Colon,
    Slash,
    Dash,
    Percent,
    Arrow,

    /// <summary>Anything that the language does not use.</summary>
    Unknown,
}
