using Floorplan.Language.Syntax.Values;
using Floorplan.Model.Services;

namespace Floorplan.Model.Binding.Drafts;

/// <summary>What the text says about a service point. Its place is still to be found.</summary>
/// <param name="Point">All but room and place.</param>
/// <param name="On">The water point that a hose hangs on.</param>
internal sealed record ServiceDraft(ServicePoint Point, NameRef? Room, NameRef? On, IReadOnlyList<PlaceTerm> Place)
{
    /// <summary>The drain that a drain's line comes to next.</summary>
    public NameRef? RunsTo { get; init; }
}
