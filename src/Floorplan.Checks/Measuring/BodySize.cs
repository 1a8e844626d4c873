using Floorplan.Model;

namespace Floorplan.Checks.Measuring;

/// <summary>A figure that is a measure of the smallest or the largest person a plan is for.</summary>
public sealed record BodySize(BodyMeasure Measure, bool OfTheSmallest)
{
    public static BodySize Smallest(BodyMeasure measure) => new(measure, true);

    public static BodySize Largest(BodyMeasure measure) => new(measure, false);

    /// <summary>In mm, for the people of <see cref="People.Usual"/>.</summary>
    public double Usual => Of(People.Usual);

    /// <summary>In mm.</summary>
    public double Of(People people) => OfTheSmallest
        ? BodyTable.Of(Measure, people.Who != WhoWorks.Men, people.Least)
        : BodyTable.Of(Measure, people.Who == WhoWorks.Women, people.Most);
}

/// <summary>What of a body is measured.</summary>
public enum BodyMeasure
{
    Stature,

    /// <summary>From a wall behind the back to the tip of the thumb.</summary>
    ThumbTipReach,

    /// <summary>Fingertips over the floor, arm up: the reach sitting, and stature less sitting height.</summary>
    FingertipsUp,

    /// <summary>Forearm-forearm breadth.</summary>
    ElbowToElbow,

    /// <summary>Bideltoid breadth.</summary>
    Shoulders,

    /// <summary>Abdominal extension depth, sitting.</summary>
    Belly,
}
