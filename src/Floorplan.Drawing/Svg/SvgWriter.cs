using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Svg;

/// <summary>Writes a sheet as SVG, 1 user unit = 1 paper mm.</summary>
public static class SvgWriter
{
    public static string Write(SheetScene sheet) => throw new NotImplementedException();
}
