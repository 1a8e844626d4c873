using Floorplan.Checks.Rules.RoomAndPlace;
using Floorplan.Model;
using Floorplan.Model.Openings;
using Floorplan.Model.Stations;

namespace Floorplan.Checks.Measuring;

/// <summary>One step of bringing in.</summary>
/// <param name="Ahead">Things that would stand in its way and so come later.</param>
/// <param name="Wall">The opening whose wall must still be open when it is set in place; null where it goes in by the doors.</param>
public sealed record BroughtIn(Station Station, IReadOnlyList<Station> Ahead, Opening? Wall);

/// <summary>
/// In which order things can be carried in past those that stand already. Found backwards: whatever can be carried out is taken out, until
/// nothing is left; the last out goes in first. What can get out past many can get out past fewer, so it does not matter which is tried first.
/// A thing is taken as a disc of its smallest side, carried at floor height past everything that stands on the floor: what is found to be
/// stuck is stuck, but turning a long thing between others may need more floor than is looked for.
/// </summary>
/// <param name="Steps">First in comes first. Things on wheels, hung, or low enough to step on come last: they are in nobody's way.</param>
/// <param name="Stuck">Things that go in alone, but block each other whatever comes first; in the order of the file.</param>
public sealed record BringingIn(IReadOnlyList<BroughtIn> Steps, IReadOnlyList<Station> Stuck)
{
    public static BringingIn Of(Plan plan)
    {
        var way = new WayIn(plan);
        var first = new List<BroughtIn>();
        var carried = new List<Station>();
        var last = new List<BroughtIn>();
        foreach (var station in plan.Stations)
        {
            var solid = Solid.Of(station);
            var at = station.Bounds.Centre.Coordinate;
            if (way.Decisive(station.Room) is { } wall && !way.Fits(solid, station.Room, at) && !solid.Tipped.Any(t => way.Fits(t, station.Room, at)))
            {
                first.Add(new BroughtIn(station, [], wall));
            }
            else if (InTheWay.Is(station) && station.Bottom.Nanometres == 0)
            {
                carried.Add(station);
            }
            else
            {
                last.Add(new BroughtIn(station, [], null));
            }
        }

        var rounds = new List<List<BroughtIn>>();
        if (carried.Count > 0)
        {
            new CarryingOut(plan, carried).TakeOut(carried, rounds);
        }

        rounds.Reverse();
        return new BringingIn(
            [.. first, .. rounds.SelectMany(r => r.OrderByDescending(b => CarryingOut.Radius(b.Station)).ThenBy(b => b.Station.Item)), .. last],
            carried);
    }
}
