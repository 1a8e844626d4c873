using Floorplan.Language.Text;
using Floorplan.Model.Binding.Names;

namespace Floorplan.Model.Binding.Drafts;

/// <summary>A name as the text uses it, and where.</summary>
internal readonly record struct NameRef(string Id, SourceSpan Span)
{
    public bool IsOutside => Id == NameTable.Outside;
}
