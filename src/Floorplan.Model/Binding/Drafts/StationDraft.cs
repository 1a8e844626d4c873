using Floorplan.Language.Syntax.Values;
using Floorplan.Language.Text;
using Floorplan.Model.Stations;

namespace Floorplan.Model.Binding.Drafts;

/// <summary>What the text says about a station, store, bin or sink, kinds folded in.</summary>
internal sealed record StationDraft(string Id, StationRole Role, NameRef? Room, StationFacts Facts, IReadOnlyList<PlaceTerm> Place, SourceSpan Span);
