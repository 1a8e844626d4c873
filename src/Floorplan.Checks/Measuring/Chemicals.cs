using Floorplan.Model.Stations;

namespace Floorplan.Checks.Measuring;

/// <summary>Where strong cleaners are kept: a <c>store … chemicals</c>, or a store whose label says so.</summary>
internal static class Chemicals
{
    public static bool AreKeptIn(Station station) => station.Role == StationRole.Store
        && (station.Purpose == "chemicals" || station.Label.Contains("chemical", StringComparison.OrdinalIgnoreCase));
}
