using Floorplan.Language.Quantities;
using Floorplan.Language.Quantities.Heat;
using Floorplan.Model;
using Floorplan.Model.Rooms;
using Floorplan.Model.Shells;
using Floorplan.Sizing.Cold.Fabric;
using Floorplan.Sizing.LightAndAir;
using Floorplan.Sizing.LightAndAir.Rooms;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Cold.Loads;

/// <summary>Heat through walls, partitions, ceiling and floor.</summary>
internal sealed class SideLoads(Plan plan, Room room, Workings w)
{
    /// <summary>Under the floor of a building in summer, C; own assumption.</summary>
    private const double Ground = 15;

    private static readonly Source Area = new("geometry of the room", Origin.CommonPractice);
    private static readonly Source SolAirSource = new("sol-air temperature, ASHRAE; dark paint", Origin.FoundInPublicCopy);
    private static readonly Source Loads = new("U x area x difference, ASHRAE Refrigeration", Origin.FoundInPublicCopy);
    private static readonly Source Own = new("own assumption", Origin.OwnAssumption);
    private static readonly Source Taken = new("ASHRAE, dark surface: absorptance over outside film", Origin.FoundInPublicCopy);
    private static readonly Source Sky = new("ASHRAE, heat lost to the open sky", Origin.FoundInPublicCopy);

    private readonly DesignAir outside = DesignAir.Outside(plan);
    private readonly DesignAir inside = DesignAir.In(plan, room);

    public IEnumerable<ColdLoad> All() => RoomSides.Of(plan, room).Select(Of);

    private ColdLoad Of(RoomSide side)
    {
        var area = side.Kind is SideKind.Ceiling or SideKind.Floor
            ? Make("area", side, side.Area, Measure.Area, "floor area of the room", w.Fine(side.Area, Measure.Area), Area)
            : Make(
                "area", side, side.Area, Measure.Area, "length x height, doors counted as wall",
                $"{WorkingText.Long(side.Run, w.Units)} x {WorkingText.Long(room.CeilingHeight.Millimetres, w.Units)}", Area,
                FigureInput.Said("room", room.Id, room.Span));
        var transmittance = SideFigures.Transmittance(w, side, room.Id);
        var (beyond, input) = Beyond(side);
        double difference = Math.Max(0, beyond - inside.Celsius);
        string step = w.Text(difference, Measure.TemperatureDifference);
        var heat = Make(
            "heat through", side, ColdStore.Through(side.Transmittance, side.Area, difference), Measure.Heat,
            "U x area x difference; nothing from a colder side",
            $"{transmittance.Text} x {area.Text} x ({input.Text} - {inside.Temperature.Text})", Loads, FigureInput.Of(transmittance),
            FigureInput.Of(area), input, inside.Temperature);
        return new ColdLoad(side.Name, $"{area.Text}, {transmittance.Text}", step, heat);
    }

    private (double Celsius, FigureInput Input) Beyond(RoomSide side)
    {
        bool isSunny = DesignAir.IsSummerSaid(plan);
        switch (side.Kind)
        {
            case SideKind.Partition:
                var neighbour = DesignAir.In(plan, side.Beyond);
                return (neighbour.Celsius, neighbour.Temperature);
            case SideKind.Floor when plan.Shell.Kind == ShellKind.Shed:
                return (Ground, FigureInput.Taken("ground under the floor", w.Text(Ground, Measure.Temperature), Own));
            case SideKind.Wall when isSunny:
                return Sunny(side, Sun.OnWalls, 0);
            case SideKind.Ceiling when isSunny:
                return Sunny(side, Sun.OnRoof, SolAir.SkyOnRoof);
            default:
                return (outside.Celsius, outside.Temperature);
        }
    }

    private (double Celsius, FigureInput Input) Sunny(RoomSide side, double sun, double sky)
    {
        double celsius = SolAir.Temperature(outside.Celsius, SolAir.Dark, sun, sky);
        string taken = HeatText.Resistance(SolAir.Dark, w.Units);
        string sunny = HeatText.PerArea(sun, w.Units);
        string lost = w.Text(sky, Measure.TemperatureDifference);
        var figure = Make(
            "sun-warmed", side, celsius, Measure.Temperature, "outside + taken by the paint x sun - lost to the sky",
            $"{outside.Temperature.Text} + {taken} x {sunny} - {lost}", SolAirSource, outside.Temperature,
            FigureInput.Taken("taken by dark paint", taken, Taken),
            FigureInput.Taken("sun, mean of a clear summer day and night", sunny, Own),
            FigureInput.Taken("lost to the sky", lost, Sky));
        return (celsius, FigureInput.Of(figure));
    }

    private Figure Make(
        string name, RoomSide side, double value, Measure measure, string formula, string substituted, Source source,
        params ReadOnlySpan<FigureInput> inputs)
        => w.Of(
            name == "area" ? $"area of {side.Name}" : $"{name} {side.Name}", room.Id, value, measure, formula, substituted, source, inputs);
}
