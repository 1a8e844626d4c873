using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Language.Diagnostics;
using Floorplan.Model;
using Floorplan.Model.Rooms;
using Floorplan.Model.Services;

namespace Floorplan.Checks.Rules.Hygiene;

internal sealed class ToiletDrainJoins : Rule
{
    public override string Name => "toilet-drain-joins";

    public override RuleGroup Group => RuleGroup.Hygiene;

    public override string Says
        => "The drain of a toilet room runs on to a drain of another room (`runs to`), so that sewage and process water share a line "
            + "inside the unit.";

    public override string Why => "When the line blocks outside, sewage comes up through the floor drain of the food room.";

    public override string Mend => "Lead the toilet's line out of the unit by itself; the two may join outside.";

    public override string? Caution => "Drains are a licensed plumber's work; local codes prevail.";

    public override IReadOnlyList<Source> Sources { get; } =
    [
        new Source("9 CFR 416.2(f), US CFR: sewage is not joined to process drains in the building", Origin.FromMemory, Force.Law)
            .In("us").Of(PlantOf.Inspected),
        new Source("Iowa, guidelines for meat plants: toilet lines apart until outside", Origin.FoundInPublicCopy, Force.Guidance)
            .In("us-ia").For(Trade.RedMeat),
        new Source(
            "Malaysia, veterinary code of practice for poultry plants 2017, 2.10.7-8: toilet lines separate until outside",
            Origin.FoundInPublicCopy, Force.Guidance).In("my").For(Trade.Poultry),
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
        drain fd2 floor in wc, centred, 100, runs to fd1
        """;

    public override IReadOnlyList<LineChange> Mended => [new("drain fd2", "drain fd2 floor in wc, centred, 100")];

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        var drains = context.Plan.Services.OfType<Drain>().DistinctBy(d => d.Id).ToDictionary(d => d.Id, StringComparer.Ordinal);
        foreach (var from in drains.Values.Where(d => d.Room?.Class == HygieneClass.Toilet))
        {
            if (from.RunsToId is { } id && drains.TryGetValue(id, out var to) && to.Room is { } room && room.Class != HygieneClass.Toilet)
            {
                yield return CheckContext.Find(this, Severity.Warning, [from.Id, to.Id],
                    $"drain {from.Id} of {Named.Of(from.Room)} runs on to {to.Id} in {Named.Of(room)}, inside the unit",
                    $"take `runs to {to.Id}` out and lead {from.Id} out of the unit by itself", from.Span, from.At.Coordinate) with
                { Limit = $"sewage apart from process water inside ({context.SourceOf(this).Text})" };
            }
        }
    }
}
