using Floorplan.Language.Words.Terms;

namespace Floorplan.Model.Services;

/// <summary>A point that water could flow back through: a water point or a hose.</summary>
public interface IGuardedPoint
{
    /// <summary>What keeps used water from being sucked back into the pipe here.</summary>
    IReadOnlyList<BackflowGuard> Guards { get; }

    bool GuardsBackflow => Guards.Count > 0;

    /// <summary>In the words of the plan.</summary>
    IEnumerable<string> GuardWords => Guards.Select(g => TermWord.Of(g).Replace('-', ' '));
}
