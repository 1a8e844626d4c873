using Floorplan.Language.Quantities;
using Floorplan.Model.Openings;
using Floorplan.Model.Services;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Cost.Lists;

/// <summary>What is bought and built, by the schedules: shell, steel, linings, openings, services.</summary>
internal static class BuildList
{
    private const int EndsOfPiece = 2;

    public static IEnumerable<ToPrice> Of(PlanFacts facts) => [.. Steel(facts), .. Layers(facts), .. Openings(facts), .. Services(facts)];

    private static IEnumerable<ToPrice> Steel(PlanFacts facts)
    {
        var (plan, list) = (facts.Plan, facts.CutList);
        yield return Count("shell", 1, FigureInput.Said("shell", plan.Shell.Name, plan.Shell.Span));
        if (list.Totals.Count > 0)
        {
            double kilograms = list.Totals.Sum(t => t.Kilograms.Value), metres = list.Totals.Sum(t => t.Length.Metres);
            FigureInput[] inputs = [.. list.Totals.Select(t => FigureInput.Of(t.Kilograms))];
            yield return new ToPrice(
                "frame steel",
                [
                    (RateKind.Mass, kilograms, QuantityText.Of(kilograms, Measure.Mass, plan.Units)),
                    (RateKind.Length, metres, QuantityText.Distance(metres * 1000, plan.Units)),
                ],
                inputs);
            yield return Count("saw cut", EndsOfPiece * list.Totals.Sum(t => t.Pieces), inputs);
        }

        if (facts.CutOuts.Count + facts.Holes.Count is > 0 and var holes)
        {
            yield return Count(
                "hole",
                holes,
                [
                    .. facts.CutOuts.Select(c => FigureInput.Said("hole", c.Opening.Id, c.Opening.Span)),
                    .. facts.Holes.Select(h => FigureInput.Said("hole", h.Point.Id, h.Point.Span)),
                ]);
        }
    }

    private static IEnumerable<ToPrice> Layers(PlanFacts facts) => facts.Layers.Where(l => l.Area.Value > 0).Select(
        l => new ToPrice(l.Name, [(RateKind.Area, l.Area.Value, l.Area.Text)], [FigureInput.Of(l.Area)]));

    private static IEnumerable<ToPrice> Openings(PlanFacts facts) => facts.Plan.Openings.Where(o => o.Kind != OpeningKind.CargoDoor)
        .GroupBy(o => o.Kind).Select(g => Count(Word(g.Key), g.Count(), [.. g.Select(o => FigureInput.Said("opening", o.Id, o.Span))]));

    private static IEnumerable<ToPrice> Services(PlanFacts facts) => facts.Plan.Services.Where(s => Word(s) is not null)
        .GroupBy(s => Word(s)!).Select(g => Count(g.Key, g.Count(), [.. g.Select(s => FigureInput.Said("point", s.Id, s.Span))]));

    private static ToPrice Count(string name, int count, params IReadOnlyList<FigureInput> inputs)
        => new(name, [(RateKind.Each, count, QuantityText.Plain(count, 0))], inputs);

    private static string Word(OpeningKind kind) => kind switch
    {
        OpeningKind.Door => "door",
        OpeningKind.Hatch => "hatch",
        OpeningKind.Window => "window",
        OpeningKind.Chute => "chute",
        OpeningKind.Vent => "vent",
        _ => "opening",
    };

    /// <summary>Holes are counted with those of the steel.</summary>
    private static string? Word(ServicePoint point) => point switch
    {
        Hole => null,
        WaterPoint => "water point",
        Drain => "drain",
        Hose => "hose",
        Heater => "water heater",
        Panel => "panel",
        Outlet => "outlet",
        Light => "light",
        Switch => "switch",
        _ => "air point",
    };
}
