using Floorplan.Model.Stations;

namespace Floorplan.Sizing.Bodies;

/// <summary>Which things leave no floor to a person who stands.</summary>
public static class InTheWay
{
    /// <summary>A thing this low is a grating or a step that one stands on, in mm; own assumption.</summary>
    private const double StoodOn = 300;

    /// <summary>A thing hung this high is over heads: stature of a 95th-percentile man, and shoes 30 mm (from memory).</summary>
    private static readonly double OverHead = BodySize.Largest(BodyMeasure.Stature).Usual + 30;

    public static bool Is(Station station)
        => !station.Movable && station.Top.Millimetres > StoodOn && station.Bottom.Millimetres < OverHead;
}
