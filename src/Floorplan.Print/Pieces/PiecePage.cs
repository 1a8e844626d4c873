using Floorplan.Drawing.Scene;

namespace Floorplan.Print.Pieces;

/// <summary>One page of a small printer: a window of a sheet at true size, and what is drawn round it.</summary>
/// <param name="Sheet">Null on the page that says how the pieces go together.</param>
/// <param name="Window">The part of the sheet that is shown, in its own millimetres.</param>
/// <param name="At">Where the window's upper left corner falls on the page.</param>
/// <param name="Around">Of the page's size: ticks to cut at, match marks, and words.</param>
public sealed record PiecePage(SheetScene? Sheet, PaperBox Window, PaperPoint At, SheetScene Around);
