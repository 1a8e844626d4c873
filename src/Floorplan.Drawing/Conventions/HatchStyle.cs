namespace Floorplan.Drawing.Conventions;

/// <summary>
/// Lines at an angle (degrees, counter-clockwise from the x axis) and pitch on paper; crossed adds the other diagonal, dots draws
/// points.
/// </summary>
public sealed record HatchStyle(double Degrees, double Pitch, HatchForm Form = HatchForm.Lines)
{
    /// <summary>Cut walls.</summary>
    public static HatchStyle Wall { get; } = new(45, 1.4);
}

public enum HatchForm
{
    Lines,
    Crossed,
    Dots,
}
