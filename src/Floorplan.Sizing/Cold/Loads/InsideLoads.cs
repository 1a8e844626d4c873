using Floorplan.Language.Quantities;
using Floorplan.Language.Quantities.Heat;
using Floorplan.Model;
using Floorplan.Model.Rooms;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Cold.Loads;

/// <summary>People and lamps in a cold room, the fans of its cooler, and the thawing of its fins.</summary>
internal sealed class InsideLoads(Plan plan, Room room, Workings w)
{
    /// <summary>W/m2 of lamps; common practice.</summary>
    private const double Lamps = 10;

    /// <summary>Hours of lamps where the day cannot be run.</summary>
    private const double UsualHours = 8;

    /// <summary>How long a person who brings something in stays, s.</summary>
    private const double StayOfTrip = 60;

    /// <summary>Of the loads before them.</summary>
    private const double FanShare = 0.15;
    private const double ThawShare = 0.05;

    /// <summary>Fins are below freezing, and ice over, in rooms colder than this, C.</summary>
    private const double ThawBelow = 4;

    private static readonly Source Own = new("own assumption", Origin.OwnAssumption);
    private static readonly Source Person = new("272 - 6 t W for each person, ASHRAE Refrigeration", Origin.FromMemory);
    private static readonly Source Lamp = new("10 W/m² of lamps in stores", Origin.CommonPractice);
    private static readonly Source OverDay = new("average of 24 h", Origin.CommonPractice);

    /// <param name="day">Null where the day cannot be run.</param>
    public IEnumerable<ColdLoad> Brought(RoomDay? day)
    {
        var inside = DesignAir.In(plan, room);
        double trips = day?.Trips.Where(t => plan.Openings.Any(o => o.Id == t.Key && (o.RoomA?.Id == room.Id || o.RoomB?.Id == room.Id)))
            .Sum(t => t.Value) ?? UsualTrips;
        double hours = ((day?.HandsSeconds ?? 0) + (trips * StayOfTrip)) / 3600;
        double each = ColdStore.OfPerson(inside.Celsius);
        string time = QuantityText.Time(hours * 3600);
        string person = w.Text(each, Measure.Heat);
        var people = w.Of(
            "heat of people", room.Id, ColdStore.OverDay(each, hours), Measure.Heat, "heat of one person x time / 24 h",
            $"{person} x {time} / 24 h", Person, FigureInput.Taken("heat of one person at work", person, Person), inside.Temperature,
            day is null
                ? FigureInput.Taken("time of people in the room", time, Own)
                : FigureInput.Said("time of people in the room, a minute for each load", time, plan.Day?.Span ?? room.Span));
        yield return new ColdLoad("people", $"{time} a day", "", people);

        double lit = day is null ? UsualHours : Math.Min(24, day.WorkSeconds / 3600);
        string light = QuantityText.Time(lit * 3600);
        string per = HeatText.PerArea(Lamps, w.Units);
        string area = w.Text(room.AreaSquareMetres, Measure.Area);
        var lamps = w.Of(
            "heat of lamps", room.Id, ColdStore.OverDay(Lamps * room.AreaSquareMetres, lit), Measure.Heat, "lamps x area x time / 24 h",
            $"{per} x {area} x {light} / 24 h", OverDay, FigureInput.Taken("lamps", per, Lamp),
            FigureInput.Said("floor area", area, room.Span),
            day is null ? FigureInput.Taken("time", light, Own) : FigureInput.Said("time of work", light, plan.Day?.Span ?? room.Span));
        yield return new ColdLoad("lamps", $"{light} a day", "", lamps);
    }

    /// <summary>What the cooler itself brings in, as shares of what it carries away.</summary>
    public IEnumerable<ColdLoad> OfCooler(double others)
    {
        yield return Part("fans of the cooler", FanShare, others);
        if (room.KeepCelsius < ThawBelow)
        {
            yield return Part("thawing the fins", ThawShare, others);
        }
    }

    private const int UsualTrips = 15;

    private ColdLoad Part(string name, double share, double others)
    {
        string part = w.Text(share, Measure.Ratio);
        var heat = w.Of(
            $"heat of {name}", room.Id, share * others, Measure.Heat, "share x loads before",
            $"{part} x {w.Text(others, Measure.Heat)}", Own, FigureInput.Taken("share of the loads before", part, Own));
        return new ColdLoad(name, $"{part} of the above", "", heat);
    }
}
