using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax.Statements;
using Floorplan.Language.Syntax.Values;
using Floorplan.Language.Words;

namespace Floorplan.Model.Binding.Reading;

/// <summary>Reads the <c>plan</c> statement; without one the file gives the title.</summary>
internal static class HeadReader
{
    public static PlanHead Read(PlanStatement? statement, UnitSystem units, string path)
    {
        if (statement is null)
        {
            return new PlanHead { Title = Path.GetFileNameWithoutExtension(path), Units = units };
        }

        return new PlanHead
        {
            Title = Text(statement.Label),
            Number = Text(statement.Number),
            Units = units,
            Code = CodeOf(statement),
            Country = statement.Country?.Text ?? "",
            Trades = [.. statement.Trades.Select(t => Trades.Of(t.Text)).OfType<Trade>().Distinct()],
            Plant = Enum.TryParse<PlantOf>(statement.Plant?.Text, ignoreCase: true, out var plant) ? plant : null,
            Revisions = [.. statement.Revisions.Select(r => new Revision(r.Mark.Text, Text(r.Date), Text(r.Text)))],
            Products = [.. statement.Products.Select(p => new Product(p.Unit.Text, p.WeightEach?.Value))],
            People = Whom(statement.People),
            Climate = statement.Climate is { } c ? new Climate(c.Winter.Value, c.Summer?.Value, c.Humidity?.Value, c.Span) : null,
            Mains = statement.Mains is { } m ? new Mains(m.Pressure.Value, m.Temperature?.Value, m.Span) : null,
            Wind = statement.Wind is { } w ? new Wind(w.Value, w.Span) : null,
            Owner = Text(statement.Owner),
            Site = Text(statement.Site),
            DrawnBy = Text(statement.DrawnBy),
            CheckedBy = Text(statement.CheckedBy),
            Notes = [.. statement.Notes.Select(n => n.Text)],
            Span = statement.HeadSpan,
        };
    }

    /// <summary>What the plan says, else what follows from where it stands.</summary>
    private static CodeChoice CodeOf(PlanStatement statement) => (statement.Code?.Text, statement.Country?.Text) switch
    {
        ("us", _) => CodeChoice.Us,
        ("eu", _) => CodeChoice.Eu,
        (null, { } country) when Countries.IsAmerican(country) => CodeChoice.Us,
        (null, { } country) when Countries.IsEuropean(country) => CodeChoice.Eu,
        (null, null) when statement.Plant is not null => CodeChoice.Us,
        _ => CodeChoice.None,
    };

    private static People Whom(PeopleSyntax? people) => people is null ? People.Usual : new People(
        people.Who?.Text switch
        {
            "women" => WhoWorks.Women,
            "men" => WhoWorks.Men,
            _ => WhoWorks.WomenAndMen,
        },
        people.Least is { } least ? (double)least.Value : People.Usual.Least,
        people.MostPercent ?? People.Usual.Most);

    private static string Text(TextSyntax? text) => text?.Text ?? "";
}
