namespace Floorplan.Language.Text;

/// <summary>A place in a file; both numbers count from 1.</summary>
public readonly record struct LinePosition(int Line, int Column);
