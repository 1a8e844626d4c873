namespace Floorplan.Drawing.Scene;

/// <summary>One finished sheet, ready for a writer. Items are in painting order.</summary>
/// <param name="Name">File name without extension, such as <c>1-general-arrangement</c>.</param>
/// <param name="Description">For people who cannot see it: what the sheet shows, in a sentence.</param>
public sealed record SheetScene(string Name, string Title, string Description, double WidthMm, double HeightMm, IReadOnlyList<SceneItem> Items);
