using Floorplan.Model.Flows;
using Floorplan.Model.Openings;
using Floorplan.Model.Rooms;
using Floorplan.Model.Stations;

namespace Floorplan.Checks.Framework;

/// <summary>What findings call things: the label a builder knows, with the id of the file: <c>Gutting bench (gutting)</c>.</summary>
public static class Named
{
    public static string Of(Station station) => Of(station.Label, station.Id);

    /// <summary>A null room is outside.</summary>
    public static string Of(Room? room) => room is null ? "outside" : Of(room.Label, room.Id);

    public static string Of(Opening opening) => Kind(opening.Kind) + " " + opening.Id;

    public static string Of(Stop stop) => stop switch
    {
        StationStop s => Of(s.Station),
        OpeningStop o => Of(o.Opening),
        RoomStop r => Of(r.Room),
        _ => stop.Name,
    };

    /// <summary><c>a, b and c</c>; empty for none.</summary>
    public static string List(IEnumerable<string> names)
    {
        string[] all = [.. names];
        return all.Length < 2 ? string.Concat(all) : string.Join(", ", all[..^1]) + " and " + all[^1];
    }

    private static string Of(string label, string id) => label.Length == 0 || label == id ? id : $"{label} ({id})";

    private static string Kind(OpeningKind kind) => kind switch
    {
        OpeningKind.Door => "door",
        OpeningKind.Hatch => "hatch",
        OpeningKind.Window => "window",
        OpeningKind.Chute => "chute",
        OpeningKind.Vent => "vent",
        OpeningKind.CargoDoor => "cargo door",
        _ => "opening",
    };
}
