using Floorplan.Language.Quantities;
using Floorplan.Sizing.LightAndAir;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Power.Loads;

/// <summary>About what the lamps of a room draw, where the plan says its light and no lamps.</summary>
internal static class LampLoad
{
    /// <summary>lm/W of a lamp with its gear.</summary>
    private const double Efficacy = 100;

    /// <summary>What of the light falls on the work.</summary>
    private const double Utilised = 0.5;

    /// <summary>What is left when lamps are old and dirty.</summary>
    private const double Maintained = 0.7;

    private static readonly Source Lumen = new(
        "lumen method; 100 lm/W, half of the light on the work, 0.7 for age and dirt", Origin.OwnAssumption);

    /// <summary>In W.</summary>
    public static double Watts(double lux, double squareMetres) => lux * squareMetres / (Utilised * Maintained * Efficacy);

    public static Figure Of(RoomLight light, Figure area, Workings workings)
    {
        double watts = Math.Max(0, Watts(light.Level.Value, area.Value));
        return workings.Of(
            "lamps draw", light.Room.Id, watts, Measure.Power, "light x floor area / (light on the work x age and dirt x lm/W)",
            $"{light.Level.Text} x {workings.Fine(area.Value, Measure.Area)} / (0.5 x 0.7 x 100)", Lumen,
            FigureInput.Of(light.Level), FigureInput.Of(area),
            FigureInput.Taken("light on the work", "0.5", Lumen), FigureInput.Taken("age and dirt", "0.7", Lumen),
            FigureInput.Taken("light of a watt", "100 lm", Lumen));
    }
}
