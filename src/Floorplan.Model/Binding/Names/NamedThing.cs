using Floorplan.Language.Text;
using Floorplan.Model.Binding.Placing;
using Floorplan.Model.Binding.Rooms;

namespace Floorplan.Model.Binding.Names;

/// <summary>What a name stands for in one plan, and where it is given.</summary>
/// <param name="What">For sentences: <c>room</c>, <c>station</c>, <c>door</c>.</param>
internal sealed record NamedThing(string Id, string What, SourceSpan Span)
{
    /// <summary>Set for rooms that have a floor.</summary>
    public LaidRoom? Room { get; set; }

    /// <summary>Set for things that get a place from relations.</summary>
    public Placeable? Placeable { get; set; }
}
