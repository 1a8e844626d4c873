using Floorplan.Language.Details;
using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax.Statements;

namespace Floorplan.Model.Details.Tables;

/// <summary>All that the <c>plan</c> statement may say.</summary>
internal static class HeadTable
{
    public static IReadOnlyList<SaidRow<PlanStatement>> All { get; } =
    [
        SaidRows<PlanStatement>.Of(PlanDetails.Number),
        SaidRows<PlanStatement>.Of(PlanDetails.Units),
        SaidRows<PlanStatement>.Of(PlaceDetails.Code),
        SaidRows<PlanStatement>.Of(PlaceDetails.Country),
        SaidRows<PlanStatement>.Part<TradesSyntax, string>(
            "trade", PlaceDetails.Trade, t => string.Join(", ", t.All.Select(w => w.Text)), (text, _) => text),
        SaidRows<PlanStatement>.Of(PlaceDetails.Plant),
        SaidRows<PlanStatement>.All(PlanDetails.Revision, r => $"{r.Mark.Text} {r.Date?.Text} {r.Text?.Text}".Trim(), (text, _) => text),
        SaidRows<PlanStatement>.All(
            PlanDetails.Product,
            p => p,
            (p, units) => $"{p.Unit.Text} {(p.WeightEach is { } each ? QuantityText.Of(each.Value, units) : "")}".Trim()),
        SaidRows<PlanStatement>.Part<PeopleSyntax, string>(
            "people",
            PlanDetails.People,
            p => FormattableString.Invariant($"{p.Who?.Text} {p.Least?.Value}{(p.MostPercent is { } most ? $" to {most:0.##} %" : "")}")
                .Trim(),
            (text, _) => text),
        SaidRows<PlanStatement>.Part<ClimateSyntax>("climate, winter", PlanDetails.Climate, c => c.Winter),
        SaidRows<PlanStatement>.Part<ClimateSyntax>("climate, summer", PlanDetails.Climate, c => c.Summer),
        SaidRows<PlanStatement>.Part<ClimateSyntax>("climate, damp of summer", PlanDetails.Climate, c => c.Humidity),
        SaidRows<PlanStatement>.Part<MainsSyntax>("mains, pressure", PlanDetails.Mains, m => m.Pressure),
        SaidRows<PlanStatement>.Part<MainsSyntax>("mains, temperature", PlanDetails.Mains, m => m.Temperature),
        SaidRows<PlanStatement>.Of(PlanDetails.Wind),
        SaidRows<PlanStatement>.Of(PlanDetails.Rates),
        SaidRows<PlanStatement>.Of(PlanDetails.Owner),
        SaidRows<PlanStatement>.Of(PlanDetails.Site),
        SaidRows<PlanStatement>.Of(PlanDetails.DrawnBy),
        SaidRows<PlanStatement>.Of(PlanDetails.CheckedBy),
        SaidRows<PlanStatement>.All(PlanDetails.Note, n => n.Text, (text, _) => text),
    ];
}
