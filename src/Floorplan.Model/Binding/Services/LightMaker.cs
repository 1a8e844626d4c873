using Floorplan.Language.Syntax.Statements;
using Floorplan.Language.Syntax.Statements.Services;
using Floorplan.Model.Binding.Drafts;
using Floorplan.Model.Services;

namespace Floorplan.Model.Binding.Services;

internal sealed class LightMaker : IServiceMaker
{
    public Type Reads => typeof(LightStatement);

    // Names have no spaces, so these are never taken by another thing.
    public IEnumerable<ServiceDraft> Read(Statement statement) => ((LightStatement)statement).Rooms.Select(r => new ServiceDraft(
        new Light { Id = $"light {r.Room.Text}", Amount = r.Level?.Value, Span = r.Span },
        new NameRef(r.Room.Text, r.Room.Span),
        []));
}
