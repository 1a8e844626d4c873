using Floorplan.Cli.Hosting;

namespace Floorplan.Cli.Output.Printing;

/// <summary>
/// Where commands print. Whatever is printed passes <see cref="VisibleText"/>, so that no name in a plan can steer a terminal.
/// </summary>
internal abstract class Page
{
    /// <summary>Standard output: plain and never wrapped when it is piped, in colour on a terminal.</summary>
    public static Page OfOutput(Host host) => host.Colour ? new TerminalPage(host.Out, host.Width) : new PlainPage(host.Out);

    public static Page OfError(Host host) => host.ErrorColour ? new TerminalPage(host.Error, host.Width) : new PlainPage(host.Error);

    /// <summary>One line, never wrapped.</summary>
    public abstract void Line(params ReadOnlySpan<Piece> pieces);

    /// <summary>A paragraph; a terminal wraps it.</summary>
    public abstract void Prose(string text);

    /// <summary>Two columns: names and what they mean.</summary>
    public abstract void Rows(IReadOnlyList<(string Name, string Meaning)> rows);

    public void Heading(string text) => Line(new Piece(text, Tone.Strong));

    public void Gap() => Line();
}
