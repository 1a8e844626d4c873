using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax;
using Floorplan.Model.Shapes;

namespace Floorplan.Model.Shells;

/// <summary>A shell with what the binder needs beside it: the exact finished outline and how thick its walls are.</summary>
/// <param name="Depth">From the finished face to the outside face, for each side that a wall is on.</param>
public sealed record BuiltShell(Shell Shell, Region Finished, IReadOnlyDictionary<Side, Length> Depth, ShellDoor? Door);

/// <summary>The shell's own cargo or ramp doors: the clear hole in the bare shell.</summary>
/// <param name="Sill">Above the finished floor; negative where the floor is built up.</param>
public sealed record ShellDoor(Side End, Length Width, Length Height, Length Sill);
