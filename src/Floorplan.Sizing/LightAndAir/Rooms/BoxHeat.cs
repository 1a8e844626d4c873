using Floorplan.Language.Quantities;
using Floorplan.Model.Rooms;
using Floorplan.Model.Shells;
using Floorplan.Sizing.Cold;
using Floorplan.Sizing.Cold.Fabric;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.LightAndAir.Rooms;

/// <summary>
/// What the warm rooms of a unit lose on the winter day and take in on the summer day: through walls, ceiling and floor, and with the
/// air that is changed.
/// </summary>
internal sealed class BoxHeat(PlanFacts facts, Workings w)
{
    /// <summary>In work rooms in winter, C; own assumption.</summary>
    public const double WinterInside = 18;

    /// <summary>W for a K and m3/s: 1.2 kg/m3 x 1006 J/kgK.</summary>
    private const double OfAir = 1.2 * 1006;

    private const double SecondsPerHour = 3600;

    private static readonly Source Loads = new("U x area x difference, and 1.2 x 1006 J for each m³ of air and K", Origin.CommonPractice);
    private static readonly Source Geometry = new("geometry of the plan", Origin.CommonPractice);
    private static readonly Source OneChange = new("one change of air an hour where fans move less; own assumption", Origin.OwnAssumption);
    private static readonly Source Own = new("own assumption", Origin.OwnAssumption);

    private readonly List<Room> warm =
        [.. facts.Plan.Rooms.Where(r => r.Class != HygieneClass.Cold && r.CeilingHeight > Length.Zero).DistinctBy(r => r.Id)];

    private List<(RoomSide Side, Figure Area, Figure U)>? sides;
    private Figure? air;

    public bool IsAny => warm.Count > 0;

    /// <summary>The wall of a warm room to outside; null where none has one.</summary>
    public (RoomSide Side, Figure U)? Wall => Sides().Where(s => s.Side.Kind == SideKind.Wall)
        .Select(s => ((RoomSide, Figure)?)(s.Side, s.U)).FirstOrDefault();

    /// <param name="moved">What fans draw out or blow in, m3/s.</param>
    public Figure Winter(Quantity outside, FigureInput input, double moved) => Heat(
        "heating on the winter day", moved, FigureInput.Taken("inside", w.Text(WinterInside, Measure.Temperature), Own), input,
        _ => WinterInside - outside.Base, "inside - outside");

    /// <param name="moved">What fans draw out or blow in, m3/s.</param>
    public Figure Summer(double moved)
    {
        var outside = DesignAir.Outside(facts.Plan);
        double difference = outside.Celsius - DesignAir.UsualRoom;
        return Heat(
            "cooling on the summer day", moved, FigureInput.Taken("inside", w.Text(DesignAir.UsualRoom, Measure.Temperature), Own),
            outside.Temperature, kind => difference + Sun.Adds(kind), "outside - inside, with the sun on roof and walls");
    }

    private Figure Heat(
        string name, double moved, FigureInput inside, FigureInput outside, Func<SideKind, double> difference, string how)
    {
        var flow = AirOf(moved);
        double through = Sides().Sum(s => s.U.Value * s.Area.Value * Math.Max(0, difference(s.Side.Kind)));
        double ofAir = OfAir * flow.Value * Math.Max(0, difference(SideKind.Partition));
        string terms = WorkingText.Sum(
        [
            .. Sides().Select(s => $"{s.U.Text} x {s.Area.Text} x {K(difference(s.Side.Kind))}"),
            $"air {flow.Text} x {K(difference(SideKind.Partition))}",
        ]);
        FigureInput[] inputs =
        [
            .. Sides().SelectMany(s => new[] { FigureInput.Of(s.U), FigureInput.Of(s.Area) }), FigureInput.Of(flow), inside, outside,
        ];
        return w.Of(
            name, Figure.WholePlan, through + ofAir, Measure.Heat, $"U x area x difference of each side, and of the air; difference: {how}",
            terms, Loads, inputs);
    }

    private string K(double difference) => w.Text(Math.Max(0, difference), Measure.TemperatureDifference);

    private Figure AirOf(double moved)
    {
        if (air is not null)
        {
            return air;
        }

        double volume = warm.Sum(r => facts.RoomSizes[r.Id].Volume.Value);
        double change = volume / SecondsPerHour;
        string fans = w.Text(moved, Measure.AirFlow);
        return air = w.Of(
            "air that is changed", Figure.WholePlan, Math.Max(change, moved), Measure.AirFlow,
            "the larger of one volume of the warm rooms an hour and what fans move",
            $"{w.Text(volume, Measure.Volume)} an hour, {fans}", OneChange,
            [.. warm.Select(r => FigureInput.Of(facts.RoomSizes[r.Id].Volume)), FigureInput.Taken("what fans move", fans, Own)]);
    }

    /// <summary>Walls, ceiling and floor of all warm rooms together; the ground under a building counts nothing.</summary>
    private List<(RoomSide Side, Figure Area, Figure U)> Sides() => sides ??=
    [
        .. warm.SelectMany(r => RoomSides.Of(facts.Plan, r))
            .Where(s => s.Kind != SideKind.Partition && (s.Kind != SideKind.Floor || facts.Plan.Shell.Kind != ShellKind.Shed))
            .GroupBy(s => s.Kind).OrderBy(g => g.Key).Select(g => (g.First(), AreaOf([.. g]), U(g.First()))),
    ];

    private Figure U(RoomSide side) => SideFigures.Transmittance(w, side, Figure.WholePlan);

    private Figure AreaOf(List<RoomSide> all) => w.Of(
        $"area of {all[0].Name}", Figure.WholePlan, all.Sum(s => s.Area), Measure.Area, "sum over the warm rooms",
        WorkingText.Sum([.. all.Select(s => w.Text(s.Area, Measure.Area))]), Geometry,
        FigureInput.Said("rooms", string.Join(", ", warm.Take(8).Select(r => r.Id)), warm[0].Span));
}
