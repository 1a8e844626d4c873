namespace Floorplan.Sizing.Weights;

/// <summary>Weight times its distance from the plan's origin, in kg mm.</summary>
/// <param name="East">With the distance to the east.</param>
/// <param name="North">With the distance to the north.</param>
public readonly record struct Moment(double East, double North)
{
    public static Moment Of(double kilograms, double x, double y) => new(kilograms * x, kilograms * y);

    public static Moment Sum(IEnumerable<Moment> moments) => moments.Aggregate(default(Moment), (sum, m) => sum + m);

    public static Moment operator +(Moment a, Moment b) => new(a.East + b.East, a.North + b.North);

    public static Moment operator -(Moment a, Moment b) => new(a.East - b.East, a.North - b.North);
}
