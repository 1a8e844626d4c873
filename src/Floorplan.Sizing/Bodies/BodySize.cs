using Floorplan.Model;

namespace Floorplan.Sizing.Bodies;

/// <summary>A figure that is a measure of the smallest or the largest person a plan is for.</summary>
public sealed record BodySize(BodyMeasure Measure, bool OfTheSmallest)
{
    public static BodySize Smallest(BodyMeasure measure) => new(measure, true);

    public static BodySize Largest(BodyMeasure measure) => new(measure, false);

    /// <summary>
    /// Not of the smallest or largest but of the middle woman, or the middle man where no women work; the other way round for the
    /// largest.
    /// </summary>
    public bool Middling { get; init; }

    /// <summary>So much more than the body measures, in mm; less when negative.</summary>
    public double Plus { get; init; }

    /// <summary>
    /// Of a reach: of both hands together before the middle of the body, each from its own shoulder; own assumption, by Pythagoras.
    /// </summary>
    public bool BothHands { get; init; }

    /// <summary>In mm, for the people of <see cref="People.Usual"/>.</summary>
    public double Usual => Of(People.Usual);

    /// <summary>In mm.</summary>
    public double Of(People people)
    {
        bool woman = OfTheSmallest ? people.Who != WhoWorks.Men : people.Who == WhoWorks.Women;
        double percentile = Middling ? Middle : OfTheSmallest ? people.Least : people.Most;
        double measured = BodyTable.Of(Measure, woman, percentile);
        double aside = BothHands ? BodyTable.Of(BodyMeasure.BetweenShoulders, woman, percentile) / 2 : 0;
        return Math.Round(Math.Sqrt((measured * measured) - (aside * aside))) + Plus;
    }

    private const double Middle = 50;
}

/// <summary>What of a body is measured.</summary>
public enum BodyMeasure
{
    Stature,

    /// <summary>From a wall behind the back to the tip of the thumb.</summary>
    ThumbTipReach,

    /// <summary>Acromial height.</summary>
    ShoulderHeight,

    /// <summary>Acromial height less the upper arm from acromion to radiale.</summary>
    ElbowHeight,

    /// <summary>Fingertips over the floor, arm up: the reach sitting, and stature less sitting height.</summary>
    FingertipsUp,

    /// <summary>Forearm-forearm breadth.</summary>
    ElbowToElbow,

    /// <summary>Bideltoid breadth.</summary>
    Shoulders,

    /// <summary>Biacromial breadth, from one acromion to the other.</summary>
    BetweenShoulders,

    /// <summary>Abdominal extension depth, sitting.</summary>
    Belly,
}
