using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Checks.Limits;
using Floorplan.Checks.Measuring;
using Floorplan.Language.Diagnostics;
using Floorplan.Language.Quantities;
using Floorplan.Model;

namespace Floorplan.Checks.Rules.WaterAndDrain;

/// <summary>Washed rooms that have a drain, but too few or too far apart.</summary>
internal sealed class DrainTooFew : Rule
{
    private const string Area = "floor for each drain";

    /// <summary>A share by which areas may differ in reckoning.</summary>
    private const double Rounding = 1e-6;

    /// <summary>Exactly, in square metres.</summary>
    private const double FourHundredSquareFeet = 400 * InchPound.SquareMetresPerSquareFoot;

    public override string Name => "drain-too-few";

    public override RuleGroup Group => RuleGroup.WaterAndDrain;

    public override string Says
        => "A washed room has fewer drains than its floor needs, or one of them takes more floor than its share.";

    public override string Why
        => "The longer the way, the more build-up the fall takes and the more puddles stay behind. Standing water is where listeria lives.";

    public override string Mend => "Add a drain where the floor is farthest from one, or use a trench drain.";

    public override IReadOnlyList<Source> Sources { get; } =
    [
        new Source("COMAR 10.15.03.21, Maryland: a drain for each 400 sq ft", Origin.FoundInPublicCopy, Force.Law).In("us-md"),
        new Source("Iowa, guidelines for meat plants: a drain of 4 in for each 400 sq ft, but in freezers and dry stores",
            Origin.FoundInPublicCopy, Force.Guidance).In("us-ia").For(Trade.RedMeat),
    ];

    public override IReadOnlyList<RuleLimit> Limits =>
    [
        new(Area, FourHundredSquareFeet, LimitUnit.SquareMetres, Sources[0], Severity.Warning),
        new(Area, FourHundredSquareFeet, LimitUnit.SquareMetres, Sources[1], Severity.Note) { Quoted = true },
    ];

    public override string Bad => """
        plan "One drain in a shed"
          units metric
          country us-md
        shell shed 8000 x 5600 x 2800
          lining walls 20, ceiling 20, floor 120
        room wash "Wash" dirty from west to east
        door d1 wash to outside, south wall, centred, 900 x 2050, swings out, closes itself
        station bench "Rinse bench" in wash
          size 1400 x 600 x 900
          place against north wall, centred
        drain fd1 floor in wash, centred, 3880 from west, 100
        """;

    public override IReadOnlyList<LineChange> Mended =>
    [
        LineChange.After("drain fd1", "drain fd2 floor in wash, centred, 6500 from west, 100"),
    ];

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        foreach (var room in context.Plan.Rooms.Where(r => r.WashedDown))
        {
            if (!context.Facts.Drainage.TryGetValue(room.Id, out var drainage)
                || drainage.Drains.Where(d => d.Room?.Id == room.Id).ToList() is not { Count: > 0 } drains)
            {
                continue;
            }

            // A floor that falls to a drain of another room is judged by drain-runs-to-clean and fall-not-possible.
            bool runsToOwn = drainage.Takes.Any(drains.Contains);
            var at = drainage.Farthest;
            var floor = context.Facts.RoomSizes[room.Id].Area;
            int needed = context.Limit(this, Area) is { } each ? (int)Math.Ceiling((floor.Value / each.Value) - 1e-6) : 0;
            if (context.Limit(this, Area) is { } area && drains.Count < needed)
            {
                yield return CheckContext.Find(
                    this, area, floor.Value / drains.Count, [room.Id],
                    $"{Named.Of(room)}, {floor.Text}, has {drains.Count} of {needed} drains",
                    $"add {needed - drains.Count}, the first near {Say.Place(at, context.Plan.Units)}", room.Span, at)
                    with
                { Figures = [floor] };
            }
            else if (runsToOwn
                && context.Limit(this, Area) is { } own
                && drainage.Shares.FirstOrDefault() is { Drain: not null } busy
                && busy.SquareMetres > own.Value * (1 + Rounding))
            {
                yield return CheckContext.Find(
                    this, own, busy.SquareMetres, [room.Id, busy.Drain.Id],
                    $"drain {busy.Drain.Id} takes {QuantityText.Of(busy.SquareMetres, Measure.Area, context.Plan.Units)} of "
                        + $"{Named.Of(room)}, more than its share of the floor",
                    $"move it, or add a drain near {Say.Place(at, context.Plan.Units)}", busy.Drain.Span, busy.Drain.At.Coordinate);
            }
        }
    }
}
