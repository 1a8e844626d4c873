using Floorplan.Language.Text;
using Floorplan.Model.Flows;
using Stream = Floorplan.Model.Flows.Stream;

namespace Floorplan.Model.Binding.Drafts;

/// <summary>What the text says about a flow: chains of stops by name.</summary>
/// <param name="Product">The one product that goes this way; null for all.</param>
internal sealed record FlowDraft(Stream Stream, string Label, IReadOnlyList<ChainDraft> Chains, string? Product, SourceSpan Span);

/// <param name="Carriage">Null is by hand; people walk whatever is said.</param>
internal sealed record ChainDraft(IReadOnlyList<NameRef> Stops, Carriage? Carriage, Period Period, SourceSpan Span);
