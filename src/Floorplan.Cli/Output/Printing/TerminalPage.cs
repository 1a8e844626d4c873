using Spectre.Console;

namespace Floorplan.Cli.Output.Printing;

/// <summary>For people at a terminal: colour, and prose wrapped at its width.</summary>
internal sealed class TerminalPage : Page
{
    /// <summary>Longer lines of prose are hard to read; our own choice.</summary>
    private const int WidestProse = 100;

    private const int Unwrapped = 1 << 20;

    private readonly IAnsiConsole console;
    private readonly int width;

    public TerminalPage(TextWriter writer, int width)
    {
        console = AnsiConsole.Create(new AnsiConsoleSettings
        {
            Ansi = AnsiSupport.Yes,
            ColorSystem = ColorSystemSupport.Standard,
            Interactive = InteractionSupport.No,
            Out = new AnsiConsoleOutput(writer),
        });
        this.width = Math.Min(width, WidestProse);
    }

    public override void Line(params ReadOnlySpan<Piece> pieces)
    {
        var line = new Paragraph();
        foreach (var piece in pieces)
        {
            line.Append(VisibleText.Of(piece.Text), StyleOf(piece.Tone));
        }

        console.Profile.Width = Unwrapped;
        console.Write(line);
        console.WriteLine();
    }

    public override void Prose(string text)
    {
        console.Profile.Width = width;
        console.Write(new Text(VisibleText.Of(text)));
        console.WriteLine();
    }

    public override void Rows(IReadOnlyList<(string Name, string Meaning)> rows)
    {
        var grid = new Grid().AddColumn(new GridColumn().NoWrap().PadLeft(2)).AddColumn();
        foreach (var (name, meaning) in rows)
        {
            grid.AddRow(new Text(VisibleText.Of(name), StyleOf(Tone.Strong)), new Text(VisibleText.Of(meaning)));
        }

        console.Profile.Width = width;
        console.Write(grid);
    }

    private static Style StyleOf(Tone tone) => tone switch
    {
        Tone.Strong => new Style(decoration: Decoration.Bold),
        Tone.Quiet => new Style(Color.Grey),
        Tone.Error => new Style(Color.Red, decoration: Decoration.Bold),
        Tone.Warning => new Style(Color.Olive, decoration: Decoration.Bold),
        Tone.Note => new Style(Color.Teal, decoration: Decoration.Bold),
        Tone.Good => new Style(Color.Green, decoration: Decoration.Bold),
        _ => Style.Plain,
    };
}
