using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax.Statements;
using Floorplan.Language.Syntax.Values;
using Floorplan.Language.Tokens;

namespace Floorplan.Language.Parsing.Statements;

internal sealed class PlanParser : StatementParser<PlanStatement>
{
    protected override IReadOnlyDictionary<string, Action<PlanStatement, Cursor>> Handlers { get; } = new Dictionary<string, Action<PlanStatement, Cursor>>
    {
        ["number"] = (s, c) => s.Number = c.Words("a number or code of the plan"),
        ["revision"] = Revision,
        ["units"] = (s, c) => s.Units = c.Word("a choice of units", "metric", "feet") is { } word ? word.Text == "feet" ? UnitSystem.Feet : UnitSystem.Metric : null,
        ["code"] = (s, c) => s.Code = c.Word("a code", "us", "eu", "none"),
        ["product"] = Product,
        ["people"] = People,
        ["owner"] = (s, c) => s.Owner = c.Words("the owner's name"),
        ["site"] = (s, c) => s.Site = c.Words("the site"),
        ["drawn"] = (s, c) => s.DrawnBy = c.Expect("by") ? c.Words("a name") : null,
        ["checked"] = (s, c) => s.CheckedBy = c.Expect("by") ? c.Words("a name") : null,
        ["note"] = Note,
        ["notes"] = Note,
    };

    protected override IReadOnlySet<string> Repeatable { get; } = new HashSet<string> { "revision", "product", "note", "notes" };

    /// <summary>The ends of the measured bodies that the checks know.</summary>
    private const double LeastShare = 1;

    /// <inheritdoc cref="LeastShare"/>
    private const double MostShare = 99;

    protected override PlanStatement Make(WordSyntax keyword) => new() { Keyword = keyword };

    protected override void Head(PlanStatement statement, Cursor c) => statement.Label = c.Text("the plan's title");

    private static void Revision(PlanStatement s, Cursor c)
    {
        var start = c.Here;
        if (c.Words("the revision's mark, such as A") is not { } mark)
        {
            return;
        }

        TextSyntax? date = null;
        if (c.NextInList(n => n.Kind == TokenKind.Date))
        {
            date = new TextSyntax(c.Current, c.Here);
            c.Skip();
            if (!DateOnly.TryParseExact(date.Text, "yyyy-MM-dd", out _))
            {
                c.Error("not-a-date", $"`{date.Text}` is not a date", date.Span, "write year, month, day: 2026-11-25");
            }
        }

        var text = c.NextInList(n => n.Kind is TokenKind.Text or TokenKind.OpenText) ? c.TryText() : null;
        s.Revisions.Add(new RevisionSyntax(mark, date, text, start.To(c.Before)));
    }

    private static void Product(PlanStatement s, Cursor c)
    {
        var start = c.Here;
        if (c.Name("what is counted, such as fish or birds") is not { } unit)
        {
            return;
        }

        QuantitySyntax? weight = null;
        if (c.NextInList(n => n.AtNumber))
        {
            weight = c.Quantity("the weight of one", QuantityKind.Mass);
            c.Try("each");
        }

        s.Products.Add(new ProductSyntax(unit, weight, start.To(c.Before)));
    }

    private static void People(PlanStatement s, Cursor c)
    {
        var start = c.Here;
        WordSyntax? who = c.AtNumber ? null : c.Word("who works here", "women", "men");
        if (who is null && !c.AtNumber)
        {
            return;
        }

        NumberSyntax? least = null;
        QuantitySyntax? most = null;
        if (c.AtNumber)
        {
            least = c.Number("how many of a hundred are smaller than the smallest planned for");
            most = least is not null && c.Expect("to") ? c.Quantity("how many of a hundred are smaller than the tallest planned for", QuantityKind.Ratio) : null;
            if (most is null)
            {
                return;
            }
        }

        var people = new PeopleSyntax(who, least, most, start.To(c.Before));
        if (least is not null && !((double)least.Value >= LeastShare && (double)least.Value <= people.MostPercent && people.MostPercent <= MostShare))
        {
            c.Error("people-out-of-range", "people are measured from 1 to 99 of a hundred, the smallest first", people.Span, "write such as `people 10 to 90 %`");
            return;
        }

        s.People = people;
    }

    private static void Note(PlanStatement s, Cursor c)
    {
        if (c.Words("a note") is { } note)
        {
            s.Notes.Add(note);
        }
    }
}
