using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Checks.Limits;
using Floorplan.Checks.Rules.PowerAndLight;
using Floorplan.Language.Diagnostics;
using Floorplan.Language.Quantities;
using Floorplan.Model;
using Floorplan.Model.Rooms;

namespace Floorplan.Checks.Rules.LightAndAir;

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
        new Source("FDA Food Code 2022, 6-303.11: 50 fc (540 lux) where hands work with food or knives, 20 fc where people wash and in "
            + "toilets, 10 fc in stores", Origin.FoundInPublicCopy, Force.ModelCode).In("us").Of(PlantOf.Retail),
        new Source("EN 12464-1:2021: slaughter, butchery and dairies 500 lux", Origin.FoundInSecondaryCopy, Force.Standard)
            .In("eu").For(Trade.Poultry, Trade.RedMeat, Trade.Game, Trade.Dairy),
        new Source("EN 12464-1:2021: sorting and packing 300 lux", Origin.FoundInSecondaryCopy, Force.Standard).In("eu").For(Trade.Produce),
        new Source("EN 12464-1:2021: washing, cooking and filling of food 200 lux", Origin.FoundInSecondaryCopy, Force.Standard).In("eu"),
        new Source("EN 12464-1:2021: toilets and changing rooms 200 lux, stores 100 lux", Origin.FoundInPublicCopy, Force.Standard)
            .In("eu"),
        new Source("FSA Meat Guide, UK, 2006: work rooms of meat plants 220 lux, inspection 540 lux", Origin.FoundInSecondaryCopy,
            Force.Guidance).In("uk").For(Trade.Poultry, Trade.RedMeat),
        new("220 lux where hands work with food, 110 lux elsewhere; common practice, once in CAC/RCP 11-1976, withdrawn",
            Origin.FoundInSecondaryCopy),
    ];

    public override IReadOnlyList<RuleLimit> Limits =>
    [
        new(Food, 50 * FootCandle, LimitUnit.Lux, Sources[0], Severity.Warning),
        new(Food, 500, LimitUnit.Lux, Sources[1], Severity.Warning),
        new(Food, 300, LimitUnit.Lux, Sources[2], Severity.Warning),
        new(Food, 200, LimitUnit.Lux, Sources[3], Severity.Warning),
        new(Food, 220, LimitUnit.Lux, Sources[6], Severity.Warning, CodeChoice.None),
        new(Dirty, 50 * FootCandle, LimitUnit.Lux, Sources[0], Severity.Warning),
        new(Dirty, 200, LimitUnit.Lux, Sources[3], Severity.Warning),
        new(Dirty, 220, LimitUnit.Lux, Sources[5], Severity.Note),
        new(Dirty, 220, LimitUnit.Lux, Sources[6], Severity.Warning, CodeChoice.None),
        new(Wash, 20 * FootCandle, LimitUnit.Lux, Sources[0], Severity.Warning),
        new(Wash, 200, LimitUnit.Lux, Sources[4], Severity.Warning),
        new(Wash, 110, LimitUnit.Lux, Sources[6], Severity.Warning, CodeChoice.None),
        new(Keep, 10 * FootCandle, LimitUnit.Lux, Sources[0], Severity.Warning),
        new(Keep, 100, LimitUnit.Lux, Sources[4], Severity.Warning),
        new(Keep, 110, LimitUnit.Lux, Sources[6], Severity.Warning, CodeChoice.None),
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
