using Floorplan.Language.Syntax.Statements.Services;
using Floorplan.Model.Services;

namespace Floorplan.Model.Binding.Services;

internal sealed class PanelMaker : ServiceMaker<PanelStatement>
{
    protected override ServicePoint Point(PanelStatement s, string id) => new Panel
    {
        Id = id,
        Phases = s.Phases?.Value,
        Ratings = [.. s.Ratings.Select(r => r.Value)],
    };
}
