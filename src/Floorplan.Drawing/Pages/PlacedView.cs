using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Pages;

/// <summary>A view and where it stands on its page.</summary>
/// <param name="Strip">Under the view: its title, bar scale and north arrow.</param>
/// <param name="HasBar">The bar scale stands once on a page, under its first view.</param>
internal sealed record PlacedView(ISheetView View, PaperBox Box, PaperBox Strip, bool HasBar)
{
    /// <summary>View and strip.</summary>
    public PaperBox Whole => Box.With(Strip);
}
