using Floorplan.Language.Quantities;
using Floorplan.Model;
using Floorplan.Model.Flows;
using Floorplan.Model.Rooms;
using Floorplan.Model.Stations;
using Floorplan.Sizing.Bodies;
using Floorplan.Sizing.Working;
using Stream = Floorplan.Model.Flows.Stream;

namespace Floorplan.Sizing.Lifting;

/// <summary>
/// Every lift that the flows of a plan ask of hands, with its index by the revised NIOSH equation or the reason why it has none. A load
/// that is carried through doors is lifted once at either end of the way.
/// </summary>
internal sealed class HandLifts(PlanFacts facts)
{
    /// <summary>Knuckle height, where the equation allows most: 30 in.</summary>
    private const double BestHeight = 30 * InchPound.MillimetresPerInch;

    /// <summary>Shoes, from memory.</summary>
    private const double Shoes = 30;

    private readonly Plan plan = facts.Plan;
    private readonly LiftFigures figures = new(facts.Plan.Units);
    private readonly double? piece = PieceKilograms(facts.Plan);
    private readonly double tall = BodySize.Largest(BodyMeasure.Stature).Of(facts.Plan.Head.People) + Shoes;

    public static IReadOnlyList<HandLift> Of(PlanFacts facts)
    {
        var lifts = new HandLifts(facts);
        return [.. facts.Plan.Flows.SelectMany(flow => flow.Legs.GroupBy(l => l.Chain).SelectMany(chain => lifts.Along(flow, [.. chain])))];
    }

    private IEnumerable<HandLift> Along(Flow flow, List<Leg> chain)
    {
        if (chain[0].Carriage.Kind != CarriageKind.Hand)
        {
            yield break;
        }

        Stop? from = Hold(chain[0].From);
        var first = chain[0];
        foreach (var leg in chain)
        {
            if (leg.To is OutsideStop || Hold(leg.To) is not null)
            {
                var to = Hold(leg.To);
                if (from is not null || to is not null)
                {
                    yield return Lift(flow, first, from, to);
                }

                from = to;
                first = chain.Find(l => ReferenceEquals(l.From, leg.To)) ?? leg;
            }
        }
    }

    /// <summary>A place that a load is set down on; doors are walked through.</summary>
    private static Stop? Hold(Stop stop) => stop switch
    {
        StationStop => stop,
        OpeningStop { Opening.IsWalkable: false } => stop,
        _ => null,
    };

    private HandLift Lift(Flow flow, Leg leg, Stop? from, Stop? to)
    {
        var load = (leg.Carriage.LoadKilograms, flow.Stream, from) switch
        {
            ({ } said, _, _) => With(said, FigureInput.Said("load", QuantityText.Of(said, Measure.Mass, plan.Units), leg.Span)),
            (_, Stream.Product, _) when piece is { } each => With(
                each, FigureInput.Said("weight of one", QuantityText.Of(each, Measure.Mass, plan.Units), leg.Span)),
            (_, Stream.Waste, StationStop { Station: { Role: StationRole.Bin } bin }) when facts.Items.Find(bin) is { } full =>
                With(full.Full.Value, FigureInput.Of(full.Full)),
            _ => null,
        };
        var index = load is not null && (Height(from, to) ?? Height(to, from)) is { } height
            ? figures.Index(load, height, Height(to, from) ?? height)
            : null;
        return new HandLift(flow, leg, from, to, load, index, NotCovered(flow, leg, from, to, tall));

        Figure With(double kilograms, FigureInput input) => figures.Load(from, to, kilograms, input);
    }

    /// <summary>What the equation leaves out: DHHS (NIOSH) 94-110, 1994, section 1.2.</summary>
    private static string? NotCovered(Flow flow, Leg leg, Stop? from, Stop? to, double tall)
    {
        var rooms = new[] { from, to }.OfType<StationStop>().Select(s => s.Station.Room).ToList();
        return leg.Carriage.LoadKind == LoadKind.Live ? "live animals"
            : leg.Carriage.LoadKind == LoadKind.Liquid ? "liquids"
            : flow.Stream == Stream.Waste && from is StationStop { Station.Role: StationRole.Bin } ? "loads that shift"
            : rooms.Exists(r => r.Class == HygieneClass.Cold) ? "cold rooms"
            : rooms.Exists(r => r.CeilingHeight.Millimetres < tall) ? "rooms too low to stand upright in"
            : null;
    }

    /// <summary>Where hands are at one end; at a rack on the shelf that suits the other end best.</summary>
    private static double? Height(Stop? stop, Stop? other) => stop switch
    {
        StationStop { Station: { Role: StationRole.Store } rack } =>
            Math.Min(
                rack.WorkHeight.Millimetres,
                other is StationStop { Station: { Role: not StationRole.Store } far } ? far.WorkHeight.Millimetres : BestHeight),
        StationStop s => s.Station.WorkHeight.Millimetres,
        OpeningStop o => o.Opening.Sill.Millimetres,
        _ => null,
    };

    /// <summary>
    /// Of several products the lightest, since a plan does not say which of them a leg carries; null when one has no weight.
    /// </summary>
    private static double? PieceKilograms(Plan plan) =>
        plan.Head.Products.Count > 0 && plan.Head.Products.All(p => p.WeightEach is { Unit.Kind: QuantityKind.Mass })
            ? plan.Head.Products.Min(p => p.WeightEach!.Value.Base)
            : null;
}
