using Floorplan.Language.Quantities;

namespace Floorplan.Model.Services;

/// <summary>A point that goes through something or ends a pipe: it has a size.</summary>
public interface ISizedPoint
{
    /// <summary>Null when not said.</summary>
    Length? Size { get; }
}
