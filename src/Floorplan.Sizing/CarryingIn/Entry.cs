using Floorplan.Model.Openings;
using Floorplan.Model.Stations;

namespace Floorplan.Sizing.CarryingIn;

/// <summary>How a thing goes from outside to its place when nothing else stands in the unit.</summary>
/// <param name="Size">As it stands.</param>
/// <param name="GoesUpright">As it stands it passes all openings on some way, and turns round every corner.</param>
/// <param name="GoesTipped">The same on one of its other sides; looked at only where it does not go upright.</param>
/// <param name="Decisive">Where it does not go upright, the narrowest opening on the widest way to its room; null where no way leads
/// there.</param>
/// <param name="LeftOpen">Where it does not go upright, the opening whose wall is best left open until it stands; null where no way leads
/// there.</param>
public sealed record Entry(Station Station, Solid Size, bool GoesUpright, bool GoesTipped, Opening? Decisive, Opening? LeftOpen)
{
    public bool GoesSomehow => GoesUpright || GoesTipped;

    internal static Entry Of(Station station, WayIn way)
    {
        var size = Solid.Of(station);
        return way.Fits(station, size)
            ? new Entry(station, size, true, false, null, null)
            : new Entry(
                station, size, false, size.Tipped.Any(t => way.Fits(station, t)), way.Decisive(station.Room), way.LeftOpen(station));
    }
}
