using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Power.Tables;

/// <summary>A copper conductor with PVC of the metric sizes: what it carries with two and with three loaded conductors at 30 C.</summary>
/// <param name="SquareMillimetres">Its cross-section.</param>
/// <param name="Two">In A, by the way that it is laid.</param>
/// <param name="Three">In A, by the way that it is laid.</param>
/// <param name="MillivoltsTwo">Drop in mV for each A and m; null where the table is not at hand.</param>
/// <param name="MillivoltsThree">Between lines.</param>
internal sealed record IecCable(
    double SquareMillimetres, (double B1, double B2, double C) Two, (double B1, double B2, double C) Three,
    double? MillivoltsTwo, double? MillivoltsThree)
{
    public static readonly Source Ampacity = new(
        "IEC 60364-5-52:2009, Tables B.52.2 and B.52.4, PVC, copper", Origin.FromMemory, Force.ModelCode);

    public static readonly Source Drop = new("BS 7671 Tables 4D1B and 4D2B, mV for each A and m", Origin.FromMemory, Force.ModelCode);

    /// <summary>From the smallest; above 25 mm2 all from memory.</summary>
    public static IReadOnlyList<IecCable> All { get; } =
    [
        new(1.5, (17.5, 16.5, 19.5), (15.5, 15, 17.5), 29, 25),
        new(2.5, (24, 23, 27), (21, 20, 24), 18, 15),
        new(4, (32, 30, 36), (28, 27, 32), 11, 9.5),
        new(6, (41, 38, 46), (36, 34, 41), 7.3, 6.4),
        new(10, (57, 52, 63), (50, 46, 57), 4.4, 3.8),
        new(16, (76, 69, 85), (68, 62, 76), 2.8, 2.4),
        new(25, (101, 90, 112), (89, 80, 96), 1.75, 1.5),
        new(35, (125, 111, 138), (110, 99, 119), null, null),
        new(50, (151, 133, 168), (134, 118, 144), null, null),
        new(70, (192, 168, 213), (171, 149, 184), null, null),
        new(95, (232, 201, 258), (207, 179, 223), null, null),
        new(120, (269, 232, 299), (239, 206, 259), null, null),
    ];

    /// <summary>In A at 30 C, alone.</summary>
    /// <param name="phases">1 or 3.</param>
    public double Carries(IecMethod method, int phases)
    {
        var (b1, b2, c) = phases == 3 ? Three : Two;
        return method switch { IecMethod.B1 => b1, IecMethod.B2 => b2, _ => c };
    }
}

/// <summary>How a cable is laid, by the letters of the standard.</summary>
internal enum IecMethod
{
    /// <summary>Single cores in a pipe on a wall.</summary>
    B1,

    /// <summary>A cable of several cores in a pipe on a wall.</summary>
    B2,

    /// <summary>Clipped straight to a wall.</summary>
    C,
}
