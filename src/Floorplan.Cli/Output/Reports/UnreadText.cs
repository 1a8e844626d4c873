using Floorplan.Cli.Hosting;
using Floorplan.Cli.Input;
using Floorplan.Cli.Output.Printing;

namespace Floorplan.Cli.Output.Reports;

/// <summary>What a command that wants a plan says of an input that has none.</summary>
internal static class UnreadText
{
    /// <param name="undone">What is left undone, as the start of a sentence: <c>nothing is sized</c>.</param>
    public static void Write(Host host, Checked input, string undone)
    {
        var page = Page.OfError(host);
        CheckText.Write(page, input);
        page.Line(
            new Piece("floorplan: ", Tone.Error),
            $"{input.Input.Name}: {input.Input.Problem ?? undone + " until the text is mended"}");
    }
}
