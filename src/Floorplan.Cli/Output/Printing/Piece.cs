namespace Floorplan.Cli.Output.Printing;

/// <summary>A stretch of a line of output and what it means; a terminal shows the meaning in colour.</summary>
internal readonly record struct Piece(string Text, Tone Tone = Tone.Plain)
{
    public static implicit operator Piece(string text) => new(text);
}

internal enum Tone
{
    Plain,
    Strong,
    Quiet,
    Error,
    Warning,
    Note,
    Good,
}
