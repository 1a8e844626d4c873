using Floorplan.Language.Quantities;
using Floorplan.Language.Quantities.Heat;
using Floorplan.Model.Stations;
using Floorplan.Sizing.Water.Sizes;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Water.Hot;

/// <summary>An open tank that is kept hot, such as a scald tank.</summary>
/// <param name="HeatUp">J from cold; null where the plan does not say what it holds.</param>
/// <param name="Hours">That its own heater takes for that, in s; null where it has none.</param>
/// <param name="Loss">W while it stands hot.</param>
public sealed record HeatedTank(Station Station, double Celsius, Figure? HeatUp, Figure? Hours, Figure Loss)
{
    internal static IReadOnlyList<HeatedTank> Of(PlanFacts facts, HotWaterBasis basis, Workings w)
        => [.. facts.HotTanks.Select(t => Of(facts, t.Station, t.Celsius, basis, w))];

    private static HeatedTank Of(PlanFacts facts, Station tank, double celsius, HotWaterBasis basis, Workings w)
    {
        string at = w.Text(celsius, Measure.Temperature);
        double area = tank.Footprint.Area / 1e6;
        double wall = tank.Footprint.Length / 1000 * Math.Max(0, (tank.Top - tank.Bottom).Millimetres) / 1000;
        double watts = (area * OpenTank.FromSurface(celsius)) + (wall * OpenTank.FromWall(celsius));
        var loss = w.Of(
            "heat lost by the open tank", tank.Id, watts, Measure.Heat, "surface x loss of open water + sides x loss of a bare wall",
            $"{w.Fine(area, Measure.Area)} x {HeatText.PerArea(OpenTank.FromSurface(celsius), w.Units)} + "
                + $"{w.Fine(wall, Measure.Area)} x {HeatText.PerArea(OpenTank.FromWall(celsius), w.Units)}",
            OpenTank.Source,
            FigureInput.Said("size", "its outline and height", tank.Span), FigureInput.Said("water", at, tank.Span));
        if (WaterDay.Volume(tank) is not { } volume)
        {
            return new HeatedTank(tank, celsius, null, null, loss);
        }

        var heatUp = w.Of(
            "heat to bring the tank up from cold", tank.Id, WaterHeat.Energy(volume, celsius - basis.Cold), Measure.Energy,
            "volume x 1000 kg/m³ x 4186 J/(kg K) x rise",
            $"{w.Text(volume, Measure.Liquid)} x 1000 x 4186 x {w.Text(Math.Max(0, celsius - basis.Cold), Measure.TemperatureDifference)}",
            WaterHeat.Source, FigureInput.Said("what it holds", w.Text(volume, Measure.Liquid), tank.Span), basis.ColdInput);
        double own = facts.Uses.By(tank, NeedKind.Power).Where(u => u.Amount is { Unit.Kind: QuantityKind.Power })
            .Sum(u => u.Amount!.Value.Base);
        var hours = own > 0 && heatUp.Value > 0
            ? w.Of(
                "time to heat the tank from cold", tank.Id, heatUp.Value / own, QuantityKind.Time, QuantityText.Time(heatUp.Value / own),
                "heat / power of its heater", $"{heatUp.Text} / {w.Text(own, Measure.Power)}", WaterHeat.Source, FigureInput.Of(heatUp),
                FigureInput.Said("its heater", w.Text(own, Measure.Power), tank.Span))
            : null;
        return new HeatedTank(tank, celsius, heatUp, hours, loss);
    }
}
