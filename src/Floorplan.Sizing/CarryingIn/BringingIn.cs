using Floorplan.Model;
using Floorplan.Model.Openings;
using Floorplan.Model.Stations;
using Floorplan.Sizing.Bodies;

namespace Floorplan.Sizing.CarryingIn;

/// <summary>One step of bringing in.</summary>
/// <param name="Ahead">Things that would stand in its way and so come later.</param>
/// <param name="Wall">The opening whose wall must still be open when it is set in place; null where it goes in by the doors.</param>
public sealed record BroughtIn(Station Station, IReadOnlyList<Station> Ahead, Opening? Wall);

/// <summary>
/// In which order things can be carried in past those that stand already. Found backwards: whatever can be carried out is taken out, until
/// nothing is left; the last out goes in first. What can get out past many can get out past fewer, so it does not matter which is tried
/// first.
/// A thing is carried at floor height past everything that stands on the floor, first looked at as a disc of its smallest side and then
/// as the
/// rectangle that it is, slid and turned. Both err to the kind side: what is found to be stuck is stuck.
/// </summary>
/// <param name="Steps">First in comes first. Things on wheels, hung, or low enough to step on come last: they are in nobody's way.</param>
/// <param name="Stuck">Things that no order brings in, in the order of the file: they block each other whatever comes first, or no door
/// leads to them.</param>
public sealed record BringingIn(IReadOnlyList<BroughtIn> Steps, IReadOnlyList<Station> Stuck)
{
    /// <summary>How each thing goes in when it is alone, in the order of the file.</summary>
    public IReadOnlyList<Entry> Entries { get; internal init; } = [];

    /// <summary>Takes long: <see cref="PlanFacts.BringingIn"/> keeps it.</summary>
    public static BringingIn Of(Plan plan) => Of(plan, true);

    /// <param name="quickly">Whether quick looks come before searches; the answer is the same without.</param>
    internal static BringingIn Of(Plan plan, bool quickly)
    {
        // The order first: what gets in past the others need not be looked at alone.
        var way = new WayIn(plan, quickly);
        var order = Of(plan, way);
        return order with { Entries = [.. plan.Stations.Select(s => Entry.Of(s, way))] };
    }

    private static BringingIn Of(Plan plan, WayIn way)
    {
        var first = new List<BroughtIn>();
        var carried = new List<Station>();
        var last = new List<BroughtIn>();
        foreach (var station in plan.Stations)
        {
            if (!Solid.SidesOf(station).Any(s => way.PassesDoors(station, s)) && way.LeftOpen(station) is { } wall)
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
            var carrying = new CarryingOut(plan, way, carried);
            carrying.TakeOut(carried, rounds);

            // What does not turn even alone goes in first, and the others past it.
            var alone = carried.Where(c => !way.FitsSomehow(c)).Select(c => new BroughtIn(c, [], way.LeftOpen(c)))
                .Where(b => b.Wall is not null).ToList();
            if (alone.Count > 0)
            {
                first.AddRange(alone);
                first.Sort((a, b) => a.Station.Item.CompareTo(b.Station.Item));
                carried.RemoveAll(c => alone.Exists(b => ReferenceEquals(b.Station, c)));
                carrying.LeaveOut(alone.Select(b => b.Station));
                carrying.TakeOut(carried, rounds);
            }
        }

        rounds.Reverse();
        return new BringingIn(
            [
                .. first, .. rounds.SelectMany(r => r.OrderByDescending(b => CarryingOut.Radius(b.Station)).ThenBy(b => b.Station.Item)),
                .. last],
            carried);
    }
}
