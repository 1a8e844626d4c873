using Floorplan.Model.Shells;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Weights.Crane;

/// <summary>How far apart the holes of the corner castings are that a container is lifted by, mm.</summary>
internal static class Castings
{
    /// <summary>Across, for every length.</summary>
    public const double Across = 2259;

    /// <summary>A box that is not 10, 20, 40 or 45 ft long: as much less than its outside as theirs.</summary>
    private const double Less = 205;

    public static Source Source { get; } = new(
        "ISO 668: corner castings 2787, 5853 and 11 985 mm apart on boxes of 10, 20 and 40 ft, 2259 mm across; 45 ft at the 40 ft places",
        Origin.FromMemory);

    /// <summary>Along; by the outside length.</summary>
    public static double Along(Shell shell) => shell.Outside.EnvelopeInternal.Width switch
    {
        > 2900 and < 3100 => 2787,
        > 6000 and < 6100 => 5853,
        > 12_100 and < 12_300 or > 13_600 and < 13_800 => 11_985,
        var length => Math.Max(1, length - Less),
    };
}
