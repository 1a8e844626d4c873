using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax;
using Floorplan.Model.Shapes;
using Floorplan.Model.Stations;

namespace Floorplan.Model.Binding.Stations;

/// <summary>Workers along one side of a station, centred on it.</summary>
internal static class WorkerRow
{
    /// <param name="apart">Between middles; null spreads the workers evenly over the side.</param>
    /// <param name="firstNumber">Number of the worker farthest west or south.</param>
    public static IEnumerable<WorkerPlace> Along(Box bounds, Side side, int count, Length? apart, int firstNumber)
    {
        var (low, high) = side.RunsEastWest() ? (bounds.West, bounds.East) : (bounds.South, bounds.North);
        var step = apart ?? ((high - low) / Math.Max(1, count));
        var first = ((low + high) / 2) - (step * (count - 1) / 2);
        for (int i = 0; i < count; i++)
        {
            var standing = Footprint.Standing(bounds, side, first + (step * i));
            yield return new WorkerPlace(firstNumber + i, standing.Centre, side, standing.ToPolygon());
        }
    }
}
