using Floorplan.Language.Text;

namespace Floorplan.Model.Binding.Drafts;

/// <summary>What the text says about the slope of a floor.</summary>
/// <param name="Slope">Rise over run.</param>
internal sealed record FallsDraft(NameRef Room, double Slope, NameRef? Drain, SourceSpan Span);
