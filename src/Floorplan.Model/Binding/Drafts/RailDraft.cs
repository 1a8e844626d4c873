using Floorplan.Language.Quantities;
using Floorplan.Language.Text;
using Floorplan.Model.Shapes;

namespace Floorplan.Model.Binding.Drafts;

/// <summary>What the text says about an overhead rail.</summary>
internal sealed record RailDraft(
    string Id, string Label, NameRef? Room, IReadOnlyList<PlanPoint> Path, Length Height, Length? Pitch, IReadOnlyList<NameRef> Through,
    SourceSpan Span);
