using Floorplan.Model;
using Floorplan.Model.Services;
using Floorplan.Model.Stations;

namespace Floorplan.Drawing.Sheets.WaterAndDrainage;

/// <summary>Joins every wet station to the nearest point that can serve it: of its own room first, else of any room. Water runs over the floor only to a drain of its own room; a sink's waste runs in a pipe, to any drain.</summary>
internal static class PipeRuns
{
    public static IReadOnlyList<PipeRun> Of(Plan plan)
    {
        var runs = new Dictionary<(PipeKind Kind, string Id), (ServicePoint Point, List<Station> Uses)>();
        var candidates = Enum.GetValues<PipeKind>().ToDictionary(k => k, k => plan.Services.Where(s => Serves(s, k)).ToList());
        foreach (var station in plan.Stations)
        {
            foreach (var kind in Enum.GetValues<PipeKind>().Where(k => Needs(station, k)))
            {
                if (Nearest(candidates[kind], station, kind) is not { } point)
                {
                    continue;
                }

                if (!runs.TryGetValue((kind, point.Id), out var run))
                {
                    runs[(kind, point.Id)] = run = (point, []);
                }

                run.Uses.Add(station);
            }
        }

        return [.. runs.Select(r => new PipeRun(r.Key.Kind, r.Value.Point, r.Value.Uses))];
    }

    /// <summary>A sink takes cold, hot and a drain even where the plan does not say so.</summary>
    public static bool Needs(Station station, PipeKind kind) => station.Role == StationRole.Sink || station.Needs.Any(n => n.Kind == kind switch
    {
        PipeKind.Cold => NeedKind.ColdWater,
        PipeKind.Hot => NeedKind.HotWater,
        _ => NeedKind.Drain,
    });

    private static bool Serves(ServicePoint point, PipeKind kind) => kind switch
    {
        PipeKind.Cold => point is WaterPoint { Cold: true },
        PipeKind.Hot => point is WaterPoint { Hot: true },
        _ => point is Drain,
    };

    private static ServicePoint? Nearest(List<ServicePoint> points, Station station, PipeKind kind)
    {
        var from = station.Bounds.Centre.Coordinate;
        return points.Where(p => p.Room?.Id == station.Room.Id).MinBy(p => p.At.Coordinate.Distance(from))
            ?? (kind == PipeKind.Waste && station.Role != StationRole.Sink ? null : points.MinBy(p => p.At.Coordinate.Distance(from)));
    }
}
