using Floorplan.Language.Quantities;
using Floorplan.Model.Stations;

namespace Floorplan.Drawing.Views.Stations;

/// <summary>The size of an item in words, the same on every sheet: its own width and depth, however it is turned.</summary>
internal static class ItemSize
{
    /// <summary>Heads its column.</summary>
    public const string Words = "Wide × deep × high";

    /// <summary>
    /// <c>1400×600×910</c>, <c>Ø600×910</c>; in feet with spaces, so that it may go on a second line between two figures.
    /// </summary>
    public static string Whole(Station station, UnitSystem units)
    {
        var tape = Tape.For(units);
        string by = units == UnitSystem.Metric ? "×" : " × ";
        string floor = station.Diameter is { } diameter
            ? "Ø" + tape.Cell(diameter)
            : tape.Cell(station.Width) + by + tape.Cell(station.Depth);
        return floor + by + tape.Cell(station.Top - station.Bottom);
    }

    /// <summary><c>1400×600</c>, for a label on the plan.</summary>
    public static string OnFloor(Station station, UnitSystem units) => station.Diameter is { } diameter
        ? "Ø" + Tape.For(units).Dimension(diameter)
        : $"{Tape.For(units).Dimension(station.Width)}×{Tape.For(units).Dimension(station.Depth)}";
}
