using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax;
using Floorplan.Model.Shapes;

namespace Floorplan.Model.Binding.Placing;

/// <summary>The two ways that a place is fixed.</summary>
internal enum Axis
{
    /// <summary>From west to east: x.</summary>
    WestEast,

    /// <summary>From south to north: y.</summary>
    SouthNorth,
}

internal static class AxisWords
{
    /// <summary>The axis on which a side has its place: east and west are places on x.</summary>
    public static Axis Of(Side side) => side.RunsEastWest() ? Axis.SouthNorth : Axis.WestEast;

    public static Axis Other(this Axis axis) => axis == Axis.WestEast ? Axis.SouthNorth : Axis.WestEast;

    public static string Phrase(this Axis axis) => axis == Axis.WestEast ? "from west to east" : "from south to north";

    public static Span On(this Box box, Axis axis) => axis == Axis.WestEast ? new Span(box.West, box.East) : new Span(box.South, box.North);

    public static Side Low(this Axis axis) => axis == Axis.WestEast ? Side.West : Side.South;

    public static Side High(this Axis axis) => axis == Axis.WestEast ? Side.East : Side.North;
}

/// <summary>What a thing takes up on one axis.</summary>
internal readonly record struct Span(Length Low, Length High)
{
    public Length Size => High - Low;

    /// <summary>Where a thing of another size starts when both share their centre.</summary>
    public Length CentredStart(Length size) => Low + ((Size - size) / 2);
}
