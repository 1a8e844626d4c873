using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Language.Diagnostics;
using Floorplan.Model.Stations;

namespace Floorplan.Checks.Rules.Hygiene;

internal sealed class WayOutForWasteMissing : Rule
{
    public override string Name => "way-out-for-waste-missing";

    public override RuleGroup Group => RuleGroup.Hygiene;

    public override string Says
        => "Waste of a station, or what collects in a bin, has no chain of waste legs that ends outside or in a drain.";

    public override string Why
        => "Waste that nobody has planned a way for leaves through whatever door is nearest, which is often the packing room's. Until "
            + "then it stands and warms up.";

    public override string Mend => "Draw a `flow waste` from the bin to a drain or to `outside`, and say when it is carried.";

    public override IReadOnlyList<Source> Sources { get; } = [HygieneSources.NoCrossFlow, HygieneSources.EdibleApart];

    public override string Bad => """
        plan "Pike unit"
          units metric
        shell shed 6000 x 3000 x 2500
        room gut "Gutting" dirty from west to east
        door d1 gut to outside, south wall, 500 from west, 900 x 2050, swings out, closes itself
        door d2 gut to outside, south wall, 500 from east, 900 x 2050, swings out, closes itself
        drain fd1 floor in gut, 3000 from west, centred, 100
        sink s1 hand in gut, 400 x 350, against south wall, 2500 from west
        station bench "Gutting bench" in gut
          size 1000 x 600 x 900
          place against north wall, 1500 from west
          worker south
          waste 0.2 kg each to offal
        bin offal 60 L in gut, 450 x 450, against north wall, 2600 from west
        flow product
          outside -> d1 -> bench   by hand
        """;

    public override IReadOnlyList<LineChange> Mended =>
    [
        LineChange.After("outside ->", "flow waste", "  offal -> d2 -> outside   by trolley 500 wide, after work"),
    ];

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        var way = new WasteWays(context.Plan);
        foreach (var station in context.Plan.Stations)
        {
            if (way.BreaksOffAt(station.Id))
            {
                yield return Found(
                    station, [.. context.Plan.Stations.Where(s => s.Id != station.Id && way.Leads(s.Id, station.Id)).Select(Named.Of)]);
            }
        }
    }

    private Finding Found(Station station, IReadOnlyList<string> from)
    {
        string what = station.Role == StationRole.Bin || from.Count > 0 ? "what collects in" : "the waste of";
        string origin = from.Count > 0 ? $", from {Named.List(from)}," : "";
        return CheckContext.Find(this, Severity.Warning, [station.Id],
            $"{what} {Named.Of(station)}{origin} has no way out",
            station.Role == StationRole.Bin
                ? $"add to a `flow waste`: {station.Id} -> a door -> outside"
                : "say where it goes: `waste … to` a bin, and a `flow waste` from there to outside",
            station.Span, station.Bounds.Centre.Coordinate);
    }
}
