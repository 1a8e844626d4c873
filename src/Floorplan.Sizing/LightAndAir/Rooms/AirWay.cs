using Floorplan.Language.Quantities;
using Floorplan.Model.Openings;
using Floorplan.Model.Rooms;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.LightAndAir.Rooms;

/// <summary>What fans leave over in a room, or want, and how fast it goes through the openings.</summary>
/// <param name="In">Blown in, as the plan says or as the room needs; null without a supply.</param>
/// <param name="Out">Drawn out, likewise; null without an exhaust.</param>
/// <param name="Left">In less out, m3/s: above zero presses out.</param>
/// <param name="Speed">Null where no air goes, or there is no way.</param>
/// <param name="Through">Ids of hatches, chutes and doors.</param>
internal sealed record AirWay(Room Room, Figure? In, Figure? Out, double Left, Figure? Speed, IReadOnlyList<string> Through)
{
    /// <summary>Under a closed door, mm; own assumption.</summary>
    private const double Gap = 10;

    /// <summary>Of a strip curtain stands open; own assumption.</summary>
    private const double Strips = 0.1;

    private const double Least = 1e-9;

    private static readonly Source Flow = new("what fans leave over / free area", Origin.CommonPractice);
    private static readonly Source Own = new("own assumption", Origin.OwnAssumption);
    private static readonly Source Needed = new("not said by the plan: what the room needs", Origin.OwnAssumption);

    /// <summary>Presses out, draws in, or even.</summary>
    public string Pressure => Left > Least ? "above" : Left < -Least ? "below" : "even";

    public static AirWay Of(PlanFacts facts, RoomNeed need, Workings w)
    {
        var air = facts.Air[need.Room.Id];
        var blown = air.In ?? (air.HasSupply ? Taken("air to blow in", need, w) : null);
        var drawn = air.Out ?? (air.HasExhaust ? Taken("air to draw out", need, w) : null);
        double left = (blown?.Value ?? 0) - (drawn?.Value ?? 0);
        var openings = facts.Plan.Openings.Where(o => o.RoomA?.Id == need.Room.Id || o.RoomB?.Id == need.Room.Id)
            .Select(o => (Opening: o, Area: Free(o))).Where(o => o.Area > 0).DistinctBy(o => o.Opening.Id).ToList();
        double area = openings.Sum(o => o.Area);
        return new AirWay(
            need.Room, blown, drawn, left, Math.Abs(left) > Least && area > 0 ? SpeedOf(need.Room, left, area, blown, drawn, w) : null,
            [.. openings.OrderByDescending(o => o.Area).Select(o => o.Opening.Id)]);
    }

    private static Figure? Taken(string name, RoomNeed need, Workings w) => need.Most is not { } most ? null : w.Of(
        name, need.Room.Id, most.Value, Measure.AirFlow, "not said by the plan: what the room needs", most.Text, Needed,
        FigureInput.Of(most));

    private static Figure SpeedOf(Room room, double left, double area, Figure? blown, Figure? drawn, Workings w)
    {
        string gap = QuantityText.Length(Length.FromMillimetres(Gap), w.Units);
        FigureInput[] inputs =
        [
            .. new[] { blown, drawn }.OfType<Figure>().Select(FigureInput.Of),
            FigureInput.Said("free area", w.Fine(area, Measure.Area), room.Span),
            FigureInput.Taken("gap under a closed door", gap, Own),
        ];
        return w.Of(
            "speed of air through doors and hatches", room.Id, Math.Abs(left) / area, Measure.Speed,
            "difference of air in and out / free area of hatches, chutes and gaps",
            $"{w.Text(Math.Abs(left), Measure.AirFlow)} / {w.Fine(area, Measure.Area)}", Flow, inputs);
    }

    /// <summary>What of an opening lets air through when nobody uses it, m2.</summary>
    private static double Free(Opening opening) => opening.Kind switch
    {
        OpeningKind.Hatch or OpeningKind.Chute or OpeningKind.Vent => opening.Width.Metres * opening.Height.Metres,
        OpeningKind.Opening when opening.Swing is null => opening.Width.Metres * opening.Height.Metres,
        OpeningKind.Window or OpeningKind.CargoDoor => 0,
        _ when opening.Swing?.Kind == SwingKind.Strip => opening.Width.Metres * opening.Height.Metres * Strips,
        _ => opening.Width.Metres * Gap / 1000,
    };
}
