using Floorplan.Language.Details;
using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax.Statements;
using Floorplan.Language.Syntax.Values;
using Floorplan.Language.Tokens;

namespace Floorplan.Language.Parsing.Statements;

internal sealed class LimitParser : StatementParser<LimitStatement>
{
    private static readonly QuantityKind[] AnyKind = Enum.GetValues<QuantityKind>();

    public override IReadOnlyList<Detail> Details => [];

    protected override LimitStatement Make(WordSyntax keyword) => new() { Keyword = keyword };

    protected override void Head(LimitStatement s, Cursor c)
    {
        s.Name = c.Name("the name of a rule");
        if (s.Name is null)
        {
            return;
        }

        Figure(s, c);
        s.Reason = c.Failed ? null : c.Text("the reason");
    }

    private static void Figure(LimitStatement s, Cursor c)
    {
        if (!c.AtNumber)
        {
            c.Wrong("a figure", "write `limit RULE 4 m \"reason\"`");
            return;
        }

        bool other = false;
        bool unit = false;
        for (int ahead = 1; c.KindAt(ahead) is { } kind && kind is not (TokenKind.Text or TokenKind.OpenText or TokenKind.Comma); ahead++)
        {
            other |= kind == TokenKind.Percent
                || (kind == TokenKind.Word && (UnitTable.Find(c.TextAt(ahead)) ?? UnitTable.Rate(c.TextAt(ahead))) is not null);
            unit |= kind is TokenKind.Word or TokenKind.FootMark or TokenKind.InchMark;
        }

        if (other)
        {
            s.Quantity = c.Quantity("a figure", AnyKind);
            return;
        }

        s.Length = c.Length("a figure");
        if (s.Length is { } length
            && !unit
            && decimal.TryParse(length.Span.Value, System.Globalization.CultureInfo.InvariantCulture, out decimal count))
        {
            s.Quantity = new QuantitySyntax(new Quantity(count, UnitTable.Count("")), length.Span);
        }
    }
}
