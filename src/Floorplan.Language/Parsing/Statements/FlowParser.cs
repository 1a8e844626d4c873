using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax.Statements;
using Floorplan.Language.Syntax.Values;
using Floorplan.Language.Text;
using Floorplan.Language.Tokens;

namespace Floorplan.Language.Parsing.Statements;

internal sealed class FlowParser : StatementParser<FlowStatement>
{
    private static readonly string[] Streams = ["product", "waste", "people", "supplies", "returns"];
    private static readonly string[] Carriages = ["hand", "trolley", "rail", "conveyor", "chute", "pump"];

    private static readonly string[] Loads = ["live", "liquid"];

    protected override IReadOnlyDictionary<string, Action<FlowStatement, Cursor>> Handlers { get; } = new Dictionary<string, Action<FlowStatement, Cursor>>();

    protected override FlowStatement Make(WordSyntax keyword) => new() { Keyword = keyword };

    protected override void Head(FlowStatement s, Cursor c)
    {
        s.Stream = c.Word("a stream", Streams);
        s.Label = c.TryText();
    }

    protected override void DetailLine(FlowStatement s, Cursor c, Dictionary<string, SourceSpan> said, List<DetailSyntax> found)
    {
        var start = c.Here;
        var stops = new List<NameSyntax>();
        do
        {
            if (c.Name("the name of a station, an opening, or `outside`") is not { } stop)
            {
                break;
            }

            stops.Add(stop);
        }
        while (TakeArrow(c));

        if (stops.Count == 1 && !c.Failed)
        {
            c.Wrong("`->` and the next stop", "write `tipping -> gutting  by hand`");
        }

        WordSyntax? carriage = null;
        WordSyntax? period = null;
        (LengthSyntax? width, LengthSyntax? length) = (null, null);
        (QuantitySyntax? load, WordSyntax? loadKind) = (null, null);
        if (!c.Failed && c.Try("by") && (carriage = c.Word("a carriage", Carriages)) is not null && c.AtNumber)
        {
            if (carriage.Text == "hand")
            {
                (load, loadKind) = Load(c);
            }
            else
            {
                (width, length) = Size(c);
            }
        }

        while (!c.AtEnd)
        {
            if (!c.AtPhraseEnd && !c.Failed)
            {
                period ??= Period(c);
            }

            if (!c.AtPhraseEnd && !c.Failed)
            {
                c.Error("left-over", $"expected `by`, a comma or the end of the line, found {c.Found()}", c.Here, "stops are joined by `->`, and how it goes stands behind `by`");
            }

            c.NextPhrase();
        }

        if (stops.Count > 1)
        {
            s.Chains.Add(new ChainSyntax(stops, carriage, width, length, period, start.To(c.Before)) { Load = load, LoadKind = loadKind });
        }

        found.Add(new DetailSyntax("", start.To(c.Before)));
    }

    /// <summary><c>600 wide 900 long</c></summary>
    private static (LengthSyntax? Width, LengthSyntax? Length) Size(Cursor c)
    {
        var width = c.LengthAboveZero("a width", "a width");
        c.Expect("wide");
        if (c.Failed || !c.AtNumber)
        {
            return (width, null);
        }

        var length = c.LengthAboveZero("a length", "a length");
        c.Expect("long");
        return (width, length);
    }

    /// <summary><c>12 kg</c>, <c>12 kg liquid</c></summary>
    private static (QuantitySyntax? Load, WordSyntax? Kind) Load(Cursor c)
    {
        var load = c.Quantity("what one load weighs", QuantityKind.Mass);
        return (load, c.Failed || c.AtPhraseEnd ? null : c.Word("what kind of load it is", Loads));
    }

    private static bool TakeArrow(Cursor c)
    {
        if (c.Kind != TokenKind.Arrow)
        {
            return false;
        }

        c.Skip();
        return true;
    }

    private static WordSyntax? Period(Cursor c)
    {
        var word = c.Word("a time of day", "before", "during", "after");
        return word is not null && c.Expect("work") ? word : null;
    }
}
