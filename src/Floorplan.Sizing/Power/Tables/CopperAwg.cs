using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Power.Tables;

/// <summary>A copper conductor of the US sizes.</summary>
/// <param name="Name"><c>12 AWG</c>.</param>
/// <param name="At60">In A, where a terminal may become 60 C warm.</param>
/// <param name="At75">In A, at 75 C.</param>
/// <param name="OhmsPerThousandFeet">At 75 C.</param>
/// <param name="CircularMils">Its cross-section.</param>
/// <param name="LargestBreaker">In A; motors are outside it. Infinity where the code has no such bound.</param>
internal sealed record CopperAwg(
    string Name, double At60, double At75, double OhmsPerThousandFeet, double CircularMils, double LargestBreaker)
{
    /// <summary>Not more than three loaded conductors in a pipe or cable, 30 C around them.</summary>
    public static readonly Source Ampacity = new("NEC 2023 Table 310.16, copper", Origin.FoundInSecondaryCopy, Force.ModelCode);

    public static readonly Source Small = new(
        "NEC 240.4(D): 15, 20 and 30 A for 14, 12 and 10 AWG", Origin.FoundInSecondaryCopy, Force.ModelCode);

    /// <summary>The smaller sizes are those of solid wire, which is what a secondary copy prints.</summary>
    public static readonly Source Resistance = new("NEC chapter 9, Table 8, copper at 75 C", Origin.FoundInSecondaryCopy, Force.ModelCode);

    /// <summary>From the smallest; the resistance of 250 kcmil and the cross-sections above 1/0 are from memory.</summary>
    public static IReadOnlyList<CopperAwg> All { get; } =
    [
        new("14 AWG", 15, 20, 3.07, 4110, 15),
        new("12 AWG", 20, 25, 1.93, 6530, 20),
        new("10 AWG", 30, 35, 1.21, 10_380, 30),
        new("8 AWG", 40, 50, 0.764, 16_510, double.PositiveInfinity),
        new("6 AWG", 55, 65, 0.491, 26_240, double.PositiveInfinity),
        new("4 AWG", 70, 85, 0.308, 41_740, double.PositiveInfinity),
        new("3 AWG", 85, 100, 0.245, 52_620, double.PositiveInfinity),
        new("2 AWG", 95, 115, 0.194, 66_360, double.PositiveInfinity),
        new("1 AWG", 110, 130, 0.154, 83_690, double.PositiveInfinity),
        new("1/0 AWG", 125, 150, 0.122, 105_600, double.PositiveInfinity),
        new("2/0 AWG", 145, 175, 0.0967, 133_100, double.PositiveInfinity),
        new("3/0 AWG", 165, 200, 0.0766, 167_800, double.PositiveInfinity),
        new("4/0 AWG", 195, 230, 0.0608, 211_600, double.PositiveInfinity),
        new("250 kcmil", 215, 255, 0.0515, 250_000, double.PositiveInfinity),
    ];

    /// <summary>A circle of a thousandth of an inch.</summary>
    private const double CircularMil = Math.PI / 4 * 0.0254 * 0.0254;

    public double SquareMillimetres => CircularMils * CircularMil;
}
