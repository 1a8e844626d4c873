using Floorplan.Language.Quantities;
using Floorplan.Model.Rooms;
using Floorplan.Sizing.Cold;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.LightAndAir.Rooms;

/// <summary>The air that a room needs: fresh air for its people, and what carries the steam of its tanks away.</summary>
/// <param name="Fresh">Null where nobody works.</param>
/// <param name="Vapour">What its tanks give off; null where it has none.</param>
/// <param name="Steam">The air that takes that away; null where it has none.</param>
/// <param name="Least">What the fans of such a room move at least; null where it has no fan.</param>
internal sealed record RoomNeed(Room Room, int People, Figure? Fresh, Figure? Vapour, Figure? Steam, Figure? Least)
{
    /// <summary>A kitchen's, in m3/s: for each person and for each m2.</summary>
    private const double PerPerson = 0.0038;
    private const double PerArea = 0.0006;

    private const double PerPersonCfm = 7.5;
    private const double PerAreaCfm = 0.12;

    /// <summary>So much more water leaves with the air than came in, kg/kg: from 20 C and 50 % to 22 C and 75 %.</summary>
    private const double TakesUp = 0.005;

    private const double Air = 1.2;

    /// <summary>Changes an hour.</summary>
    private const double LeastChanges = 4;

    /// <summary>50 cfm, m3/s.</summary>
    private const double OfToilet = 50 * InchPound.CubicMetresPerSecondOfCubicFootPerMinute;

    private static readonly Source Ashrae = new(
        "ASHRAE 62.1-2016 table 6.2.2.1, kitchen; no row for food processing, so it is a floor", Origin.FoundInPublicCopy);
    private static readonly Source Pool = new("ASHRAE HVAC Applications, open water under still air", Origin.FromMemory);
    private static readonly Source Mix = new("vapour / (weight of air x what it takes up)", Origin.OwnAssumption);
    private static readonly Source Own = new("own assumption", Origin.OwnAssumption);
    private static readonly Source Changes = new(
        "Malaysian code of veterinary practice for poultry plants, 3.11: at least 4 air changes an hour by fan", Origin.FoundInPublicCopy);
    private static readonly Source Toilet = new("ASHRAE 62.1, 50 cfm for each toilet", Origin.FoundInSecondaryCopy);

    /// <summary>The largest of them; null where it needs none.</summary>
    public Figure? Most => new[] { Fresh, Steam, Least }.OfType<Figure>().MaxBy(f => f.Value);

    public static RoomNeed Of(PlanFacts facts, Room room, Workings w)
    {
        int people = (int)Math.Clamp(facts.Crew.Working[room.Id].Value, 0, 10_000);
        var tanks = facts.HotTanks.Where(t => t.Station.Room.Id == room.Id).ToList();
        var vapour = tanks.Count == 0 ? null : VapourOf(facts, room, tanks, w);
        return new RoomNeed(
            room, people, people == 0 ? null : FreshOf(facts, room, people, w), vapour, vapour is null ? null : SteamOf(room, vapour, w),
            LeastOf(facts, room, w));
    }

    private static Figure FreshOf(PlanFacts facts, Room room, int people, Workings w)
    {
        var area = facts.RoomSizes[room.Id].Area;
        bool metric = w.Units == UnitSystem.Metric;
        const double Cfm = InchPound.CubicMetresPerSecondOfCubicFootPerMinute;
        double value = metric
            ? (PerPerson * people) + (PerArea * area.Value)
            : ((PerPersonCfm * people) + (PerAreaCfm * area.Value / InchPound.SquareMetresPerSquareFoot)) * Cfm;
        string person = metric ? w.Fine(PerPerson, Measure.AirFlow) : w.Fine(PerPersonCfm * Cfm, Measure.AirFlow);
        string each = metric
            ? w.Fine(PerArea, Measure.AirFlow) + " a m²"
            : w.Fine(PerAreaCfm * Cfm, Measure.AirFlow) + " a sq ft";
        return w.Of(
            "fresh air for people", room.Id, value, Measure.AirFlow, "people x air for each + floor area x air for each",
            FormattableString.Invariant($"{people} x {person} + {area.Text} x {each}"), Ashrae, FigureInput.Of(facts.Crew.Working[room.Id]),
            FigureInput.Of(area), FigureInput.Taken("air for each person", person, Ashrae),
            FigureInput.Taken("air for the floor", each, Ashrae));
    }

    private static Figure VapourOf(PlanFacts facts, Room room, List<HotTank> tanks, Workings w)
    {
        var air = DesignAir.In(facts.Plan, room);
        double over = air.Humidity * Psychrometrics.Saturation(air.Celsius);
        double rate = tanks.Sum(t => t.OpenArea * OpenWater.PerArea(t.Celsius, over));
        return w.Of(
            "vapour of hot tanks", room.Id, rate, Measure.MassFlow,
            "open area x (pw - pa) x 0.089 / heat of vapour, in kPa and kJ/kg; sum of the tanks",
            WorkingText.Sum([.. tanks.Select(t => $"{w.Text(t.OpenArea, Measure.Area)} at {w.Text(t.Celsius, Measure.Temperature)}")])
                + $" under {air.Temperature.Text} {air.Damp.Text}",
            Pool,
            [
                .. tanks.Select(t => FigureInput.Said($"water of {t.Station.Id}", w.Text(t.Celsius, Measure.Temperature), t.Span)),
                air.Temperature, air.Damp,
            ]);
    }

    private static Figure? LeastOf(PlanFacts facts, Room room, Workings w)
    {
        var air = facts.Air[room.Id];
        if (!air.HasExhaust && !air.HasSupply)
        {
            return null;
        }

        const string Name = "least that fans move";
        return room.Class == HygieneClass.Toilet
            ? w.Of(
                Name, room.Id, OfToilet, Measure.AirFlow, "as published", w.Text(OfToilet, Measure.AirFlow), Toilet,
                FigureInput.Taken("air drawn from a toilet", w.Text(OfToilet, Measure.AirFlow), Toilet))
            : w.Of(
                Name, room.Id, LeastChanges * air.Volume.Value / 3600, Measure.AirFlow, "changes an hour x volume",
                FormattableString.Invariant($"{LeastChanges} x {air.Volume.Text}"), Changes, FigureInput.Of(air.Volume),
                FigureInput.Taken("changes an hour", FormattableString.Invariant($"{LeastChanges}"), Changes));
    }

    private static Figure SteamOf(Room room, Figure vapour, Workings w)
    {
        string takes = w.Text(TakesUp, Measure.Ratio) + " of its weight";
        string weight = w.Fine(Air, Measure.Density);
        return w.Of(
            "steam extract", room.Id, vapour.Value / (Air * TakesUp), Measure.AirFlow, "vapour / (weight of air x what it takes up)",
            $"{vapour.Text} / ({weight} x {takes})", Mix, FigureInput.Of(vapour), FigureInput.Taken("weight of air", weight, Own),
            FigureInput.Taken("what air takes up on its way", takes, Own));
    }
}
