namespace Floorplan.Drawing.Symbols.Services;

/// <summary>The sheets that a service point is shown on.</summary>
[Flags]
public enum ServiceSheet
{
    /// <summary>None of those that are about services; still on pictures of a plan.</summary>
    None = 0,

    Water = 1,

    Power = 2,
}
