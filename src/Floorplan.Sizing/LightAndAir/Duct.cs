namespace Floorplan.Sizing.LightAndAir;

/// <summary>Air in ducts and holes; ASHRAE duct design, and Huebscher for the round duct of the same loss. SI units.</summary>
internal static class Duct
{
    /// <summary>Of standard air, in Pa: half of 1.2 kg/m3.</summary>
    public static double VelocityPressure(double speed) => 0.6 * speed * speed;

    /// <summary>In Pa for each m.</summary>
    /// <param name="friction">Darcy's.</param>
    /// <param name="hydraulic">Four times the area over the way round, in m.</param>
    public static double LossPerMetre(double friction, double speed, double hydraulic) => friction * VelocityPressure(speed) / hydraulic;

    /// <summary>Four times the area over the way round.</summary>
    public static double Hydraulic(double width, double height) => 2 * width * height / (width + height);

    /// <summary>Diameter of the round duct with the same loss at the same flow.</summary>
    public static double Round(double width, double height)
        => 1.3 * Math.Pow(width * height, 0.625) / Math.Pow(width + height, 0.25);
}
