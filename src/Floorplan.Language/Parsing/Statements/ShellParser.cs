using Floorplan.Language.Details;
using Floorplan.Language.Syntax.Statements;
using Floorplan.Language.Syntax.Values;

namespace Floorplan.Language.Parsing.Statements;

internal sealed class ShellParser : StatementParser<ShellStatement>
{
    public override IReadOnlyList<Detail> Details => ShellDetails.All;

    protected override ShellStatement Make(WordSyntax keyword) => new() { Keyword = keyword };

    protected override string? Variant(ShellStatement statement) => statement.Kind?.Text;

    protected override void Head(ShellStatement s, Cursor c)
    {
        s.Kind = c.Word("a shell", "container", "trailer", "shed");
        switch (s.Kind?.Text)
        {
            case "container":
                s.ContainerFeet = c.Number("the container's length in feet: 10, 20, 40 or 45");
                _ = c.Try("ft") || c.Try("feet") || c.Try("foot");
                s.HighCube = c.Try("high-cube") || c.Try("high", "cube");
                _ = s.HighCube || c.Try("standard");
                break;
            case "trailer":
                s.Size = c.Size("the trailer's outside length", 3, 3);
                break;
            case "shed":
                if (!TryInHead(s, c, ShellDetails.Corners) && !c.AtPhraseEnd)
                {
                    s.Size = c.Size("the shed's outside length", 2, 3);
                }

                break;
        }
    }
}
