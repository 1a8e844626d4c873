using Floorplan.Model.Binding.Drafts;
using Floorplan.Model.Binding.Names;
using Floorplan.Model.Flows;
using Floorplan.Model.Openings;
using Floorplan.Model.Rooms;
using Floorplan.Model.Services;
using Floorplan.Model.Stations;

namespace Floorplan.Model.Binding.Flows;

/// <summary>
/// Turns the names of a flow into stops. Names that were given but could not be placed stay silent: that is reported already.
/// </summary>
internal sealed class StopFinder(
    NameTable names,
    IReadOnlyDictionary<string, Station> stations,
    IReadOnlyDictionary<string, Opening> openings,
    IReadOnlyDictionary<string, ServicePoint> services,
    IReadOnlyDictionary<string, Room> rooms,
    Reports reports)
{
    public Stop? Find(NameRef name)
    {
        if (name.IsOutside)
        {
            return new OutsideStop(name.Span);
        }

        if (stations.TryGetValue(name.Id, out var station))
        {
            return new StationStop(station, name.Span);
        }

        if (openings.TryGetValue(name.Id, out var opening))
        {
            return new OpeningStop(opening, name.Span);
        }

        if (services.TryGetValue(name.Id, out var service))
        {
            return new ServiceStop(service, name.Span);
        }

        if (rooms.TryGetValue(name.Id, out var room))
        {
            return new RoomStop(room, name.Span);
        }

        if (names.Find(name.Id) is null)
        {
            string? help = reports.Near(name.Id, names.All.Select(n => n.Id).Append(NameTable.Outside));
            reports.Error(
                "unknown-stop",
                $"there is no station, opening or room called `{name.Id}` to stop at",
                name.Span,
                help ?? "check the spelling, or add a station of that name");
        }

        return null;
    }
}
