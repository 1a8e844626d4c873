using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Dxf;

/// <summary>
/// From paper to the units of the file: up instead of down, at true size, and from the sheet's datum, so that the plans of a set lie
/// over each other. A sheet without a datum counts from its lower left corner.
/// </summary>
internal sealed class DxfPlace(SheetScene sheet)
{
    private readonly PaperPoint origin = sheet.Datum ?? new(0, sheet.HeightMm);

    public PaperPoint LowerLeft => Of(new(0, sheet.HeightMm));

    public PaperPoint UpperRight => Of(new(sheet.WidthMm, 0));

    public PaperPoint Of(PaperPoint paper)
        => new((paper.X - origin.X) * sheet.Denominator, (origin.Y - paper.Y) * sheet.Denominator);
}
