using Floorplan.Language.Details;
using Floorplan.Language.Syntax.Statements;
using Floorplan.Language.Syntax.Values;

namespace Floorplan.Language.Parsing.Statements;

internal sealed class FlowParser : StatementParser<FlowStatement>
{
    private static readonly string[] Streams = ["product", "waste", "people", "supplies", "returns"];

    /// <summary>Whatever stands on a line below is meant as stops.</summary>
    private static readonly BareForm[] WithoutWord = [new(FlowDetails.Line, _ => true, FlowDetails.Line.Read)];

    public override IReadOnlyList<Detail> Details => [];

    public override IReadOnlyList<BareForm> Bare => WithoutWord;

    protected override FlowStatement Make(WordSyntax keyword) => new() { Keyword = keyword };

    protected override void Head(FlowStatement s, Cursor c)
    {
        s.Stream = c.Word("a stream", Streams);
        s.Label = c.TryText();
        if (c.Try("for"))
        {
            s.Product = c.Name("a product of the plan");
            s.Label ??= c.TryText();
        }
    }
}
