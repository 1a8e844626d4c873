using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Sheets;

/// <summary>The sheets of one plan that could be drawn, and those that could not.</summary>
public sealed record DrawnSet(IReadOnlyList<SheetScene> Sheets, IReadOnlyList<NotDrawn> NotDrawn);
