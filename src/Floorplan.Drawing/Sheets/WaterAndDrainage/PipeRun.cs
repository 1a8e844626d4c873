using Floorplan.Model.Services;
using Floorplan.Model.Stations;
using Floorplan.Sizing.Water;

namespace Floorplan.Drawing.Sheets.WaterAndDrainage;

/// <summary>All stations that one point serves with one kind of pipe.</summary>
/// <param name="Kind">Cold water, hot water or drain.</param>
/// <param name="Point">A water point, a heater or a drain.</param>
public sealed record PipeRun(NeedKind Kind, ServicePoint Point, IReadOnlyList<Station> Uses)
{
    /// <summary>In the order in which the plan uses them.</summary>
    public static IReadOnlyList<PipeRun> Of(Supply supply) =>
    [
        .. supply.All.Where(s => s is { Point: not null, Use.Station: not null })
            .GroupBy(s => (s.Use.Kind, s.Point!.Id))
            .Select(g => new PipeRun(g.Key.Kind, g.First().Point!, [.. g.Select(s => s.Use.Station!).Distinct()])),
    ];
}
