using Floorplan.Drawing.Scene;
using Floorplan.Drawing.Symbols;
using Floorplan.Model.Stations;

namespace Floorplan.Drawing.Views.Stations;

/// <summary>What is drawn inside a station's outline.</summary>
internal static class StationSymbols
{
    /// <summary>Below this size on paper, mm, an outline says all that can be seen.</summary>
    private const double Smallest = 3;

    public static void Draw(SymbolBrush brush, Station station, PlanTransform transform)
    {
        var box = transform.ToPaper(station.Bounds);
        if (Math.Min(box.Width, box.Height) < Smallest || station.Hung)
        {
            return;
        }

        if (station.Diameter is { } diameter)
        {
            RoundTankSymbol.Draw(brush, box.Centre, transform.Size(diameter) / 2);
        }
        else if (!station.Footprint.IsRectangle)
        {
            return;
        }
        else if (station.Role == StationRole.Sink)
        {
            SinkSymbol.Draw(brush, box, station.IsHandSink);
        }
        else if (station.Role == StationRole.Bin)
        {
            BinSymbol.Draw(brush, box);
        }
        else if (station.Role == StationRole.Store)
        {
            RackSymbol.Draw(brush, box);
        }
    }
}
