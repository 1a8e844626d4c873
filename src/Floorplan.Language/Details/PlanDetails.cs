using Floorplan.Language.Parsing;
using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax.Statements;
using Floorplan.Language.Syntax.Values;
using Floorplan.Language.Tokens;

namespace Floorplan.Language.Details;

/// <summary>What the <c>plan</c> statement may say.</summary>
public static class PlanDetails
{
    /// <summary>The ends of the measured bodies that the checks know, of a hundred people.</summary>
    private const double LeastShare = 1;

    /// <inheritdoc cref="LeastShare"/>
    private const double MostShare = 99;

    public static Detail<TextSyntax> Number { get; } = Forms.Text(
        "number", "the number or code of the plan", "a number or code of the plan", "number TF-01", "number TF-02");

    public static Detail<RevisionSyntax> Revision { get; } = new(
        "revision",
        "a revision: its mark, date and what it says",
        [
            "revision A, 2026-11-25, \"First issue\"", "revision B, 2026-11-25, \"First issue\"", "revision B, 2026-12-04, \"First issue\"",
            "revision B, 2026-12-04, \"Hatch moved\""],
        RevisionOf)
    {
        Repeatable = true,
    };

    public static Detail<WordSyntax> Units { get; } = new(
        "units", "what bare numbers are read in", ["units metric", "units feet"], c => c.Word("a choice of units", "metric", "feet"));

    public static Detail<ProductSyntax> Product { get; } = new(
        "product",
        "what is counted, and the weight of one",
        ["product fish, 0.9 kg each", "product fish, 1.1 kg each", "product birds"],
        ProductOf)
    {
        Repeatable = true,
    };

    public static Detail<PeopleSyntax> People { get; } = new(
        "people",
        "who works here, and the smallest and tallest of a hundred",
        ["people women 11 to 90 %", "people men 11 to 90 %", "people 11 to 92 %"],
        PeopleOf);

    public static Detail<ClimateSyntax> Climate { get; } = new(
        "climate",
        "the coldest winter day and the hottest summer day to size for, and how damp the air of that summer day is",
        ["climate -13 C, 33 C 41 %", "climate -8 C, 33 C 41 %", "climate -8 C, 36 C 41 %", "climate -8 C, 36 C 46 %", "climate -8 C, 37 C"],
        ClimateOf);

    public static Detail<MainsSyntax> Mains { get; } = new(
        "mains",
        "pressure and coldest temperature of the water where it comes in",
        ["mains 3.1 bar, 11 C", "mains 2.6 bar, 11 C", "mains 2.6 bar, 6 C", "mains 4.1 bar"],
        MainsOf);

    public static Detail<QuantitySyntax> Wind { get; } = new(
        "wind",
        "the wind that the unit has to stand in: by `code us` a gust of 3 seconds, else the mean of 10 minutes of the country's map",
        ["wind 27 m/s", "wind 29 m/s"],
        c => c.Quantity("the speed of the wind", QuantityKind.Speed))
    {
        InFeet = "wind 117 mph",
    };

    public static Detail<TextSyntax> Rates { get; } = Forms.Text(
        "rates", "the owner's table of prices, a `.csv` file in the plan's folder", "the name of a file",
        "rates \"our rates.csv\"", "rates \"last year.csv\"");

    public static Detail<TextSyntax> Owner { get; } = Forms.Text(
        "owner", "who the unit is built for", "the owner's name", "owner \"Tarn Foot Fisheries\"", "owner \"Quern Hill\"");

    public static Detail<TextSyntax> Site { get; } = Forms.Text(
        "site", "where it will stand", "the site", "site \"North quay\"", "site \"South quay\"");

    public static Detail<TextSyntax> DrawnBy { get; } = Forms.Text(
        "drawn by", "who drew it", "a name", "drawn by \"Ossel Dray\"", "drawn by \"Venn Tolly\"");

    public static Detail<TextSyntax> CheckedBy { get; } = Forms.Text(
        "checked by", "who checked it", "a name", "checked by \"Venn Tolly\"", "checked by \"Ossel Dray\"");

    public static Detail<TextSyntax> Note { get; } = new(
        "note", "a note for the title block", ["note \"Check all sizes on site\"", "note \"Cut nothing yet\""], c => c.Words("a note"))
    {
        Forms = ["note", "notes"],
        Repeatable = true,
    };

    public static IReadOnlyList<Detail> All { get; } =
    [
        Number, Revision, Units, PlaceDetails.Code, PlaceDetails.Country, PlaceDetails.Trade, PlaceDetails.Plant, Product, People, Climate,
        Mains, Wind, Rates, Owner, Site, DrawnBy, CheckedBy, Note,
    ];

    private static RevisionSyntax? RevisionOf(Cursor c)
    {
        var start = c.Here;
        if (c.Words("the revision's mark, such as A") is not { } mark)
        {
            return null;
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
        return new RevisionSyntax(mark, date, text, start.To(c.Before));
    }

    private static ProductSyntax? ProductOf(Cursor c)
    {
        var start = c.Here;
        if (c.Name("what is counted, such as fish or birds") is not { } unit)
        {
            return null;
        }

        QuantitySyntax? weight = null;
        if (c.NextInList(n => n.AtNumber))
        {
            weight = c.Quantity("the weight of one", QuantityKind.Mass);
            c.Try("each");
        }

        return new ProductSyntax(unit, weight, start.To(c.Before));
    }

    private static ClimateSyntax? ClimateOf(Cursor c)
    {
        var start = c.Here;
        if (c.Quantity("the temperature of the coldest winter day", QuantityKind.Temperature) is not { } winter)
        {
            return null;
        }

        QuantitySyntax? summer = null;
        QuantitySyntax? humidity = null;
        if (c.NextInList(n => n.AtNumber))
        {
            summer = c.Quantity("the temperature of the hottest summer day", QuantityKind.Temperature);
            humidity = summer is not null && c.AtNumber ? c.Quantity("the humidity of that day", QuantityKind.Ratio) : null;
        }

        var climate = new ClimateSyntax(winter, summer, humidity, start.To(c.Before));
        if (summer is not null && summer.Value.Base < winter.Value.Base)
        {
            c.Error(
                "summer-below-winter", "the winter day comes first, and the summer day is the hotter one", climate.Span,
                "write such as `climate -12 C, 34 C 40 %`");
            return null;
        }

        if (humidity is not null && humidity.Value.Base > 1)
        {
            c.Error("out-of-range", "air is at most 100 % damp", humidity.Span, "check the figure");
            return null;
        }

        return climate;
    }

    private static MainsSyntax? MainsOf(Cursor c)
    {
        var start = c.Here;
        return c.Quantity("the pressure of the water", QuantityKind.Pressure) is not { } pressure ? null : new MainsSyntax(
            pressure,
            c.NextInList(n => n.AtNumber) ? c.Quantity("the temperature of the water", QuantityKind.Temperature) : null,
            start.To(c.Before));
    }

    private static PeopleSyntax? PeopleOf(Cursor c)
    {
        var start = c.Here;
        var who = c.AtNumber ? null : c.Word("who works here", "women", "men");
        if (who is null && !c.AtNumber)
        {
            return null;
        }

        NumberSyntax? least = null;
        QuantitySyntax? most = null;
        if (c.AtNumber)
        {
            least = c.Number("how many of a hundred are smaller than the smallest planned for");
            most = least is not null && c.Expect("to") ? c.Quantity(
                "how many of a hundred are smaller than the tallest planned for",
                QuantityKind.Ratio) : null;
            if (most is null)
            {
                return null;
            }
        }

        var people = new PeopleSyntax(who, least, most, start.To(c.Before));
        if (least is not null
            && !((double)least.Value >= LeastShare && (double)least.Value <= people.MostPercent && people.MostPercent <= MostShare))
        {
            c.Error(
                "people-out-of-range",
                "people are measured from 1 to 99 of a hundred, the smallest first",
                people.Span,
                "write such as `people 10 to 90 %`");
            return null;
        }

        return people;
    }
}
