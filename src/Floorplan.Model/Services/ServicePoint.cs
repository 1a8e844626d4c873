using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax;
using Floorplan.Language.Text;
using Floorplan.Model.Rooms;
using Floorplan.Model.Shapes;

namespace Floorplan.Model.Services;

/// <summary>A point where a service reaches the room: what all of them have. What one kind has is in its own record.</summary>
public abstract record ServicePoint
{
    public required string Id { get; init; }

    public string Label { get; init; } = "";

    public Room? Room { get; init; }

    public PlanPoint At { get; init; }

    /// <summary>The wall it is on; null on the floor or ceiling.</summary>
    public Side? Wall { get; init; }

    /// <summary>Above the finished floor; null when not said.</summary>
    public Length? Height { get; init; }

    public SourceSpan Span { get; init; }

    /// <summary>As the plan calls it: <c>water</c>, <c>air supply</c>.</summary>
    public abstract string Kind { get; }

    /// <summary>For sentences: <c>water point</c>.</summary>
    public virtual string Noun => Kind;

    /// <summary>Words that say something by themselves, in the words of the plan: <c>cold</c>, <c>single-phase</c>.</summary>
    public virtual IEnumerable<string> Terms => [];
}
