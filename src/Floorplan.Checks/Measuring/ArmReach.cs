using Floorplan.Checks.Limits;
using Floorplan.Model;
using Floorplan.Sizing.Bodies;

namespace Floorplan.Checks.Measuring;

/// <summary>
/// How far it is from a shoulder to a thing. To a thing over the shoulder the way slants up. To a lower thing people bend, and
/// waste falls, so that only its distance on plan counts, as for a thing whose height the plan does not say; own assumption.
/// </summary>
internal static class ArmReach
{
    /// <summary>
    /// Of the figures for small and for tall people, the heaviest that the thing is beyond, and how far it is for these people.
    /// </summary>
    /// <param name="across">On plan, in mm.</param>
    /// <param name="height">Above the floor, in mm; null when not said.</param>
    public static (AppliedLimit Limit, double Reach)? Beyond(IEnumerable<AppliedLimit> limits, People people, double across, double? height)
    {
        foreach (var limit in limits.OrderByDescending(l => l.Severity))
        {
            double reach = Slant(across, Up(limit, people, height));
            if (reach > limit.Value + Tiers.Tolerance)
            {
                return (limit, reach);
            }
        }

        return null;
    }

    /// <summary>How far over the shoulder of the people that a figure is for, in mm; 0 when lower.</summary>
    public static double Up(AppliedLimit limit, People people, double? height) => Math.Max(0, (height ?? 0) - Shoulder(limit, people));

    /// <summary>The greatest height that is within reach at a distance on plan, in mm; null when none is.</summary>
    public static double? Highest(AppliedLimit limit, People people, double across) =>
        across > limit.Value ? null : Shoulder(limit, people) + Math.Sqrt((limit.Value * limit.Value) - (across * across));

    private static double Shoulder(AppliedLimit limit, People people)
        => (limit.Published.Body! with { Measure = BodyMeasure.ShoulderHeight, BothHands = false }).Of(people);

    private static double Slant(double across, double up) => up == 0 ? across : Math.Sqrt((across * across) + (up * up));
}
