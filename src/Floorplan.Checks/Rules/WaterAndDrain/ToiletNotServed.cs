using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Language.Diagnostics;
using Floorplan.Model;
using Floorplan.Model.Rooms;
using Floorplan.Model.Services;

namespace Floorplan.Checks.Rules.WaterAndDrain;

/// <summary>Toilet rooms against the water points and drains that stand in them.</summary>
internal sealed class ToiletNotServed : Rule
{
    public override string Name => "toilet-not-served";

    public override RuleGroup Group => RuleGroup.WaterAndDrain;

    public override string Says
        => "A toilet room has no water point or no drain. A plan that names no water points or no drains yet is not asked for them, nor "
            + "is a dry toilet: one whose label says dry or compost.";

    public override string Why => "A toilet without its own line is joined to the floor drain of a food room, or is not built at all.";

    public override string Mend => "Add a cold water point and a drain in the toilet room, with a line of its own to outside.";

    public override string? Caution => "Sewage is a licensed plumber's work; local codes prevail.";

    public override IReadOnlyList<Source> Sources { get; } =
    [
        new(
            "Regulation (EC) 852/2004, Annex II, chapter I(3): flush lavatories joined to an effective drain", Origin.FoundInSecondaryCopy,
            Force.Law),
        new("9 CFR 416.2(e) and (h), US CFR: plumbing that carries sewage away", Origin.FromMemory, Force.Law),
    ];

    public override string Bad => """
        plan "Rudd unit"
          units metric
        shell shed 8000 x 3000 x 2500
        room gut  "Gutting" dirty  from west to 6000
        room wc   "Toilet"  toilet from 6000 to east
        partitions thickness 80
        door d1 gut to outside, south wall, 500 from west, 900 x 2050, swings out, closes itself
        door d2 wc to outside, south wall, 500 from east, 900 x 2050, swings out, closes itself
        drain fd1 floor in gut, centred, 100
        water w1 cold in gut, north wall, 2000 from west, height 1200
        """;

    public override IReadOnlyList<LineChange> Mended =>
    [
        LineChange.After("water w1", "water w2 cold in wc, north wall, 500 from west, height 600", "drain fd2 floor in wc, centred, 100"),
    ];

    public override bool AppliesTo(Plan plan) => plan.Rooms.Any(r => r.Class == HygieneClass.Toilet);

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        var points = context.Plan.Services.OfType<WaterPoint>().ToList();
        var drains = context.Plan.Services.OfType<Drain>().ToList();
        foreach (var room in context.Plan.Rooms.Where(r => r.Class == HygieneClass.Toilet && !IsDry(r)))
        {
            string[] missing =
            [
                .. points.Count > 0 && !points.Exists(p => p.Room?.Id == room.Id) ? ["water point"] : Array.Empty<string>(),
                .. drains.Count > 0 && !drains.Exists(d => d.Room?.Id == room.Id) ? ["drain"] : Array.Empty<string>(),
            ];
            if (missing.Length > 0)
            {
                yield return CheckContext.Find(this, Severity.Warning, [room.Id],
                    $"{Named.Of(room)} has no {string.Join(" and no ", missing)}",
                    $"add to {room.Id} a {string.Join(" and a ", missing)}; a dry toilet says so in its label", room.Span,
                    room.Floor.InteriorPoint.Coordinate);
            }
        }
    }

    private static bool IsDry(Room room) => room.Label.Contains("dry", StringComparison.OrdinalIgnoreCase)
        || room.Label.Contains("compost", StringComparison.OrdinalIgnoreCase);
}
