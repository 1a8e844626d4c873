using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax.Values;
using Floorplan.Language.Text;
using Floorplan.Model.Details;
using Floorplan.Model.Details.Tables;
using Floorplan.Model.Stations;

namespace Floorplan.Model.Binding.Drafts;

/// <summary>What the text says about a station, store, bin or sink, kinds folded in. It has no place yet.</summary>
internal sealed record StationDraft(
    string Id, StationRole Role, NameRef? Room, SaidValues Said, IReadOnlyList<PlaceTerm> Place, SourceSpan Span)
{
    public string? Label { get; init; }

    public string Purpose { get; init; } = "";

    /// <summary>Quarter turns clockwise.</summary>
    public int Quarters { get; init; }

    public SaidSize? Size => Said.Get(StationTable.Size);

    /// <summary>Size from west to east as it stands; needs <see cref="Size"/>.</summary>
    public Length StandingWidth => (Quarters % 2 == 0 ? Size?.Width : Size?.Depth) ?? Length.Zero;

    public Length StandingDepth => (Quarters % 2 == 0 ? Size?.Depth : Size?.Width) ?? Length.Zero;
}
