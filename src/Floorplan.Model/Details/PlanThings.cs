using Floorplan.Language.Quantities;
using Floorplan.Language.Text;
using Floorplan.Model.Details.Tables;
using Floorplan.Model.Flows;
using Floorplan.Model.Openings;
using Floorplan.Model.Rooms;
using Floorplan.Model.Services;
using Floorplan.Model.Shapes;
using NetTopologySuite.Geometries;

namespace Floorplan.Model.Details;

/// <summary>
/// Every thing of a plan with its details in words: what is said of it, by its table, and before that the few facts that follow from more
/// than one statement, such as the rooms that a door joins.
/// </summary>
public static class PlanThings
{
    public static IReadOnlyList<PlanThing> Of(Plan plan, UnitSystem units) =>
    [
        Thing(plan, units, "plan", "", "", null, plan.Head.Span, ("title", plan.Head.Title)),
        Thing(plan, units, "shell", "", "", null, plan.Shell.Span, Shell(plan, units)),
        .. plan.Said.SpansOf("partitions").Select(s => Thing(plan, units, "partitions", "", "", null, s)).Take(1),
        .. plan.Rooms.Select(r => Thing(plan, units, "room", r.Id, r.Label, r.Bounds, r.Span, RoomFacts(r, units))),
        .. plan.Openings.Where(o => o.Kind != OpeningKind.CargoDoor).Select(o => Thing(
            plan, units, o.Kind.ToString().ToLowerInvariant(), o.Id, o.Label, BoxOf(o.Reveal.EnvelopeInternal), o.Span,
            ("joins", $"{o.RoomA?.Id ?? "outside"} and {o.RoomB?.Id ?? "outside"}"))),
        .. plan.Stations.Select(s => new PlanThing(
            s.Role.ToString().ToLowerInvariant(), s.Id, s.Label, s.Bounds, s.Span,
            [.. Facts(("in", s.Room.Id), ("for", s.Purpose)), .. s.Said.PrintAll(StationTable.All, units)])),
        .. plan.Rails.Select(r => Thing(plan, units, "rail", r.Id, r.Label, BoxOf(r.Path.EnvelopeInternal), r.Span)),
        .. plan.Services.GroupBy(s => (s.Kind, s.Id)).Select(g => Service(plan, g.First(), units)),
        .. plan.Flows.SelectMany(f => Lines(f, units)).GroupBy(l => l.Key).Select(g => g.First()),
        .. plan.Said.SpansOf("day").Select(s => Thing(plan, units, "day", "", "", null, s)).Take(1),
        .. plan.Limits.GroupBy(l => l.Rule).Select(g => Thing(
            plan, units, "limit", g.Key, "", null, g.First().Span,
            ("set to", string.Join(", ", g.Select(l => Figure(l, units)))),
            ("reason", string.Join(", ", g.Select(l => l.Reason))))),
        .. plan.Acceptances.GroupBy(a => $"{a.Rule} {string.Join(' ', a.Things)}".TrimEnd())
            .Select(g => Thing(plan, units, "accept", g.Key, "", null, g.First().Span, ("reason", g.First().Reason))),
        .. plan.SheetWishes.GroupBy(w => w.Sheet).Select(g => Thing(
            plan, units, "sheet", g.Key == 0 ? "all" : FormattableString.Invariant($"{g.Key}"), "", null, g.First().Span)),
    ];

    private static PlanThing Thing(
        Plan plan,
        UnitSystem units,
        string kind,
        string id,
        string label,
        Box? place,
        SourceSpan span,
        params IEnumerable<(string Word, string Value)> facts) =>
        new(kind, id, label, place, span, [.. Facts([.. facts]), .. plan.Said.At(span, units)]);

    /// <summary>What the plan does not say is left out.</summary>
    private static IEnumerable<ThingDetail> Facts(params (string Word, string Value)[] facts) =>
        facts.Where(f => f.Value.Length > 0).Select(f => new ThingDetail(f.Word, f.Value));

    private static (string, string)[] Shell(Plan plan, UnitSystem units) =>
    [
        ("is", plan.Shell.Name),
        ("outside", Size(BoxOf(plan.Shell.Outside.EnvelopeInternal), units)),
        ("inside", Size(BoxOf(plan.Shell.Finished.EnvelopeInternal), units)),
        ("ceiling", QuantityText.Length(plan.Shell.CeilingHeight, units)),
    ];

    private static (string, string)[] RoomFacts(Room room, UnitSystem units) =>
    [
        ("class", room.Class.ToString().ToLowerInvariant()),
        ("size", Size(room.Bounds, units)),
        ("ceiling", QuantityText.Length(room.CeilingHeight, units)),
        ("falls", room.Falls is { } falls
            ? QuantityText.Of(falls.Slope, Measure.Ratio, units) + (falls.DrainId is { } drain ? " to " + drain : "")
            : ""),
    ];

    /// <summary>Light and air belong to a whole room, and say only how much.</summary>
    private static PlanThing Service(Plan plan, ServicePoint point, UnitSystem units)
    {
        var ofRoom = point as RoomService;
        return Thing(
            plan, units, point.Kind, ofRoom?.Room?.Id
                ?? point.Id, point.Label, new Box(point.At.X, point.At.Y, point.At.X, point.At.Y), point.Span,
            ("in", point.Room?.Id ?? ""), ("rated", ofRoom?.Amount is { } amount ? QuantityText.Of(amount, units, MeasureOf(point)) : ""));
    }

    /// <summary>Air is rated in units that water has too, so the point says which it is.</summary>
    private static Measure? MeasureOf(ServicePoint point) => point is AirPoint ? Measure.AirFlow : null;

    /// <summary>Each written line of a flow, by its stops: another way is another line.</summary>
    private static IEnumerable<PlanThing> Lines(Flow flow, UnitSystem units) => flow.Legs.GroupBy(l => l.Chain).Select(chain =>
    {
        var first = chain.First();
        string stops = string.Join(" -> ", chain.Select(l => l.To.Name).Prepend(first.From.Name));
        string product = flow.Product is null ? "" : $" for {flow.Product}";
        return new PlanThing($"flow {flow.Stream.ToString().ToLowerInvariant()}{product}", stops, flow.Label, null, first.Span, [.. Facts(
            ("by", first.Carriage.Kind.ToString().ToLowerInvariant()),
            (
                "size", string.Join(
                    " x ", new[] { first.Carriage.Width, first.Carriage.Length }.OfType<Length>()
                        .Select(l => QuantityText.Length(l, units)))),
            ("load", Load(first.Carriage, units)),
            ("takes", first.Carriage.Takes is { } takes ? QuantityText.Of(takes, units) : ""),
            ("trolleys", first.Carriage.Trolleys is { } trolleys ? FormattableString.Invariant($"{trolleys}") : ""),
            ("when", first.Period == Period.During ? "" : first.Period.ToString().ToLowerInvariant() + " work"))]);
    });

    private static string Load(Carriage carriage, UnitSystem units) => carriage.LoadKilograms is not { } load ? ""
        : QuantityText.Of(load, Measure.Mass, units)
            + (carriage.LoadKind == LoadKind.Still ? "" : " " + carriage.LoadKind.ToString().ToLowerInvariant());

    private static string Figure(Limits.LimitOverride limit, UnitSystem units) => limit.Quantity is { } quantity
        ? QuantityText.Of(quantity, units)
        : limit.Length is { } length ? QuantityText.Length(length, units) : "";

    private static string Size(Box box, UnitSystem units) =>
        $"{QuantityText.Length(box.Width, units)} x {QuantityText.Length(box.Depth, units)}";

    private static Box BoxOf(Envelope box) => new(
        Length.FromMillimetres(box.MinX), Length.FromMillimetres(box.MinY), Length.FromMillimetres(box.MaxX),
        Length.FromMillimetres(box.MaxY));
}
