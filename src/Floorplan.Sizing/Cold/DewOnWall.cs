using Floorplan.Language.Quantities;
using Floorplan.Language.Quantities.Heat;
using Floorplan.Model;
using Floorplan.Model.Rooms;
using Floorplan.Sizing.Cold.Fabric;
using Floorplan.Sizing.LightAndAir;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Cold;

/// <summary>Whether the warm face of a cold room's wall is colder than the dew point of the air before it.</summary>
/// <param name="Surface">Of that face.</param>
/// <param name="DewPoint">Of the air before it.</param>
internal sealed record DewOnWall(RoomSide Side, Figure Surface, Figure DewPoint)
{
    public bool IsWet => Surface.Value < DewPoint.Value;

    private static readonly Source Iso = new("ISO 13788: warm side less 0.13 U x difference", Origin.FoundInPublicCopy);
    private static readonly Source Damp = new("dew point, ASHRAE Fundamentals 2017 chapter 1", Origin.FromMemory);

    /// <summary>Walls, partitions and the ceiling that warm air stands before.</summary>
    public static IReadOnlyList<DewOnWall> Of(Plan plan, Room room, Workings w)
    {
        var inside = DesignAir.In(plan, room);
        var found = new List<DewOnWall>();
        foreach (var side in RoomSides.Of(plan, room).Where(s => s.Kind != SideKind.Floor))
        {
            var before = DesignAir.In(plan, side.Beyond);
            if (before.Celsius <= inside.Celsius)
            {
                continue;
            }

            var u = w.Figures.First(f => f.Of == room.Id && f.Name == $"U of {side.Name}");
            string film = HeatText.Resistance(HeatPath.Inside, w.Units);
            var surface = w.Of(
                $"warm face of {side.Name}", room.Id, HeatPath.Surface(before.Celsius, inside.Celsius, side.Transmittance),
                Measure.Temperature, "warm side - film x U x difference",
                $"{before.Temperature.Text} - {film} x {u.Text} x ({before.Temperature.Text} - {inside.Temperature.Text})", Iso,
                before.Temperature, inside.Temperature, FigureInput.Of(u), FigureInput.Taken("film", film, Iso));
            var dew = w.Of(
                $"dew point before {side.Name}", room.Id, Psychrometrics.DewPoint(before.Celsius, before.Humidity), Measure.Temperature,
                "where air of that temperature and humidity is full of water", $"{before.Temperature.Text}, {before.Damp.Text}", Damp,
                before.Temperature, before.Damp);
            found.Add(new DewOnWall(side, surface, dew));
        }

        return found;
    }
}
