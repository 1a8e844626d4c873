using System.Globalization;
using Floorplan.Language.Quantities;
using Floorplan.Model.Flows;
using Floorplan.Model.Openings;
using Floorplan.Model.Rooms;
using Floorplan.Model.Services;
using Floorplan.Model.Shapes;
using Floorplan.Model.Stations;
using NetTopologySuite.Geometries;

namespace Floorplan.Model.Comparing;

/// <summary>One thing of a plan as it is compared: its place, and its facts in words.</summary>
/// <param name="Facts">Told in one system of units, so that a figure written in another is no difference.</param>
internal sealed record ComparedThing(string Kind, string Id, string Label, Box? Place, IReadOnlyList<(string What, string Value)> Facts)
{
    /// <summary>The same for the same thing of both plans.</summary>
    public string Key => $"{Kind} {Id}";

    public static IReadOnlyList<ComparedThing> AllOf(Plan plan, UnitSystem units) =>
    [
        Head(plan),
        Shell(plan, units),
        .. plan.Rooms.Select(r => Of(r, units)),
        .. plan.Openings.Where(o => o.Kind != OpeningKind.CargoDoor).Select(o => Of(o, units)),
        .. plan.Stations.Select(s => Of(s, units)),
        .. plan.Rails.Select(r => new ComparedThing("rail", r.Id, r.Label, BoxOf(r.Path.EnvelopeInternal), [("hooks", Text(r.Height, units))])),
        .. plan.Services.GroupBy(s => (s.Kind, s.Id)).Select(g => Of(g.First(), units)),
        .. plan.Flows.SelectMany(f => Lines(f, units)).GroupBy(l => l.Key).Select(g => g.First()),
        .. plan.Limits.GroupBy(l => l.Rule).Select(g => new ComparedThing("limit", g.Key, "", null, Said(("set to", string.Join(", ", g.Select(l => l.Quantity?.ToString() ?? (l.Length is { } length ? Text(length, units) : ""))))))),
        .. plan.Acceptances.GroupBy(a => $"{a.Rule} {string.Join(' ', a.Things)}".TrimEnd()).Select(g => new ComparedThing("accept", g.Key, "", null, [("reason", g.First().Text)])),
    ];

    private static ComparedThing Head(Plan plan) => new("plan", "", "", null, Said(
        ("title", plan.Head.Title), ("number", plan.Head.Number), ("code", plan.Head.Code.Word()),
        ("people", plan.Head.People == People.Usual ? "" : plan.Head.People.Text),
        ("products", string.Join(", ", plan.Head.Products.Select(p => $"{p.Unit} {p.WeightEach}".TrimEnd()))),
        ("target", plan.Day?.Target?.ToString() ?? ""), ("hours", plan.Day?.Hours?.ToString() ?? ""),
        ("crew", string.Join(", ", plan.Day?.Crew.Select(c => FormattableString.Invariant($"{c.Key} {c.Value}")) ?? []))));

    private static ComparedThing Shell(Plan plan, UnitSystem units) => new("shell", "", "", null, Said(
        ("is", plan.Shell.Name), ("inside", Size(BoxOf(plan.Shell.Finished.EnvelopeInternal), units)), ("ceiling", Text(plan.Shell.CeilingHeight, units)),
        ("lining", plan.Shell.WallLining == Length.Zero ? "" : $"{Text(plan.Shell.WallLining, units)} {plan.Shell.WallLiningOf}".TrimEnd()),
        ("floor build-up", Text(plan.Shell.FloorBuildUp, units)), ("ground", plan.Shell.GroundBelowFloor is { } ground ? Text(ground, units) + " below floor" : "")));

    private static ComparedThing Of(Room room, UnitSystem units) => new("room", room.Id, room.Label, room.Bounds, Said(
        ("class", room.Class.ToString().ToLowerInvariant()), ("size", Size(room.Bounds, units)), ("ceiling", Text(room.CeilingHeight, units)),
        ("keeps", room.KeepCelsius is { } keep ? keep.ToString("0.#", CultureInfo.InvariantCulture) + " C" : ""),
        ("light", room.Lux is { } lux ? lux.ToString("0", CultureInfo.InvariantCulture) + " lux" : ""),
        ("falls", room.Falls is { } falls ? (falls.Slope * 100).ToString("0.##", CultureInfo.InvariantCulture) + " % to " + falls.DrainId : ""),
        ("finishes", string.Join(", ", room.Finishes.OrderBy(f => f.Key, StringComparer.Ordinal).Select(f => $"{f.Key} {f.Value}")))));

    private static ComparedThing Of(Opening opening, UnitSystem units) => new(
        opening.Kind.ToString().ToLowerInvariant(), opening.Id, opening.Label, BoxOf(opening.Reveal.EnvelopeInternal), Said(
        ("joins", $"{opening.RoomA?.Id ?? "outside"} and {opening.RoomB?.Id ?? "outside"}"),
        ("clear", $"{Text(opening.Width, units)} x {Text(opening.Height, units)}"),
        ("sill", opening.Sill == Length.Zero ? "" : Text(opening.Sill, units)),
        ("frame", opening.Frame is { } frame ? Text(frame, units) : ""),
        ("radius", opening.Radius is { } radius ? Text(radius, units) : ""),
        ("leaf", opening.Swing is { } swing ? $"{swing.Kind.ToString().ToLowerInvariant()}, {swing.Into?.Id ?? "out"}" : ""),
        ("with", string.Join(", ", new[] { opening.ClosesItself ? "closes itself" : "", opening.OpensFromInside ? "opens from inside" : "", opening.Steps is { } steps ? $"steps {steps}" : "", opening.Ramp ? "ramp" : "", opening.Guard ? "guard" : "" }.Where(w => w.Length > 0)))));

    private static ComparedThing Of(Station station, UnitSystem units) => new(
        station.Role.ToString().ToLowerInvariant(), station.Id, station.Label, station.Bounds, Said(
        [
            ("in", station.Room.Id),
            ("for", station.Purpose),
            .. StationTable.All.Select(row => (row.Word, station.Said.Print(row, units))),
        ]));

    private static ComparedThing Of(ServicePoint point, UnitSystem units) => new(
        point.Kind.ToString().ToLowerInvariant(), point.Id, point.Label, new Box(point.At.X, point.At.Y, point.At.X, point.At.Y), Said(
        ("in", point.Room?.Id ?? ""), ("height", point.Height is { } height ? Text(height, units) : ""), ("through", point.Kind == ServiceKind.Hole ? point.Wall?.Word() ?? point.Form : ""),
        ("size", string.Join(" x ", new[] { point.Size, point.SizeAcross }.OfType<Length>().Select(l => Text(l, units)))),
        ("brings", string.Join(" ", new[] { point.Cold ? "cold" : "", point.Hot ? "hot" : "" }.Where(w => w.Length > 0))),
        ("length", point.HoseLength is { } hose ? Text(hose, units) : ""),
        ("circuit", point.Circuit),
        ("guard", string.Join(", ", point.BackflowGuards)),
        ("rated", string.Join(' ', point.Ratings.Select(r => r.ToString()).Concat(point.Words.Except(point.BackflowGuards).Where(w => w is not ("cold" or "hot")))))));

    /// <summary>Each written line of a flow, by its stops: another way is another line.</summary>
    private static IEnumerable<ComparedThing> Lines(Flow flow, UnitSystem units) => flow.Legs.GroupBy(l => l.Chain).Select(chain =>
    {
        var first = chain.First();
        string stops = string.Join(" -> ", chain.Select(l => l.To.Name).Prepend(first.From.Name));
        return new ComparedThing($"flow {flow.Stream.ToString().ToLowerInvariant()}", stops, "", null, Said(
            ("by", first.Carriage.Kind.ToString().ToLowerInvariant()),
            ("trolley", string.Join(" x ", new[] { first.Carriage.Width, first.Carriage.Length }.OfType<Length>().Select(l => Text(l, units)))),
            ("load", first.Carriage.LoadKilograms is { } load ? MassText.InHand(load, units) + (first.Carriage.LoadKind == LoadKind.Still ? "" : " " + first.Carriage.LoadKind.ToString().ToLowerInvariant()) : ""),
            ("when", first.Period == Period.During ? "" : first.Period.ToString().ToLowerInvariant() + " work")));
    });

    /// <summary>What the plan does not say is left out.</summary>
    private static (string What, string Value)[] Said(params (string What, string Value)[] facts) => [.. facts.Where(f => f.Value.Length > 0)];

    private static string Text(Length length, UnitSystem units) => LengthText.Sentence(length, units);

    private static string Text(FrameWish frame, UnitSystem units) => frame.Form == FrameForm.None
        ? "none"
        : $"{frame.Form.ToString().ToLowerInvariant()} {Text(frame.Face, units)} x {Text(frame.Depth, units)} x {Text(frame.Thickness, units)}";

    private static string Size(Box box, UnitSystem units) => $"{Text(box.Width, units)} x {Text(box.Depth, units)}";

    private static Box BoxOf(Envelope box) => new(
        Length.FromMillimetres(box.MinX), Length.FromMillimetres(box.MinY), Length.FromMillimetres(box.MaxX), Length.FromMillimetres(box.MaxY));
}
