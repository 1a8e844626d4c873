using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Checks.Limits;
using Floorplan.Language.Diagnostics;
using Floorplan.Language.Quantities;
using Floorplan.Model;
using Floorplan.Model.Rooms;

namespace Floorplan.Checks.Rules.PowerAndLight;

/// <summary>The light that the plan gives a room against what the work in it wants.</summary>
internal sealed class TooDark : Rule
{
    private const string Food = "light where hands work with food";
    private const string Dirty = "light where hands work in a dirty room";
    private const string Wash = "light where people wash and change, and in toilets";
    private const string Keep = "light in stores";

    private const double FootCandle = 1 / InchPound.SquareMetresPerSquareFoot;

    /// <summary>Light is written in whole lux or foot-candles, so that half a lux is a rounding.</summary>
    private const double Tolerance = 0.5;

    public override string Name => "too-dark";

    public override RuleGroup Group => RuleGroup.PowerAndLight;

    public override string Says => "The light in a room is less than the work there wants.";

    public override string Why => "In bad light dirt stays, knives slip and faults go out with the product. Inspectors carry a meter.";

    public override string Mend
        => "Put up more lamps, covered against breaking, or lamps of more light; then measure at the height of the work.";

    public override string? Caution => ElectricWork.Caution;

    public override IReadOnlyList<Source> Sources { get; } =
    [
        new("FDA Food Code 6-303.11: 50 fc (540 lux) where hands work with food or knives, 20 fc where people wash and in toilets, 10 fc "
            + "in stores", Origin.FoundInPublicCopy, Force.ModelCode),
        new("9 CFR 354.226(a), US CFR, for rabbits; for other animals advice: 30 fc on work surfaces", Origin.FoundInPublicCopy),
        new("EN 12464-1:2021: butchery 500 lux", Origin.FromMemory),
        new("EN 12464-1:2021: toilets 200 lux, stores 100 lux", Origin.FoundInPublicCopy),
        new("CAC/RCP 11-1976, withdrawn: work rooms 220 lux, elsewhere 110 lux", Origin.FoundInSecondaryCopy),
    ];

    public override IReadOnlyList<RuleLimit> Limits =>
    [
        new(Food, 50 * FootCandle, LimitUnit.Lux, Sources[0], Severity.Warning, CodeChoice.Us),
        new(Food, 500, LimitUnit.Lux, Sources[2], Severity.Warning, CodeChoice.Eu),
        new(Food, 220, LimitUnit.Lux, Sources[4], Severity.Warning, CodeChoice.None),
        new(Dirty, 30 * FootCandle, LimitUnit.Lux, Sources[1], Severity.Warning, CodeChoice.Us),
        new(Dirty, 220, LimitUnit.Lux, Sources[4], Severity.Warning, CodeChoice.Eu, CodeChoice.None),
        new(Wash, 20 * FootCandle, LimitUnit.Lux, Sources[0], Severity.Warning, CodeChoice.Us),
        new(Wash, 200, LimitUnit.Lux, Sources[3], Severity.Warning, CodeChoice.Eu),
        new(Wash, 110, LimitUnit.Lux, Sources[4], Severity.Warning, CodeChoice.None),
        new(Keep, 10 * FootCandle, LimitUnit.Lux, Sources[0], Severity.Warning, CodeChoice.Us),
        new(Keep, 100, LimitUnit.Lux, Sources[3], Severity.Warning, CodeChoice.Eu),
        new(Keep, 110, LimitUnit.Lux, Sources[4], Severity.Warning, CodeChoice.None),
    ];

    public override string Bad => """
        plan "Dim trimming"
          units metric
        shell shed 5000 x 3000 x 2600
        room cut "Cutting" clean from west to east
        door d1 cut to outside, south wall, 300 from west, 1000 x 2050, swings out, closes itself
        drain fd1 floor in cut, 2500 from west, centred, 100
        sink s1 hand in cut, 400 x 350, against east wall, 1200 from south
        station bench "Trim bench" in cut
          size   1800 x 600 x 900
          place  against north wall, centred
          worker south
        light cut 150 lux
        """;

    public override IReadOnlyList<LineChange> Mended => [new("light cut", "light cut 540 lux")];

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        var byRoom = context.Plan.Stations.ToLookup(s => s.Room.Id);
        foreach (var room in context.Plan.Rooms)
        {
            if (context.Facts.Light.GetValueOrDefault(room.Id) is { } light
                && Wanted(room, byRoom[room.Id].Any(s => s.Workers.Count > 0), byRoom[room.Id].Any(s => s.IsHandSink)) is { } key
                && context.Limit(this, key) is { } limit && light.Level.Value < limit.Value - Tolerance)
            {
                yield return CheckContext.Find(
                    this, limit, light.Level, [room.Id], $"{Named.Of(room)} has {light.Level.Text} of {limit.Published.Key}",
                    $"bring it to {context.Light(limit.Value)}, measured at the height of the work", light.SaidAt,
                    room.Floor.InteriorPoint.Coordinate);
            }
        }
    }

    /// <summary>
    /// What a room wants; null where no source says. People who work decide before a sink does, and that before what is kept.
    /// </summary>
    private static string? Wanted(Room room, bool works, bool washes) => room.Class switch
    {
        HygieneClass.Staff or HygieneClass.Toilet => Wash,
        HygieneClass.Plant => null,
        HygieneClass.Dirty when works => Dirty,
        _ when works => Food,
        _ when washes => Wash,
        HygieneClass.Cold or HygieneClass.Dry => Keep,
        _ => null,
    };
}
