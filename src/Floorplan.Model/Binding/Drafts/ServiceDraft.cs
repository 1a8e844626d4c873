using Floorplan.Language.Syntax.Values;
using Floorplan.Model.Binding.Names;
using Floorplan.Model.Services;

namespace Floorplan.Model.Binding.Drafts;

/// <summary>What the text says about a service point. Its place is still to be found.</summary>
/// <param name="Point">All but room, place and what other things it is joined to.</param>
internal sealed record ServiceDraft(ServicePoint Point, NameRef? Room, IReadOnlyList<PlaceTerm> Place)
{
    /// <summary>The water point that a hose hangs on.</summary>
    public NameRef? On { get; init; }

    /// <summary>Whether it gets a place of its own by relations, as walls and distances.</summary>
    public bool HasPlace => On is null && Point is not RoomService;

    /// <summary>Joins the placed point to other things by their names; null when it names none.</summary>
    public Func<ServicePoint, NameTable, ServicePoint>? Join { get; init; }

    /// <summary>Reports what it should say and does not; null when it lacks nothing.</summary>
    public Action<Reports>? Lacks { get; init; }
}
