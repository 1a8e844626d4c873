using Floorplan.Language.Quantities;
using Floorplan.Model.Binding.Drafts;
using Floorplan.Model.Binding.Names;
using Floorplan.Model.Binding.Placing;
using Floorplan.Model.Details.Tables;
using Floorplan.Model.Rooms;
using Floorplan.Model.Stations;

namespace Floorplan.Model.Binding.Stations;

/// <summary>Makes the stations that found a place, numbered in the order of the text.</summary>
internal sealed class StationPlacer(IReadOnlyDictionary<string, Room> rooms, NameTable names, Reports reports)
{
    public List<Station> Place(IReadOnlyList<(StationDraft Draft, Placeable Placed)> stations)
    {
        var made = new List<Station>();
        foreach (var (station, placed) in stations)
        {
            foreach (var waste in (station.Said.Get(StationTable.Wastes) ?? [])
                .Where(w => w.BinId is not null && names.Find(w.BinId)?.What is not ("bin" or "station" or "store")))
            {
                names.ReportUnknown(waste.BinId!, "bin", waste.Span, n => n.What == "bin");
            }

            if (station.Said.Get(StationTable.ReworkAt) is { } again && names.Find(again.Id)?.What is not "station")
            {
                names.ReportUnknown(again.Id, "station", again.Span, n => n.What == "station");
            }

            TellWeights(station);
            if (placed is { Failed: false, Box: { } box })
            {
                made.Add(StationMaker.Make(station, made.Count + 1, rooms[placed.Room.Id], box));
            }
        }

        return made;
    }

    private void TellWeights(StationDraft station)
    {
        var (empty, full) = (station.Said.Figure(StationTable.WeightEmpty), station.Said.Figure(StationTable.WeightFull));
        if (full is { } heavy && empty is { } light && heavy.Base < light.Base)
        {
            reports.Error(
                "full-lighter-than-empty",
                $"`{station.Id}` weighs {QuantityText.Of(heavy, reports.Units)} full and {QuantityText.Of(light, reports.Units)} empty",
                station.Span,
                "swap the two weights, or mend the one that is wrong");
        }
    }
}
