using Floorplan.Model.Openings;
using Floorplan.Model.Stations;

namespace Floorplan.Sizing.CarryingIn;

/// <summary>A thing on its way in, as a box in mm: it goes narrow side first.</summary>
/// <param name="Broad">Smaller side on plan.</param>
/// <param name="Long">Larger side on plan.</param>
public readonly record struct Solid(double Broad, double Long, double High)
{
    public static Solid Of(Station station)
    {
        double width = station.Bounds.Width.Millimetres;
        double depth = station.Bounds.Depth.Millimetres;
        return new Solid(Math.Min(width, depth), Math.Max(width, depth), (station.Top - station.Bottom).Millimetres);
    }

    /// <summary>As it stands, then on each of its other sides.</summary>
    public static IEnumerable<Solid> SidesOf(Station station)
    {
        var upright = Of(station);
        return upright.Tipped.Prepend(upright);
    }

    /// <summary>An opening is wide and high enough for it, narrow side first.</summary>
    public bool Passes(Opening opening) => High <= opening.Height.Millimetres && Broad <= opening.Width.Millimetres;

    /// <summary>The same box lying on each of its other sides.</summary>
    public IEnumerable<Solid> Tipped =>
    [
        new(Math.Min(Broad, High), Math.Max(Broad, High), Long),
        new(Math.Min(Long, High), Math.Max(Long, High), Broad),
    ];
}
