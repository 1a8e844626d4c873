namespace Floorplan.Language.Syntax;

/// <summary>A compass side. Plan north is up the sheet; x runs west to east, y south to north.</summary>
public enum Side
{
    North,
    South,
    East,
    West,
}
