namespace Floorplan.Language.Quantities;

/// <summary>What a bare number means and how lengths are printed: millimetres, or feet and inches.</summary>
public enum UnitSystem
{
    Metric,
    Feet,
}
